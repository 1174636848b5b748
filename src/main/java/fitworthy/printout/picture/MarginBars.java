package fitworthy.printout.picture;

import fitworthy.advice.Advice;
import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.towing.HitchMeasures;
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
import java.util.Set;

/** The margin to each mass limit in each loading, in as little room as it takes. */
final class MarginBars {

    private static final String ID = "picture-margins";
    private static final Set<MeasureKind> MASSES = Set.of(
            LoadMeasures.LOADED,
            LoadMeasures.AXLE,
            LoadMeasures.COMBINED,
            LoadMeasures.ROOF,
            LoadMeasures.ROOF_AT_REST);
    private static final double EDGE = 2;
    private static final double NAMES = 122;
    private static final double LOADINGS = 226;
    private static final double BARS = 232;
    private static final double BARS_WIDTH = 100;
    private static final double VALUES = 398;
    private static final double LINE = 10;
    private static final double BAR = 6.5;
    private static final double MOST = 1.6;
    /** Loadings that one limit is shown in; of more those that leave least. */
    private static final int MOST_LOADINGS = 4;

    private final Svg svg = new Svg(ID);
    private final StringBuilder words = new StringBuilder("Margin to each mass limit.");
    private final boolean many;
    private final int most;
    private double y = 4;

    private MarginBars(boolean many, int most) {
        this.many = many;
        this.most = most;
    }

    static Optional<Picture> of(Advice advice) {
        Map<String, List<Measure>> limits = limits(PictureFacts.of(advice));
        if (limits.isEmpty()) {
            return Optional.empty();
        }
        MarginBars bars = new MarginBars(advice.loadings().size() > 1, limits.size() > 6 ? 1 : MOST_LOADINGS);
        limits.forEach(bars::limit);
        return Optional.of(bars.svg.picture(
                "Margin to each limit, by loading (black: over it; thin line: how far it may be off)",
                bars.words.toString(),
                bars.y));
    }

    /** What is held against each limit, by the limit's name; what the loading does not change once. */
    private static Map<String, List<Measure>> limits(List<PictureFacts> cases) {
        Map<String, Map<String, Measure>> limits = new LinkedHashMap<>();
        cases.forEach(facts -> facts.measures().stream()
                .filter(measure -> MASSES.contains(measure.kind()))
                .forEach(measure -> limits.computeIfAbsent(name(measure), none -> new LinkedHashMap<>())
                        .putIfAbsent(measure.getLoadCase(), measure)));
        Map<String, List<Measure>> all = new LinkedHashMap<>();
        limits.forEach((name, byCase) -> all.put(name, List.copyOf(byCase.values())));
        ball(cases).ifPresent(measure -> all.put(name(measure), List.of(measure)));
        return all;
    }

    private static String name(Measure measure) {
        return Words.capital(measure.getSubject()) + ": " + measure.kind().limitMeaning();
    }

    /** The load on the ball against the one of its limits that leaves least, of those that are known. */
    private static Optional<Measure> ball(List<PictureFacts> cases) {
        return cases.stream()
                .flatMap(facts -> facts.all(HitchMeasures.BALL).stream())
                .filter(measure -> measure.isKnown() && measure.hasLimit())
                .min(Comparator.comparingDouble(Measure::getHeadroom));
    }

    private void limit(String name, List<Measure> measures) {
        List<Measure> shown = measures.size() <= most
                ? measures
                : measures.stream()
                        .sorted(Comparator.comparingDouble(
                                (Measure measure) -> -PictureFacts.used(measure).orElse(Double.MAX_VALUE)))
                        .limit(most)
                        .toList();
        words.append(' ').append(name).append(": ");
        double top = y;
        List<String> lines = Lettering.lines(name, Svg.SMALL, NAMES - EDGE);
        for (int i = 0; i < lines.size(); i++) {
            svg.bold(Svg.SMALL, Anchor.START, EDGE, top + 8 + i * LINE, lines.get(i));
        }
        List<String> told = new ArrayList<>();
        for (Measure measure : shown) {
            told.add(bar(measure));
        }
        words.append(String.join("; ", told)).append('.');
        if (shown.size() < measures.size()) {
            svg.text(
                    Svg.SMALL,
                    Anchor.END,
                    LOADINGS,
                    y + 8,
                    "and " + (measures.size() - shown.size()) + " with more spare");
            y += LINE;
        }
        y = Math.max(y, top + lines.size() * LINE) + 3;
        svg.line(Pen.HAIR, EDGE, y - 1, Svg.WIDTH - EDGE, y - 1);
        y += 1;
    }

    /** A bar beside its loading. @return the same in words */
    private String bar(Measure measure) {
        List<String> loading =
                many ? Lettering.lines(measure.getLoadCase(), Svg.SMALL, LOADINGS - NAMES - 6) : List.of("");
        for (int i = 0; i < loading.size(); i++) {
            svg.text(Svg.SMALL, Anchor.END, LOADINGS, y + 8 + i * LINE, loading.get(i));
        }
        boolean over = measure.isKnown() && measure.getHeadroom() < 0;
        Bar.draw(svg, "", measure, BARS, y + 1.5, BARS_WIDTH, BAR, MOST);
        svg.text(Svg.SMALL, Anchor.END, VALUES, y + 8, of(measure));
        svg.text("", Svg.SMALL, Anchor.END, over, Svg.BLACK, Svg.WIDTH - EDGE, y + 8, Bar.left(measure));
        y += LINE * loading.size();
        return (measure.getLoadCase().isEmpty() ? "" : measure.getLoadCase() + " ") + Bar.words(measure);
    }

    private static String of(Measure measure) {
        Held held = Held.of(measure);
        return Double.isNaN(measure.getLimit())
                ? "limit not known"
                : (measure.isKnown()
                                ? Digits.number(
                                        held.value(),
                                        held.kind().unit(),
                                        held.kind().decimals())
                                : "?")
                        + " of " + held.limitText();
    }
}
