package fitworthy.printout.picture;

import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.towing.HitchMeasures;
import fitworthy.figures.tyres.TyreRatingMeasures;
import fitworthy.printout.picture.Svg.Anchor;
import fitworthy.printout.picture.Svg.Pen;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.Digits.Held;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How much of each limit every load case uses. */
final class Headroom {

    private static final String ID = "picture-headroom";
    private static final double MARGIN = 4;
    private static final double CASES = 134;
    private static final double BARS = 212;
    private static final double BARS_WIDTH = 150;
    private static final double SHARES = 393;
    private static final double BAR = 8;
    private static final double ROW = 12;
    /** A line of a limit's name. */
    private static final double NAME = 10;

    private static final double MOST = 2;
    private static final int MOST_CASES = 6;

    /** The limits shown, in their order, each with what it is called before its subject. */
    private static final Map<MeasureKind, String> LIMITS = new LinkedHashMap<>();

    static {
        LIMITS.put(LoadMeasures.LOADED, "Loaded mass (GVM)");
        LIMITS.put(LoadMeasures.AXLE, "");
        LIMITS.put(LoadMeasures.COMBINED, "With trailer (GCM)");
        LIMITS.put(LoadMeasures.ROOF, "Roof load");
        LIMITS.put(LoadMeasures.ROOF_AT_REST, "Roof at rest");
        LIMITS.put(TyreRatingMeasures.LOAD, "Tyres, ");
        LIMITS.put(TyreRatingMeasures.WHEEL_LOAD, "Wheels, ");
        LIMITS.put(HitchMeasures.TRAILER, "Tow rating, ");
        LIMITS.put(HitchMeasures.PLATE, "Plate, ");
        LIMITS.put(HitchMeasures.COUPLING, "Coupling, ");
        LIMITS.put(HitchMeasures.FORCE, "Force, ");
        LIMITS.put(HitchMeasures.BALL, "Ball load, ");
    }

    /** A limit with the measures that are held against it. */
    private record Limit(String name, List<Measure> measures) {}

    private final Svg svg = new Svg(ID);
    private final List<Limit> limits = new ArrayList<>();
    private final int cases;
    private final double most;

    static Optional<Picture> of(List<PictureFacts> cases) {
        Headroom headroom = new Headroom(cases);
        return headroom.limits.isEmpty() ? Optional.empty() : Optional.of(headroom.picture());
    }

    private Headroom(List<PictureFacts> cases) {
        this.cases = cases.size();
        LIMITS.forEach((kind, words) -> {
            Map<String, List<Measure>> bySubject = new LinkedHashMap<>();
            cases.forEach(facts -> facts.all(kind).forEach(measure -> bySubject
                    .computeIfAbsent(measure.getSubject(), subject -> new ArrayList<>())
                    .add(measure)));
            bySubject.forEach((subject, measures) -> limits.add(new Limit(
                    words.isEmpty() ? Words.capital(subject) : words.endsWith(", ") ? words + subject : words,
                    shown(measures))));
        });
        double largest = limits.stream()
                .flatMap(limit -> limit.measures.stream())
                .flatMap(measure -> PictureFacts.used(measure).stream())
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(1);
        most = Math.min(MOST, Math.max(1.2, Math.ceil(largest * 10 + 0.5) / 10));
    }

    /** What does not depend on the loading comes with every case but is shown once; of very many cases the fullest. */
    private static List<Measure> shown(List<Measure> measures) {
        Map<String, Measure> byCase = new LinkedHashMap<>();
        measures.forEach(measure -> byCase.putIfAbsent(measure.getLoadCase(), measure));
        if (byCase.size() <= MOST_CASES) {
            return List.copyOf(byCase.values());
        }
        return byCase.values().stream()
                .sorted(Comparator.comparingDouble(
                        (Measure measure) -> -PictureFacts.used(measure).orElse(Double.MAX_VALUE)))
                .limit(MOST_CASES)
                .toList();
    }

