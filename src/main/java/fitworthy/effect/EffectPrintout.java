package fitworthy.effect;

import fitworthy.advice.View;
import fitworthy.batch.Refusal;
import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.book.FormerIds;
import fitworthy.document.Json;
import fitworthy.document.Page;
import fitworthy.effect.Difference.State;
import fitworthy.effect.Difference.What;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.printout.words.Digits;
import fitworthy.shelf.Shelf;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What a change of practice does, as plain text at most 80 columns wide, or as lines of JSON. */
public final class EffectPrintout {

    /** Raised when a reader of the JSON would have to change. */
    static final String SHAPE = "fitworthy-effect/1";

    private static final int LABEL = 15;

    /** The first line of JSON. Counts are by the way in which things come out otherwise. */
    private record Summary(
            String shape,
            Side before,
            Side after,
            String caution,
            int sheets,
            int changed,
            int bad,
            int worstChanged,
            Map<String, Integer> counts,
            Map<String, Map<String, Integer>> rules,
            Map<String, String> renamed) {}

    /** One view, as it is written. */
    private record Side(
            String book,
            String edition,
            String content,
            String shop,
            String shopContent,
            String region,
            String asOf,
            String shelf,
            String shelfContent) {

        static Side of(View view) {
            boolean house = !view.book().house().isNone();
            return new Side(
                    view.book().cover().name(),
                    view.book().cover().edition(),
                    view.book().hash(),
                    house ? view.book().house().page().shop() : null,
                    house ? view.book().house().content() : null,
                    view.region(),
                    view.asOf(),
                    view.shelves()
                            .named()
                            .map(shelf -> shelf.folder().toString())
                            .orElse(null),
                    view.shelves().named().map(Shelf::content).orElse(null));
        }

        String words() {
            return book + ", edition " + edition + ", content " + content
                    + (shop == null ? "" : "; with what " + shop + " sets over it, content " + shopContent)
                    + (region == null ? "" : "; region " + region) + (asOf == null ? "" : "; practice as of " + asOf)
                    + (shelf == null ? "" : "; shelf " + shelf + ", content " + shelfContent);
        }
    }

    private final Page page;
    private final Effects effects;

    private EffectPrintout(PrintWriter out, Effects effects) {
        this.page = new Page(out);
        this.effects = effects;
    }

    /** Prints lines of JSON: the counts, each sheet that comes out otherwise, and each that cannot be used. */
    public static void json(PrintWriter out, Effects effects) {
        Map<String, Map<String, Integer>> rules = new TreeMap<>();
        effects.rules().forEach((id, rule) -> {
            Map<String, Integer> counts = words(rule.counts());
            counts.put("sheets", rule.sheets());
            rules.put(id, counts);
        });
        out.println(Json.line(new Summary(
                SHAPE,
                Side.of(effects.before()),
                Side.of(effects.after()),
                effects.after().book().cover().caution(),
                effects.sheets(),
                effects.changed(),
                effects.bad(),
                effects.verdicts(),
                words(effects.counts()),
                rules,
                renaming(effects).ids())));
        effects.eachChanged(effect -> out.println(Json.line(effect)));
        effects.eachBad(effect -> out.println(Json.line(effect)));
        out.flush();
    }

    private static Map<String, Integer> words(Map<What, Integer> counts) {
        Map<String, Integer> words = new TreeMap<>();
        counts.forEach((what, count) -> words.put(what.word(), count));
        return words;
    }

    public static void text(PrintWriter out, Effects effects) {
        new EffectPrintout(out, effects).text();
    }

    private void text() {
        page.wrapped(0, "Fitworthy: what a change of practice does to sheets; advice, not certification");
        page.rule();
        page.hanging("Before  ", Side.of(effects.before()).words());
        page.hanging("After   ", Side.of(effects.after()).words());
        renaming(effects).ids().forEach((former, present) -> page.hanging("Renamed ", FormerIds.now(former, present)));
        page.blank();
        page.wrapped(
                0,
                effects.sheets() + " sheets looked at: " + effects.changed() + " changed, "
                        + (effects.sheets() - effects.changed() - effects.bad()) + " unchanged, " + effects.bad()
                        + " cannot be used. The worst finding changes in " + effects.verdicts() + ".");
        if (effects.changed() > 0) {
            page.wrapped(0, "What changes: " + counted(effects.counts()) + ".");
            heading("BY RULE");
            effects.rules()
                    .forEach((id, rule) -> page.hanging(
                            String.format(Locale.ROOT, "%-30s ", id),
                            "sheets " + rule.sheets() + ": " + counted(rule.counts()) + retired(id)));
            heading("BY SHEET");
            effects.eachChanged(this::sheet);
        }
        if (effects.bad() > 0) {
            heading("CANNOT BE USED");
            effects.eachBad(effect -> effect.faults().forEach(this::fault));
        }
        page.rule();
        page.wrapped(0, effects.after().book().cover().caution());
        page.flush();
    }

