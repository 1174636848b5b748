package fitworthy.search;

import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.book.Book;
import fitworthy.engine.RuleEngine;
import fitworthy.schema.KnownGroups;
import fitworthy.sheet.Sheet;
import fitworthy.shelf.Shelf;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.usual.Filling;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import java.util.stream.LongStream;

/**
 * Every combination of the choices that a sheet leaves open, each run through the whole book.
 *
 * @param <P> what is kept of each advice
 * @param plans the combinations looked at, the plan as written first
 * @param all how many combinations there are
 */
public record Alternatives<P>(List<Alternative<P>> plans, long all) {

    /** Combinations run together, so that every processor has some. */
    private static final int BATCH = 8;

    /** Whether every combination was looked at. */
    public boolean complete() {
        return plans.size() == all;
    }

    /** One combination. @param choices one change for each option asked for @param kept what is kept of its advice */
    public record Alternative<P>(List<Change.Choose> choices, P kept) {}

    /**
     * Runs the combinations.
     *
     * @param options names of the options to vary; the others stay as written
     * @param keep what is kept of the advice on each combination; by several threads
     * @param stop asked before each run but the first whether to give up; from several threads
     * @param progress told how many were run so far
     */
    public static <P> Alternatives<P> of(
            RuleEngine engine,
            Node.Mapping root,
            Sheet sheet,
            List<String> options,
            Function<Advice, P> keep,
            BooleanSupplier stop,
            IntConsumer progress) {
        List<Sheet.Option> varied = sheet.options().stream()
                .filter(option -> options.contains(option.name()))
                .toList();
        long all = varied.stream()
                .mapToLong(option -> option.choices().size())
                .reduce(1, (sum, each) -> sum > Long.MAX_VALUE / each ? Long.MAX_VALUE : sum * each);
        List<Change.Choose> written = choices(varied, 0);
        Function<List<Change.Choose>, Sheet> chosen = chosen(engine.book(), root, sheet);
        Advice first = Adviser.counted(engine, chosen.apply(written));
        LongFunction<Alternative<P>> alternative = number -> {
            List<Change.Choose> choices = choices(varied, number);
            return new Alternative<>(choices, keep.apply(Adviser.counted(engine, chosen.apply(choices), first)));
        };
        List<Alternative<P>> plans = new ArrayList<>();
        plans.add(new Alternative<>(written, keep.apply(first)));
        while (plans.size() < all && !stop.getAsBoolean()) {
            List<Optional<Alternative<P>>> batch = LongStream.range(plans.size(), Math.min(plans.size() + BATCH, all))
                    .parallel()
                    .mapToObj(number -> stop.getAsBoolean()
                            ? Optional.<Alternative<P>>empty()
                            : Optional.of(alternative.apply(number)))
                    .toList();
            // What comes after a combination that was not run is left out, so that the table has no gap.
            batch.stream().takeWhile(Optional::isPresent).forEach(plan -> plans.add(plan.get()));
            progress.accept(plans.size());
        }
        return new Alternatives<>(plans, all);
    }

    /**
     * What a sheet could leave open: by planned part, what lies on the shelf that could be fitted in its place.
     *
     * @param root the tree of the sheet
     */
    public static Map<String, List<String>> openable(Node.Mapping root, Sheet sheet, Shelf shelf) {
        return ShelfLevers.names(root, sheet, shelf);
    }

    /** The sheet with other choices; read anew where a place in words may hang on a part that is chosen. */
    private static Function<List<Change.Choose>, Sheet> chosen(Book book, Node.Mapping root, Sheet sheet) {
        if (Filling.isWritten(root, book)) {
            return choices -> sheet.taking(
                    choices.stream().collect(Collectors.toMap(Change.Choose::option, Change.Choose::choice)));
        }
        KnownGroups groups = Change.groups(root, book);
        return choices -> {
            try {
                return Change.sheet(choices, root, sheet, book, groups);
            } catch (FaultsException e) {
                // A sheet is checked with all its parts, whichever are taken.
                throw new IllegalStateException("another choice makes the sheet unreadable", e);
            }
        };
    }

    /** The combination of this number, counting the last option fastest and each from the choice that is taken. */
    private static List<Change.Choose> choices(List<Sheet.Option> options, long number) {
        List<Change.Choose> choices = new ArrayList<>();
        long rest = number;
        for (int i = options.size() - 1; i >= 0; i--) {
            Sheet.Option option = options.get(i);
            int taken = option.choices().indexOf(option.taken());
            int index = (int)
                    ((taken + rest % option.choices().size()) % option.choices().size());
            choices.add(
                    0,
                    new Change.Choose(option.name(), option.choices().get(index).name()));
            rest /= option.choices().size();
        }
        return choices;
    }
}
