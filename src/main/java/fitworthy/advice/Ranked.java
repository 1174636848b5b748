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
 * @param number its number in that order, from 1; of what is told under another that one's with its own, as in 2.1
 * @param told what is told with it, itself the first; what is told under another has none
 * @param open whether guesses decide it, or the one that it is told under where that is as severe
 * @param follows likewise what comes of it
 */
public record Ranked(
        String number, Group<Finding> group, List<Group<Finding>> told, boolean open, Consequence follows) {

    /** All of them. */
    public static List<Ranked> of(Arrangement arrangement) {
        List<Ranked> ranked = new ArrayList<>();
        int number = 0;
        for (Told told : arrangement.told()) {
            number++;
            List<Group<Finding>> all = told.all().toList();
            for (int i = 0; i < all.size(); i++) {
                ranked.add(ranked(number + (i == 0 ? "" : "." + i), arrangement, told, all.get(i)));
            }
        }
        ranked.sort(Comparator.comparing((Ranked one) -> one.group.severity())
                .thenComparing(Ranked::open)
                .thenComparing(Ranked::follows));
        return List.copyOf(ranked);
    }

    private static Ranked ranked(String number, Arrangement arrangement, Told told, Group<Finding> group) {
        Group<Finding> beside = group.severity() == told.head().severity() ? told.head() : group;
        return new Ranked(
                number,
                group,
                group == told.head() ? told.all().toList() : List.of(),
                arrangement.isDecidedByGuesses(beside),
                beside.card().follows());
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
