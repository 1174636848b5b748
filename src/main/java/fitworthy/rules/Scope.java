package fitworthy.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The names that a rule has given its facts so far. */
final class Scope {

    private final Map<String, Fact> facts = new HashMap<>();
    private final List<String> order = new ArrayList<>();

    /** What can be compared with, by name. */
    Map<String, Fact> facts() {
        return facts;
    }

    /** Gives a fact a name. @return whether no other has it */
    boolean add(String name, Fact fact) {
        boolean free = facts.putIfAbsent(name, fact) == null;
        if (free) {
            order.add(name);
        }
        return free;
    }

    /** The names there are now, for {@link #forget}. */
    int mark() {
        return order.size();
    }

    /** Takes back the names given since a mark, and returns them. */
    Map<String, Fact> forget(int mark) {
        Map<String, Fact> since = new LinkedHashMap<>();
        List<String> names = order.subList(mark, order.size());
        names.forEach(name -> since.put(name, facts.remove(name)));
        names.clear();
        return since;
    }
}
