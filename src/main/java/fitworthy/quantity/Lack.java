package fitworthy.quantity;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is missing to know a figure: what was named, or what two figures lack together. That is put together only when
 * somebody asks, since of the sums over thousands of parts each lacks nearly as much as the whole.
 */
final class Lack {

    static final Lack NOTHING = new Lack(List.of());

    /** Null as long as nobody asked what the two lack together. */
    private List<Missing> named;

    private final Lack one;
    private final Lack other;

    private Lack(List<Missing> named) {
        this.named = named;
        this.one = null;
        this.other = null;
    }

    private Lack(Lack one, Lack other) {
        this.one = one;
        this.other = other;
    }

    static Lack of(List<Missing> missing) {
        return missing.isEmpty() ? NOTHING : new Lack(List.copyOf(missing));
    }

    /** What both lack, in the order of its paths. */
    Lack with(Lack more) {
        return isTogether() && (more == NOTHING || more == this)
                ? this
                : this == NOTHING && (more == NOTHING || more.isTogether()) ? more : new Lack(this, more);
    }

    private boolean isTogether() {
        return one != null;
    }

    /** By any thread: two that ask at once find the same. */
    List<Missing> list() {
        List<Missing> known = named;
        if (known == null) {
            known = List.copyOf(together());
            named = known;
        }
        return known;
    }

    /** Not by recursion, for a sum over thousands of parts is as deep. */
    private Set<Missing> together() {
        Set<Missing> missing = new TreeSet<>(Comparator.comparing(Missing::path));
        Set<Lack> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<Lack> left = new ArrayDeque<>(List.of(this));
        while (!left.isEmpty()) {
            Lack next = left.pop();
            List<Missing> known = next.named;
            if (!seen.add(next)) {
                continue;
            }
            if (known != null) {
                missing.addAll(known);
            } else {
                left.push(next.other);
                left.push(next.one);
            }
        }
        return missing;
    }
}
