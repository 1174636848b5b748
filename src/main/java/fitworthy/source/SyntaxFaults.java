package fitworthy.source;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.Optional;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** What a parser found wrong with a text, told so that somebody who does not know its language can mend it. */
final class SyntaxFaults {

    private static final String GENERAL =
            "one 'name: value' a line, two spaces a level; put a value with : # [ ] { } , & * ! % in quotes";

    private SyntaxFaults() {}

    static Fault json(JsonProcessingException e, Place place) {
        String problem = String.valueOf(e.getOriginalMessage()).replaceAll("(?s) \\(start marker.*|: enable `.*", "");
        return new Fault(
                place,
                "",
                "not readable as JSON, which a file is that begins with '{': " + Words.shortened(problem, 160),
                "names and words in double quotes, a comma between two fields, none after the last");
    }

    /**
     * A fault of YAML.
     *
     * @param before how many lines of the file stand before the text
     */
    static Fault yaml(JsonProcessingException e, String text, Place reached, int before) {
        if (e.getCause() instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
            Optional<YamlSlip> slip = YamlSlip.behind(text, marked);
            return slip.isPresent()
                    ? unreadable(
                            new Place(
                                    reached.file(),
                                    slip.get().line() + 1 + before,
                                    slip.get().column() + 1),
                            slip.get().problem(),
                            slip.get().mend())
                    : unreadable(
                            new Place(
                                    reached.file(),
                                    marked.getProblemMark().getLine() + 1 + before,
                                    marked.getProblemMark().getColumn() + 1),
                            (marked.getContext() == null ? "" : marked.getContext() + ", ") + marked.getProblem(),
                            GENERAL);
        }
        return unreadable(
                reached, String.valueOf(e.getOriginalMessage()).replaceAll("(?s), got this instead.*", ""), GENERAL);
    }

    private static Fault unreadable(Place place, String problem, String mend) {
        return new Fault(place, "", "not readable as YAML: " + Words.shortened(problem, 160), mend);
    }
}
