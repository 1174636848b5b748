package fitworthy.advice;

import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Arrangement.Told;
import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Consequence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A finding in the order in which findings are acted on: the worst first, by what comes of it among equals, and what is
 * told under another right behind it.
 *
 * @param number its number in that order, from 1
 * @param told what is told with it, itself the first; what is told under another has none
 * @param follows what comes of it, or of the one that it is told under where that is as severe
 */
public record Ranked(int number, Group<Finding> group, List<Group<Finding>> told, Consequence follows) {

    /** All of them. */
    public static List<Ranked> of(Arrangement arrangement) {
        List<Ranked> unnumbered = arrangement.told().stream()
                .flatMap(told -> told.all().map(group -> unnumbered(told, group)))
                .sorted(Comparator.comparing((Ranked one) -> one.group.severity())
                        .thenComparing(Ranked::follows))
                .toList();
        List<Ranked> ranked = new ArrayList<>();
        unnumbered.forEach(one -> ranked.add(new Ranked(ranked.size() + 1, one.group, one.told, one.follows)));
        return List.copyOf(ranked);
    }

    private static Ranked unnumbered(Told told, Group<Finding> group) {
        boolean head = group == told.head();
        return new Ranked(
                0,
                group,
                head ? told.all().toList() : List.of(),
                (group.severity() == told.head().severity() ? told.head() : group)
                        .card()
                        .follows());
    }

    /** Whether it is told by itself. */
    public boolean isHead() {
        return !told.isEmpty();
    }

    /** How many are told under it. */
    public int under() {
        return Math.max(0, told.size() - 1);
    }
}
