package fitworthy.source;

import com.fasterxml.jackson.core.JsonProcessingException;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** What a parser found wrong with a text, told so that somebody who does not know its language can mend it. */
final class SyntaxFaults {

    private SyntaxFaults() {}

    static Fault json(JsonProcessingException e, Place place) {
        String problem = String.valueOf(e.getOriginalMessage()).replaceAll("(?s) \\(start marker.*|: enable `.*", "");
        return new Fault(
                place,
                "",
                "not readable as JSON, which a file is that begins with '{': " + Words.shortened(problem, 160),
                "names and words in double quotes, a comma between two fields, none after the last");
    }

    /** @param before how many lines of the file stand before the text */
    static Fault yaml(JsonProcessingException e, Place reached, int before) {
        Place place = reached;
        String problem = String.valueOf(e.getOriginalMessage()).replaceAll("(?s), got this instead.*", "");
        if (e.getCause() instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
            place = new Place(
                    reached.file(),
                    marked.getProblemMark().getLine() + 1 + before,
                    marked.getProblemMark().getColumn() + 1);
            problem = (marked.getContext() == null ? "" : marked.getContext() + ", ") + marked.getProblem();
        }
        String mend = problem.contains("(TAB)")
                ? "indent with two spaces a level, never with a tab"
                : problem.contains("mapping values are not allowed")
                        ? "one 'name: value' a line, names of a group and dashes of a list each straight below the "
                                + "other; a value that holds ': ' in quotes"
                        : "one 'name: value' a line, two spaces a level; put a value with : # [ ] { } , & * ! % in "
                                + "quotes";
        return new Fault(place, "", "not readable as YAML: " + Words.shortened(problem, 160), mend);
    }
}
