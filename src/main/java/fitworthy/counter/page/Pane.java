package fitworthy.counter.page;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.OpenSheet;
import fitworthy.source.Node;
import java.util.Map;
import java.util.Optional;

/** A part of a sheet's page that follows every change. */
public interface Pane {

    /**
     * What it shows.
     *
     * @param before the answer before the last change of this page; empty where the page is new
     * @param asked what this page has chosen, such as a loading, by name
     */
    record Seen(OpenSheet sheet, Answer now, Optional<Answer> before, Map<String, String> asked) {

        /** What the sheet calls itself; the name of its file where it has no title. */
        public String title() {
            return now.tree() != null
                            && now.tree().get("title") instanceof Node.Scalar title
                            && !title.text().isBlank()
                    ? title.text()
                    : sheet.name();
        }

        public String asked(String name) {
            return asked.getOrDefault(name, "");
        }
    }

    /** The id of its element on the page. */
    String id();

    /** What stands within that element. */
    String html(Seen seen);

    /**
     * Whether it stays on the page as it was sent, but for what is fetched into elements that come empty. Then what did not
     * change is left out of the next answer.
     */
    default boolean staysAsSent() {
        return false;
    }

    /** Whether it is shown anew after a change; not while one types in it, since that would take the field away. */
    default boolean isNew(Seen seen) {
        return true;
    }

    /** Elements outside of that element, or within it while it is not shown anew, that follow a change; each swapped by its id. */
    default String beside(Seen seen) {
        return "";
    }
}