    private static Renaming renaming(Effects effects) {
        return Renaming.of(effects.before().book(), effects.after().book());
    }

    /** When a rule ends in the book after the change, where it does. */
    private String retired(String id) {
        Book after = effects.after().book();
        return after.cards().containsKey(id)
                ? after.retired(id).map(ended -> "; it ends on " + ended.day()).orElse("")
                : "";
    }

    private void heading(String title) {
        page.blank();
        page.line(title);
    }

    private static String counted(Map<What, Integer> counts) {
        return new EnumMap<>(counts)
                .entrySet().stream()
                        .map(entry -> entry.getValue() + " " + entry.getKey().words())
                        .collect(Collectors.joining(", "));
    }

    private void sheet(SheetEffect effect) {
        page.wrapped(
                0,
                effect.sheet() + ": " + effect.title()
                        + (effect.region() == null
                                ? ""
                                : " (its region is new; before the change by " + effect.region() + ")")
                        + (effect.worst().changes()
                                ? " (worst: " + effect.worst().before() + " -> "
                                        + effect.worst().after() + ")"
                                : ""));
        effect.differences()
                .forEach(difference -> page.hanging(
                        String.format(Locale.ROOT, "  %-" + (LABEL - 2) + "s", label(difference)),
                        difference.id() + " [" + difference.subject()
                                + (difference.in().isEmpty() ? "" : ", " + difference.in()) + "]: "
                                + sides(difference)));
    }

    private static String label(Difference difference) {
        return difference.what().get(0).word().replace('-', ' ');
    }

    /** Like {@code met -> change; value 5.9 L, limit 5.5 L -> 6.0 L, margin 0.4 L -> -0.1 L}. */
    private String sides(Difference difference) {
        State before = difference.before();
        State after = difference.after();
        List<String> figures = new ArrayList<>();
        figure(
                figures,
                difference,
                "value",
                before.figures().value(),
                after.figures().value());
        figure(
                figures,
                difference,
                "limit",
                before.figures().limit(),
                after.figures().limit());
        figure(
                figures,
                difference,
                "margin",
                before.figures().margin(),
                after.figures().margin());
        if (difference.besides() != null) {
            difference.besides().forEach((name, change) -> figures.add(name + " " + change));
        }
        String was = words(before);
        String is = words(after);
        return (was.equals(is) ? was : was + " -> " + is)
                + (figures.isEmpty() ? "" : "; " + String.join(", ", figures));
    }

    private static String words(State state) {
        return state.outcome().replace('-', ' ')
                + (state.waived() == null ? "" : " (waived)")
                + (state.missing() == null ? "" : ", missing " + String.join(", ", state.missing()));
    }

    private void figure(List<String> figures, Difference difference, String name, Double before, Double after) {
        if (before == null && after == null) {
            return;
        }
        MeasureKind kind = kind(difference.id());
        // As people are shown it, unless that hides what is different.
        boolean hidden = before != null
                && after != null
                && !before.equals(after)
                && shown(before, kind, 0).equals(shown(after, kind, 0));
        String was = before == null ? null : shown(before, kind, hidden ? 2 : 0);
        String is = after == null ? null : shown(after, kind, hidden ? 2 : 0);
        figures.add(name + " "
                + (was == null || is == null || was.equals(is)
                        ? Objects.requireNonNullElse(is, was)
                        : was + " -> " + is));
    }

    private static String shown(double value, MeasureKind kind, int more) {
        String number = Digits.number(value, "", kind.decimals() + more);
        return kind.unit().isEmpty() ? number : number + " " + kind.unit();
    }

    private MeasureKind kind(String id) {
        Card card = effects.after()
                .book()
                .cards()
                .getOrDefault(id, effects.before().book().cards().get(id));
        return Measures.kinds().get(card.judges());
    }

    private void fault(Refusal refusal) {
        page.wrapped(
                0,
                refusal.place() + ": " + (refusal.about().isEmpty() ? "" : refusal.about() + ": ") + refusal.problem());
        page.wrapped(4, "right: " + refusal.right());
    }
}
