package fitworthy.book;

import fitworthy.source.NodePath;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** What must hold of former ids: each leads to one rule or practice value, and none is in use. */
final class FormerIdChecks {

    private static final Pattern ID = Pattern.compile("[a-z]+\\.[a-z][a-z0-9-]*");

    private final Map<String, Card> cards;
    private final Map<String, DatedLimit> practice;
    private final CardWords.Faults faults;
    /** The present id, by former id. */
    private final Map<String, String> seen = new HashMap<>();

    FormerIdChecks(Map<String, Card> cards, Map<String, DatedLimit> practice, CardWords.Faults faults) {
        this.cards = cards;
        this.practice = practice;
        this.faults = faults;
    }

    void check() {
        cards.forEach((id, card) -> check(id, card.formerly()));
        practice.forEach((id, value) -> check(id, value.formerly()));
    }

    private void check(String id, List<String> formerly) {
        for (int i = 0; i < formerly.size(); i++) {
            String former = formerly.get(i);
            NodePath path = NodePath.of("formerly").to(i + 1);
            if (!ID.matcher(former).matches()) {
                faults.tell(
                        id,
                        "its former id '" + former + "' is not written as ids are",
                        "formerly: [mass.over-gvm]",
                        path);
            } else if (cards.containsKey(former) || practice.containsKey(former)) {
                faults.tell(
                        id,
                        "its former id '" + former + "' is in use",
                        "the present id of one thing is never the former id of another",
                        path);
            }
            String other = seen.putIfAbsent(former, id);
            if (other != null) {
                faults.tell(
                        id,
                        "its former id '" + former + "' stands in the book twice; first at '" + other + "'",
                        "a former id leads to one place",
                        path);
            }
        }
    }
}
