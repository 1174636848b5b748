package fitworthy.book;

import fitworthy.source.Words;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;

/** What the rules and practice values of a book were called before. */
public final class FormerIds {

    private final Map<String, String> present = new TreeMap<>();

    FormerIds(Map<String, Card> cards, Map<String, DatedLimit> practice) {
        cards.forEach((id, card) -> card.formerly().forEach(former -> present.put(former, id)));
        practice.forEach((id, value) -> value.formerly().forEach(former -> present.put(former, id)));
    }

    /** The present id of what was called so before; any other id as it is. */
    public String present(String id) {
        return present.getOrDefault(id, id);
    }

    /** Each former id with the present one. */
    public Map<String, String> all() {
        return present;
    }

    /** That what was called so is called otherwise now; nothing where it is not. */
    public String said(String id) {
        return present.containsKey(id) ? now(id, present.get(id)) : "";
    }

    /** That one id is another now, as every printout says it. */
    public static String now(String former, String present) {
        return former + " is now " + present;
    }

    /** What may be meant by an id that is not there: what it is called now, else the nearest of those there are. */
    public String suggestion(String id, Collection<String> ids) {
        return ids.contains(present(id)) ? " (" + said(id) + ")" : Words.suggestion(id, ids);
    }
}
