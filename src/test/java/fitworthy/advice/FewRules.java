package fitworthy.advice;

import fitworthy.Sheets;
import fitworthy.engine.BookLoader;
import fitworthy.engine.BooksOfOneRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A book of a few rules made for a test, held against the plain wagon. It is compiled once, whoever uses it again. */
final class FewRules {

    private static final Path CACHE = Path.of("target", "few-rules-cache");

    private final Path folder;
    private final String card;
    private final StringBuilder cards = new StringBuilder();
    private final StringBuilder rules = new StringBuilder();

    FewRules(Path folder) throws IOException {
        this.folder = folder;
        BooksOfOneRule.write(folder);
        card = Files.readString(folder.resolve("mass/cards.yaml"));
    }

    /**
     * One rule more.
     *
     * @param about the measures that it is about, the one it judges first
     * @param condition which binds what it judges to {@code $m}
     */
    void add(String id, String severity, String about, String condition) {
        cards.append(card.replace("mass.gvm-over:", id + ":")
                        .replace("severity: stop", "severity: " + severity)
                        .replace("about: [mass.loaded]", "about: [" + about + "]"))
                .append('\n');
        rules.append("rule \"" + id + "\"\nwhen\n" + condition + "then\n    advice.give(\"" + id + "\", $m);\nend\n");
    }

    Advice advise(String changes) throws Exception {
        Files.writeString(folder.resolve("mass/cards.yaml"), cards);
        Files.writeString(folder.resolve("mass/mass.drl"), rules);
        return Adviser.advise(BookLoader.load(folder, CACHE, sentence -> {}), Sheets.plainWith(changes));
    }
}
