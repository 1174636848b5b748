package fitworthy.counter.told;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.book.Severity;
import fitworthy.printout.ChangeWords;
import fitworthy.printout.CombinationWords;
import fitworthy.printout.ComparedPlan;
import fitworthy.printout.LookedFor;
import fitworthy.printout.words.ClearedWords;
import fitworthy.printout.words.OwnRemedies;
import fitworthy.search.Alternatives;
import fitworthy.search.Change;
import fitworthy.search.Mender.Mending;
import fitworthy.search.Mender.Offer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/**
 * What a search found, as it is offered.
 *
 * @param notes how far it went
 * @param groups what may be tried, in groups; those that would be empty are left out
 * @param complete whether it would find no more if it went on
 */
public record Offered(List<String> notes, List<Group> groups, boolean complete) {

    /** Offers of one sort. */
    public record Group(String heading, List<Item> items) {}

    /**
     * One of them.
     *
     * @param key what it is known by until the sheet changes
     * @param words what to do
     * @param lines what is won and lost
     */
    public record Item(String key, String words, List<String> lines, List<Change> changes) {}

    /** @param planned what the book says of the plan without changes */
    static Offered of(Advice planned, LookedFor found) {
        Mending mending = found.mending();
        List<String> notes = new ArrayList<>(List.of(ChangeWords.effort(mending)));
        if (mending.offers().isEmpty() && Arrangement.of(planned).finds(Severity.STOP)) {
            notes.add(ChangeWords.noOffer(planned, mending));
        }
        notes.addAll(OwnRemedies.briefly(planned, mending));
        List<Group> groups = new ArrayList<>();
        BiFunction<String, Offer, Item> whole = (key, offer) ->
                new Item(key, words(offer.changes()), ChangeWords.terms(planned, offer), offer.changes());
        add(groups, "Changes that clear every stop", "offer", mending.offers(), whole);
        add(groups, "Lighter plans", "lighter", mending.lighter(), whole);
        add(
                groups,
                "What helps most, one change at a time",
                "best",
                mending.best(),
                (key, offer) -> new Item(
                        key,
                        ChangeWords.brief(offer),
                        List.of(ClearedWords.cleared(planned, offer, true), ChangeWords.effects(planned, offer)),
                        offer.changes()));
        found.alternatives().ifPresent(all -> {
            CombinationWords.cutShort(all).ifPresent(notes::add);
            choices(groups, all);
        });
        return new Offered(notes, groups, found.complete());
    }

    private static String words(List<Change> changes) {
        return changes.stream().map(Change::words).collect(Collectors.joining("; "));
    }

    private static void add(
            List<Group> groups, String heading, String key, List<Offer> offers, BiFunction<String, Offer, Item> item) {
        List<Item> items = new ArrayList<>();
        offers.forEach(offer -> items.add(item.apply(key + "-" + (items.size() + 1), offer)));
        if (!items.isEmpty()) {
            groups.add(new Group(heading, items));
        }
    }

    /** The combinations but the first, which is the plan as written. */
    private static void choices(List<Group> groups, Alternatives<ComparedPlan> all) {
        List<Item> items = new ArrayList<>();
        for (int i = 1; i < all.plans().size(); i++) {
            var plan = all.plans().get(i);
            items.add(new Item(
                    "choice-" + i,
                    CombinationWords.choices(plan, i),
                    List.of(CombinationWords.counts(plan.kept())),
                    List.copyOf(plan.choices())));
        }
        if (!items.isEmpty()) {
            groups.add(new Group(
                    "Open choices; as written: "
                            + CombinationWords.choices(all.plans().get(0), 1) + " ("
                            + CombinationWords.counts(all.plans().get(0).kept()) + ")",
                    items));
        }
    }

    /** The one of a key. */
    Optional<Item> item(String key) {
        return groups.stream()
                .flatMap(group -> group.items().stream())
                .filter(item -> item.key().equals(key))
                .findFirst();
    }
}
