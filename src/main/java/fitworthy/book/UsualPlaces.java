package fitworthy.book;

import fitworthy.book.UsualPlace.Spot;
import fitworthy.quantity.Figure;
import fitworthy.schema.Bound;
import fitworthy.shelf.WishPlaces;
import fitworthy.source.Fault;
import fitworthy.source.Located;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The places in words that a book knows.
 *
 * @param places by their words, in the order of the file
 * @param spoken their words by every way to say them
 * @param entries where they stand in the file, by their words
 */
public record UsualPlaces(Map<String, UsualPlace> places, Map<String, String> spoken, Map<String, Located> entries)
        implements WishPlaces {

    public static final UsualPlaces NONE = new UsualPlaces(Map.of(), Map.of(), Map.of());

    private static final Pattern WORDS = Pattern.compile("[a-z]+( [a-z]+){1,7}");
    private static final Pattern WHERE =
            Pattern.compile("^(in|on|at|under|above|over|behind|beside|between|ahead of) ");
    private static final Pattern MEASURED = Pattern.compile(
            "(?<![^ ])[0-9.]+ ?[a-z]{1,2} (behind|ahead of|in front of) (the )?("
                    + Stream.of(UsualPlace.Start.values())
                            .filter(UsualPlace.Start::isTaped)
                            .map(UsualPlace.Start::words)
                            .collect(Collectors.joining("|"))
                    + ")$",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern SPACES = Pattern.compile("\\s+");

    /**
     * The places of a page.
     *
     * @param page its entries
     * @param parts the regions and sources of the book
     * @param faults gets what is wrong with them
     */
    public static UsualPlaces of(Map<String, Bound<UsualPlace>> page, BookParts parts, List<Fault> faults) {
        Map<String, UsualPlace> places = new LinkedHashMap<>();
        Map<String, String> spoken = new LinkedHashMap<>();
        Map<String, Located> entries = new LinkedHashMap<>();
        page.forEach((words, bound) -> {
            Check check = new Check(words, bound, parts, faults);
            check.look();
            places.put(words, bound.record());
            entries.put(words, bound.places());
            for (String way : check.ways()) {
                String first = spoken.putIfAbsent(way, words);
                if (first != null) {
                    check.fault(
                            "'" + way + "' is already said of '" + first + "'", "one place for a word", NodePath.TOP);
                }
            }
            check.nextRows(page.keySet());
        });
        return new UsualPlaces(places, spoken, entries);
    }

    /** The words under which the book knows a place that somebody names; nothing where it does not. */
    public Optional<String> known(String named) {
        return Optional.ofNullable(spoken.get(
                SPACES.matcher(named.strip().toLowerCase(Locale.ROOT)).replaceAll(" ")));
    }

    /**
     * The place that a wish ends with, such as "under the tray" or "120 mm behind the rear axle", as it is written. What
     * is no more than a noun is none, since a part may be called so ("front bar").
     */
    @Override
    public Optional<String> ending(String wish) {
        Matcher measured = MEASURED.matcher(wish);
        if (measured.find()) {
            return Optional.of(measured.group());
        }
        String plain = wish.toLowerCase(Locale.ROOT);
        return spoken.keySet().stream()
                .filter(way -> WHERE.matcher(way).find()
                        && (plain.equals(way) || plain.endsWith(" " + way) || plain.endsWith("=" + way)))
                .max(Comparator.comparingInt(String::length));
    }

    @Override
    public List<String> ways(String place) {
        return known(place)
                .map(words -> spoken.keySet().stream()
                        .filter(way -> spoken.get(way).equals(words))
                        .toList())
                .orElse(List.of());
    }

    /** Every way to say one of them. */
    public Collection<String> ways() {
        return spoken.keySet();
    }

    /** What must hold of one of them. */
    private record Check(String words, Bound<UsualPlace> bound, BookParts parts, List<Fault> faults) {

        List<String> ways() {
            List<String> ways = new ArrayList<>(List.of(words));
            ways.addAll(bound.record().also());
            return ways;
        }

        void look() {
            for (String way : ways()) {
                if (!WORDS.matcher(way).matches()) {
                    fault(
                            "'" + Words.shortened(way, 40) + "' is no place in words",
                            "two to eight words in small letters, such as 'on the roof'",
                            NodePath.TOP);
                }
            }
            if (bound.record().values().isEmpty()) {
                fault("has no value", "values: [{region: any, from: 2000-01-01, ...}]", NodePath.of("values"));
            }
            Map<String, Integer> begun = new HashMap<>();
            for (int i = 0; i < bound.record().values().size(); i++) {
                UsualPlace.Value value = bound.record().values().get(i);
                NodePath path = DatedLimit.path(i);
                value(value, path);
                if (begun.put(value.region() + " " + value.from(), i) != null) {
                    fault(
                            "two values begin in " + value.region() + " on " + value.from(),
                            "one value a region and day",
                            path);
                }
            }
        }

        void nextRows(Collection<String> places) {
            List<UsualPlace.Value> values = bound.record().values();
            for (int i = 0; i < values.size(); i++) {
                NodePath path = DatedLimit.path(i).to("next-row").to("place");
                values.get(i)
                        .nextRow()
                        .map(UsualPlace.NextRow::place)
                        .filter(place -> !places.contains(place))
                        .ifPresent(place -> fault(
                                "'" + Words.shortened(place, 40) + "' is no place in words"
                                        + Words.suggestion(place, places),
                                "one of the places of this file",
                                path));
            }
        }

        private void value(UsualPlace.Value value, NodePath path) {
            if (parts.lackRegion(value.region())) {
                fault(
                        "'" + value.region() + "' is not a region of the book",
                        "one of " + String.join(", ", parts.regions().keySet()),
                        path.to("region"));
            }
            if (value.basis().value() != Basis.COMMON_PRACTICE && value.basis().value() != Basis.MEMORY) {
                fault(
                        "is called " + Words.hyphenated(value.basis().value().name())
                                + ", but no text gives such places",
                        "basis: common-practice or memory",
                        path.to("basis"));
            }
            spot(value.at(), path.to("at"));
            value.otherwise().ifPresent(spot -> spot(spot, path.to("otherwise")));
            if (value.otherwise().stream().anyMatch(spot -> spot.start().value().isOfBody())
                    || value.at().start().value().isOfBody()
                            && value.otherwise().isEmpty()) {
                fault(
                        "does not say where it is on a vehicle without tray or canopy",
                        "otherwise: {start: rear-axle, share: 5 % +/- 15 %, y: 0 mm +/- 300 mm}",
                        path);
            }
        }

        private void spot(Spot spot, NodePath path) {
            if (isBare(spot.share()) && isBare(spot.back())) {
                fault("does not say how far off 'share' or 'back' may be", "back: 450 mm +/- 250 mm", path);
            }
            if (isBare(spot.y())) {
                fault("does not say how far off 'y' may be", "y: 0 mm +/- 300 mm", path);
            }
            if (spot.z().known() && spot.aboveFloor().known()) {
                fault("has both 'z' and 'above-floor'", "one of the two", path);
            }
            Figure up = spot.z().or(spot.aboveFloor());
            if (up.known() && isBare(up)) {
                fault("does not say how far off its height may be", "z: 900 mm +/- 200 mm", path);
            }
        }

        private static boolean isBare(Figure figure) {
            return figure.tolerance() <= 0;
        }

        private void fault(String problem, String mend, NodePath path) {
            faults.add(new Fault(bound.places().place(path), words, problem, mend));
        }
    }
}