    private Picture picture() {
        double y = 22;
        for (int i = 0; i < limits.size(); i++) {
            y = limit(i + 1, limits.get(i), y);
            if (i < limits.size() - 1) {
                svg.line(Pen.HAIR, MARGIN, y - 1, Svg.WIDTH - MARGIN, y - 1);
            }
            y += 5;
        }
        svg.text(Svg.SMALL, Anchor.MIDDLE, at(1), 9, "limit");
        svg.line("limit", Pen.HAIR, at(1), 11, at(1), y - 5);
        if (cases > MOST_CASES) {
            svg.text(
                    Svg.SMALL,
                    Anchor.START,
                    MARGIN,
                    y + 5,
                    "Of " + cases + " load cases, for each limit the " + MOST_CASES + " that use most of it.");
            y += 10;
        }
        svg.text(Svg.SMALL, Anchor.START, BARS, 9, "0 %");
        return svg.picture("What is used of each limit", description(), y);
    }

    private double at(double share) {
        return BARS + BARS_WIDTH * share / most;
    }

    private double limit(int number, Limit limit, double top) {
        Measure first = limit.measures.get(0);
        boolean alone =
                limit.measures.size() == 1 && (cases == 1 || first.getLoadCase().isEmpty());
        List<List<String>> loadings = limit.measures.stream().map(this::loading).toList();
        double bars = loadings.stream().mapToDouble(lines -> lines.size() * ROW).sum();
        String rating = Double.isNaN(first.getLimit())
                ? "limit not known"
                : "limit " + Held.of(first).limitText();
        double room = alone ? BARS - 12 - Lettering.width(rating, Svg.SMALL) : CASES - 4;
        List<String> name = Lettering.lines(limit.name, Svg.NORMAL, room - MARGIN);
        double height = Math.max(bars, name.size() * NAME + (alone ? 2 : ROW + 1));
        for (int i = 0; i < name.size(); i++) {
            svg.bold(Svg.NORMAL, Anchor.START, MARGIN, top + 9 + i * NAME, name.get(i));
        }
        if (alone) {
            svg.text(Svg.SMALL, Anchor.END, BARS - 4, top + 9, rating);
        } else {
            svg.text(Svg.SMALL, Anchor.START, MARGIN, top + 9 + name.size() * NAME, rating);
        }
        double y = top + (height - bars) / 2;
        for (int i = 0; i < limit.measures.size(); i++) {
            Measure measure = limit.measures.get(i);
            for (int line = 0; line < loadings.get(i).size(); line++) {
                svg.text(
                        Svg.SMALL,
                        Anchor.END,
                        BARS - 4,
                        y + BAR + line * ROW,
                        loadings.get(i).get(line));
            }
            String part = "limit-" + number + "-" + (i + 1);
            Bar.draw(svg, part, measure, BARS, y + 1, BARS_WIDTH, BAR, most);
            boolean over = measure.isKnown() && measure.getHeadroom() < 0;
            String share = PictureFacts.used(measure)
                    .map(used -> Digits.number(used, "%", 0) + " %")
                    .orElse("?");
            svg.text(part + "-share", Svg.SMALL, Anchor.END, over, Svg.BLACK, SHARES, y + BAR, share);
            svg.text(
                    part + "-left",
                    Svg.SMALL,
                    Anchor.END,
                    over,
                    Svg.BLACK,
                    Svg.WIDTH - MARGIN,
                    y + BAR,
                    Bar.left(measure));
            y += ROW * loadings.get(i).size();
        }
        return top + height + 4;
    }

    /** The name of a loading in lines; one that is empty where there is nothing to tell apart. */
    private List<String> loading(Measure measure) {
        return cases > 1 ? Lettering.lines(measure.getLoadCase(), Svg.SMALL, BARS - 4 - CASES) : List.of("");
    }

    private String description() {
        StringBuilder text = new StringBuilder(
                cases <= MOST_CASES
                        ? "How much of each limit is used."
                        : "How much of each limit is used, in the " + MOST_CASES + " of " + cases
                                + " load cases that use most of it.");
        for (Limit limit : limits) {
            text.append(' ').append(Lettering.named(limit.name)).append(": ");
            for (int i = 0; i < limit.measures.size(); i++) {
                Measure measure = limit.measures.get(i);
                text.append(i == 0 ? "" : "; ")
                        .append(measure.getLoadCase().isEmpty() ? "" : Lettering.named(measure.getLoadCase()) + " ")
                        .append(PictureFacts.used(measure)
                                .map(used -> Digits.number(used, "%", 0) + " %, ")
                                .orElse(""))
                        .append(Bar.words(measure));
            }
            text.append('.');
        }
        return text.toString();
    }
}
