package fitworthy;

import fitworthy.book.Book;
import fitworthy.engine.BookLoader;
import fitworthy.engine.RuleEngine;
import fitworthy.proof.Cases;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The shipped rule book, loaded once for all tests. */
public final class Books {

    public static final Path RULES = Path.of("rules");
    public static final Path CACHE = Path.of("target", "rule-cache");

    private static RuleEngine engine;
    private static List<Cases.Case> cases;

    private Books() {}

    public static Book shipped() throws FaultsException {
        return engine().book();
    }

    /** The same with its rules. */
    public static synchronized RuleEngine engine() throws FaultsException {
        if (engine == null) {
            engine = BookLoader.load(RULES, CACHE, sentence -> {});
        }
        return engine;
    }

    /** Its cases, read once: to read them takes longer than to look at them. */
    public static synchronized List<Cases.Case> cases() throws FaultsException {
        if (cases == null) {
            cases = List.copyOf(Cases.read(RULES, shipped()));
        }
        return cases;
    }

    /**
     * Copies the shipped book with one of its topics and the sources that are cited there, so that it compiles in no
     * time; the plain sheet serves it too.
     */
    public static Path copyOf(String topic, Path folder) throws IOException {
        Folders.copy(
                RULES,
                folder,
                inside -> inside.getNameCount() == 1 || inside.startsWith("tables") || inside.startsWith(topic));
        String cited = Files.readString(folder.resolve(topic).resolve("cards.yaml"))
                + Files.readString(folder.resolve(topic).resolve("practice.yaml"));
        Path sources = folder.resolve("sources.yaml");
        Files.writeString(
                sources,
                Stream.of(Files.readString(sources).split("(?m)^(?=\\S)"))
                        .filter(entry -> cited.matches("(?s).*[\\[ ]" + entry.split(":")[0] + "[,\\]\n].*"))
                        .collect(Collectors.joining()));
        return folder;
    }
}
