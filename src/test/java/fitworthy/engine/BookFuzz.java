package fitworthy.engine;

import fitworthy.Books;
import fitworthy.figures.Measures;
import fitworthy.fuzz.SheetFuzz;
import fitworthy.rules.RuleParser;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.InputFile;
import fitworthy.source.Place;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Whatever bytes stand in a file of the book, it is loaded or its faults are told. The first byte says which file they
 * are in, the others stand in it. A rule file is parsed, not compiled, since nothing is compiled that the parser has
 * not passed.
 */
public final class BookFuzz {

    static final List<String> FILES = List.of(
            "book.yaml",
            "sources.yaml",
            "mass/cards.yaml",
            "mass/practice.yaml",
            "tables/load-index.csv",
            "tables/speed-symbol.csv",
            "tables/cable.csv",
            "tables/order.csv",
            "tables/synonyms.csv",
            "mass/mass.drl");

    private static Path rules;

    private BookFuzz() {}

    /** Its rule is compiled before the first input is timed. */
    public static void fuzzerInitialize() throws IOException {
        loaded(new byte[0]);
        loaded(("\1" + Files.readString(Books.RULES.resolve("sources.yaml"))).getBytes(StandardCharsets.UTF_8));
    }

    public static void fuzzerTestOneInput(byte[] data) throws IOException {
        long began = SheetFuzz.processorNanos();
        loaded(data);
        SheetFuzz.inTime(began);
    }

    /** @return whether the book, or the rule file alone, is right */
    public static synchronized boolean loaded(byte[] data) throws IOException {
        String name = FILES.get(data.length == 0 ? 0 : Math.floorMod(data[0], FILES.size()));
        byte[] content = data.length == 0 ? data : Arrays.copyOfRange(data, 1, data.length);
        List<Fault> faults = new ArrayList<>();
        if (name.endsWith(".drl")) {
            String text = InputFile.text(content, Place.of(name), faults);
            if (text != null) {
                RuleParser.parse(name, text, Measures.kinds().keySet(), faults);
            }
        } else {
            faults.addAll(faultsWith(name, content));
        }
        if (!faults.isEmpty()) {
            SheetFuzz.told(faults);
        }
        return faults.isEmpty();
    }

    private static List<Fault> faultsWith(String name, byte[] content) throws IOException {
        if (rules == null) {
            rules = Files.createTempDirectory("fuzzed-book");
            BooksOfOneRule.write(rules);
        }
        Path file = rules.resolve(name);
        byte[] right = Files.exists(file) ? Files.readAllBytes(file) : null;
        Files.write(file, content);
        try {
            BookLoader.load(rules, rules.resolveSibling(rules.getFileName() + "-cache"), sentence -> {});
            return List.of();
        } catch (FaultsException e) {
            return e.faults();
        } finally {
            if (right == null) {
                Files.delete(file);
            } else {
                Files.write(file, right);
            }
        }
    }
}
