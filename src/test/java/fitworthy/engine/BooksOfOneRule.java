package fitworthy.engine;

import fitworthy.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Books of the one rule mass.gvm-over, for tests of what rules may do. */
public final class BooksOfOneRule {

    private BooksOfOneRule() {}

    /** Writes one into a folder: the first rule of the shipped mass topic, so that compiling it is quick. */
    public static void write(Path rules) throws IOException {
        Files.createDirectories(rules.resolve("mass"));
        Files.createDirectories(rules.resolve("tables"));
        for (String file : List.of(
                "book.yaml",
                "sources.yaml",
                "tables/load-index.csv",
                "tables/speed-symbol.csv",
                "tables/cable.csv",
                "tables/order.csv",
                "tables/synonyms.csv")) {
            Files.copy(Books.RULES.resolve(file), rules.resolve(file));
        }
        firstPart(rules, "mass/mass.drl", "\nrule ");
        firstPart(rules, "mass/cards.yaml", "\nmass.");
    }

    private static void firstPart(Path rules, String file, String nextBegins) throws IOException {
        String text = Files.readString(Books.RULES.resolve(file));
        Files.writeString(rules.resolve(file), text.substring(0, text.indexOf(nextBegins)));
    }

    /** One that has been parsed, with other measures on its card. */
    public static RuleEngine of(Path folder, String condition, String measures) throws Exception {
        Path rules = folder.resolve("rules");
        write(rules);
        Files.writeString(
                rules.resolve("mass/mass.drl"),
                "rule \"mass.gvm-over\"\nwhen\n" + condition
                        + "\nthen\n    advice.give(\"mass.gvm-over\", $m);\nend\n");
        Path cards = rules.resolve("mass/cards.yaml");
        Files.writeString(cards, Files.readString(cards).replace("about: [mass.loaded]", "about: [" + measures + "]"));
        return BookLoader.load(rules, folder.resolve("cache"), sentence -> {});
    }

    /** One whose rule does more than the parser would pass: it was compiled without asking it. */
    public static RuleEngine unparsed(Path folder, String consequence) throws Exception {
        RuleEngine parsed = of(folder, "    $m : Measure(name == \"mass.loaded\", known)", "mass.loaded");
        String text =
                "rule \"mass.gvm-over\" when $m : Measure(name == \"mass.loaded\", known) then " + consequence + " end";
        return new RuleEngine(
                parsed.book(),
                RuleCompiler.load(
                        RuleCompiler.compileAsWritten(Map.of("mass/mass.drl", text), Map.of(), new ArrayList<>())));
    }
}
