package fitworthy.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What people read is in short sentences and in the reader's words; the words to keep out stand in a list. */
class PlainWordsTest {

    /** Words in a sentence at most, and in most sentences. */
    private static final int MOST = 25;

    private static final int MOSTLY = 18;
    /** The share of the sentences that are no longer than that. */
    private static final double OFTEN = 0.75;

    private static final Path STIFF = Path.of("src/test/resources/words/stiff.txt");

    private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.?!])\\s+");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    private static final Pattern JOINED = Pattern.compile("\"\\s*\\+\\s*\"");

    /** An expression and what to say in its place. */
    private record Stiff(Pattern words, String plain) {}

    private static List<Stiff> stiff() throws IOException {
        return Files.readAllLines(STIFF).stream()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split(" \\| "))
                .map(parts -> new Stiff(Pattern.compile(parts[0], Pattern.CASE_INSENSITIVE), parts[1]))
                .toList();
    }

    private static List<String> sentences(String text) {
        return Stream.of(SENTENCE_END.split(text.strip()))
                .filter(sentence -> !sentence.isEmpty())
                .toList();
    }

    /** A placeholder counts as a word, with a practice value's "of limit" too. */
    private static int words(String sentence) {
        return sentence.replaceAll("\\{[^}]*\\}", "x").split("\\s+").length;
    }

    /** Each text that has a stiff word or a sentence that is too long, with what is wrong. */
    private static List<String> faults(Map<String, String> texts) throws IOException {
        List<String> faults = new ArrayList<>();
        List<Stiff> stiff = stiff();
        texts.forEach((where, text) -> {
            for (Stiff bad : stiff) {
                Matcher found = bad.words().matcher(text);
                if (found.find()) {
                    faults.add(where + ": '" + found.group() + "', say: " + bad.plain());
                }
            }
            sentences(text).stream()
                    .filter(sentence -> words(sentence) > MOST)
                    .forEach(sentence -> faults.add(where + ": " + words(sentence) + " words: " + sentence));
        });
        return faults;
    }

    private static void plain(Map<String, String> texts) throws IOException {
        assertFalse(texts.isEmpty());
        List<String> faults = faults(texts);
        assertEquals(List.of(), faults, () -> faults.size() + " faults:\n" + String.join("\n", faults));
    }

    /** Every text of every card, by where it stands. */
    private static Map<String, String> cards() throws FaultsException {
        Map<String, String> texts = new LinkedHashMap<>();
        Books.shipped().cards().forEach((id, card) -> {
            texts.put(id + " title", card.title());
            texts.put(id + " met", card.met());
            texts.put(id + " remedy", card.remedy());
            texts.put(id + " why", card.why());
            asks(id, card.ask(), texts);
            card.inRegion().forEach(own -> {
                texts.put(id + " " + own.region() + " remedy", own.remedy());
                texts.put(id + " " + own.region() + " why", own.why());
                asks(id + " " + own.region(), own.ask(), texts);
            });
        });
        return texts;
    }

    private static void asks(String id, List<Ask> asks, Map<String, String> texts) {
        for (int i = 0; i < asks.size(); i++) {
            texts.put(id + " ask " + (i + 1) + " what", asks.get(i).what());
            texts.put(id + " ask " + (i + 1) + " bring", asks.get(i).bring());
        }
    }

    @Test
    void cardsArePlain() throws FaultsException, IOException {
        plain(cards());
    }

    @Test
    void mostSentencesOfCardsAreShort() throws FaultsException {
        List<String> all = cards().values().stream()
                .flatMap(text -> sentences(text).stream())
                .toList();
        long few = all.stream().filter(sentence -> words(sentence) <= MOSTLY).count();
        assertTrue(few >= OFTEN * all.size(), few + " of " + all.size());
    }

    /** Measures are asked for by their meaning, grades of evidence stand behind every finding. */
    @Test
    void namesOfMeasuresAndGradesOfEvidenceArePlain() throws IOException {
        Map<String, String> texts = new LinkedHashMap<>();
        for (MeasureKind kind : Measures.kinds().values()) {
            texts.put(kind.name(), kind.meaning());
            texts.put(kind.name() + " limit", kind.limitMeaning());
        }
        for (Basis basis : Basis.values()) {
            texts.put(basis.name(), basis.words());
        }
        plain(texts);
    }

    /** Headings, labels and messages: what the code itself says. */
    @Test
    void labelsArePlain() throws IOException {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String room : List.of("advice", "batch", "cli", "effect", "learn", "printout", "search")) {
            try (Stream<Path> files = Files.walk(Path.of("src/main/java/fitworthy", room))) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    literals(file).forEach(text -> texts.put(file.getFileName() + " \"" + text + "\"", text));
                }
            }
        }
        plain(texts);
    }

    /** The texts in a source file, those that are joined as one. */
    private static List<String> literals(Path file) throws IOException {
        return LITERAL.matcher(JOINED.matcher(Files.readString(file)).replaceAll(""))
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    @Test
    void theListFindsWhatItNames() throws IOException {
        assertEquals(
                List.of("a: 'for want of', say: because it is missing", "b: 26 words: " + "so ".repeat(25) + "on."),
                faults(Map.of("a", "Not checked for want of a figure.", "b", "so ".repeat(25) + "on.")).stream()
                        .sorted()
                        .toList());
        assertEquals(List.of(), faults(Map.of("a", "97 kg spare; allow 117 kg (3 %).")));
    }
}
