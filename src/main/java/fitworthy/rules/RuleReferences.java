package fitworthy.rules;

import fitworthy.source.Place;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/**
 * What a rule's condition mentions, and where it stands.
 *
 * @param id the rule's name
 * @param file its file, as it was opened
 * @param line the line of its name
 * @param measures names of the measures it matches
 * @param practice ids of the practice values it matches
 * @param earlier ids of the advice it builds on
 * @param joined names of the measures whose number is multiplied in its matches
 */
public record RuleReferences(
        String id,
        String file,
        int line,
        Set<String> measures,
        Set<String> practice,
        Set<String> earlier,
        List<String> joined) {

    /** Topic folder, file and line, which are the same wherever the book lies. */
    public String place() {
        return new Place(file, line, 0).inBook();
    }

    /** A rule file by topic folder and name. */
    public static String inFolder(String file) {
        Path path = Path.of(file);
        return path.getParent().getFileName() + "/" + path.getFileName();
    }

    /** The same in a book that lies elsewhere. */
    public RuleReferences in(Path book) {
        return new RuleReferences(
                id, book.resolve(inFolder(file)).toString(), line, measures, practice, earlier, joined);
    }
}
