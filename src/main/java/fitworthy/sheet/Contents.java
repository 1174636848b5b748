package fitworthy.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which parts and tanks of a sheet stand in or on which, as their {@code in} says. */
public final class Contents {

    /** By the part that they stand in or on. */
    private final Map<String, List<String>> standing = new HashMap<>();

    public Contents(List<Fitment> fitments, List<Tank> tanks) {
        fitments.forEach(fitment -> add(fitment.in(), fitment.name()));
        tanks.forEach(tank -> add(tank.in(), tank.name()));
    }

    private void add(String carrier, String name) {
        if (!carrier.isEmpty()) {
            standing.computeIfAbsent(carrier, none -> new ArrayList<>()).add(name);
        }
    }

    /** These parts with all that stands in or on them. */
    public Set<String> with(Collection<String> parts) {
        Set<String> all = new LinkedHashSet<>(parts);
        Deque<String> carriers = new ArrayDeque<>(all);
        while (!carriers.isEmpty()) {
            for (String name : standing.getOrDefault(carriers.poll(), List.of())) {
                if (all.add(name)) {
                    carriers.add(name);
                }
            }
        }
        return all;
    }
}
