package fitworthy.counter.side;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Margin;
import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.LastUsed;
import fitworthy.counter.page.Pages;
import fitworthy.counter.page.Pane;
import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.towing.HitchMeasures;
import fitworthy.printout.MarginTable;
import fitworthy.printout.picture.LimitBar;
import fitworthy.printout.words.Digits;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the axles and the whole carry of what they may: in the loading that was chosen, and all loadings side by side. */
public final class LoadsPane implements Pane {

    private static final List<MeasureKind> KINDS = List.of(
            LoadMeasures.AXLE,
            LoadMeasures.LOADED,
            LoadMeasures.COMBINED,
            HitchMeasures.BALL,
            LoadMeasures.ROOF,
            LoadMeasures.ROOF_AT_REST);

    /** How many answers that were shown can be compared with, so that a change made of many is told as one. */
    private static final int MOST = 8;

    private final LastUsed<Answer> recent = new LastUsed<>(MOST);

    /** A limit in the loading that is shown. @param changed by how much it has; empty where it has not */
    public record Load(String name, LimitBar bar, String changed) {}

    /** A limit in all loadings. */
    public record Limit(String name, List<Row> rows) {}

    /** A limit in one loading. @param bar nothing where it was not worked out there @param left the margin to it */
    public record Row(String loading, boolean shown, Optional<LimitBar> bar, String left, String changed) {}

    /**
     * What it shows.
     *
     * @param moved what was moved and what came of it; empty where nothing was
     * @param waiting what is missing to know every margin; empty where nothing is
     */
    public record View(String loading, String moved, List<Load> loads, List<Limit> limits, String waiting) {}

    @Override
    public String id() {
        return "loads";
    }

    @Override
    public boolean staysAsSent() {
        return true;
    }

    @Override
    public String html(Seen seen) {
        recent.put(seen.now().version(), seen.now());
        return seen.now()
                .arrangement()
                .map(arrangement -> Pages.html("side/loads.jte", Map.of("view", view(seen, arrangement))))
                .orElse("");
    }

    private View view(Seen seen, Arrangement arrangement) {
        Advice advice = arrangement.advice();
        Loading loading = Shown.loading(seen, advice);
        String shown = loading.loadCase().name();
        Compared compared = new Compared(
                advice, recent.find(seen.asked("since")).or(seen::before).flatMap(Answer::advice));
        List<Load> loads = KINDS.stream()
                .flatMap(kind -> measures(advice, shown, kind))
                .map(measure -> new Load(name(measure), LimitBar.of(measure), compared.change(measure, shown)))
                .toList();
        List<Limit> limits = arrangement.margins().stream()
                .map(margin -> limit(margin, advice, shown, compared))
                .toList();
        String moved = seen.asked("hold").isEmpty() ? "" : moved(seen, loading, loads);
        return new View(shown, moved, loads, limits, MarginTable.waiting(advice));
    }

    /** Where it is now, what that changes, and what the sheet says of it that is not so any more. */
    private static String moved(Seen seen, Loading loading, List<Load> loads) {
        String path = seen.asked("path");
        List<PointMass> masses = Thing.masses(path, loading);
        return masses.isEmpty()
                ? ""
                : Thing.words(path, masses, loading.plan().wheelbase()) + ". " + changes(loads)
                        + StillSaid.of(seen.now(), path, masses.get(0).at(), loading.plan())
                                .map(" "::concat)
                                .orElse("");
    }

    private static String changes(List<Load> loads) {
        String changes = loads.stream()
                .filter(load -> !load.changed().isEmpty())
                .map(load -> load.name() + " " + load.changed())
                .collect(Collectors.joining(", "));
        return changes.isEmpty() ? "No load has changed." : changes + ".";
    }

    private static Limit limit(Margin margin, Advice advice, String shown, Compared compared) {
        List<String> loadings = MarginTable.loadings(advice);
        List<String> cells = MarginTable.cells(margin, loadings);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            String loading = loadings.get(i);
            Optional<Measure> measure = measures(advice, loading, margin.kind())
                    .filter(of -> margin.limit()
                            .equals(of.getSubject() + ": " + margin.kind().limitMeaning()))
                    .findFirst();
            rows.add(new Row(
                    loading,
                    loading.equals(shown),
                    measure.map(LimitBar::of),
                    cells.get(i),
                    measure.map(of -> compared.change(of, loading)).orElse("")));
        }
        return new Limit(Words.capital(margin.limit()), rows);
    }

    private static String name(Measure measure) {
        return measure.kind() == LoadMeasures.AXLE
                ? Words.capital(measure.getSubject())
                : measure.kind() == HitchMeasures.BALL
                        ? "Ball: " + measure.getSubject()
                        : Words.capital(measure.getSubject()) + ": "
                                + measure.kind().limitMeaning();
    }

    private static Stream<Measure> measures(Advice advice, String loading, MeasureKind kind) {
        return advice.facts().getOrDefault(loading, List.of()).stream()
                .filter(Measure.class::isInstance)
                .map(Measure.class::cast)
                .filter(measure -> measure.kind() == kind);
    }

    /** @param before nothing where there is nothing to compare with */
    private record Compared(Advice now, Optional<Advice> before) {

        /** By how much a measure has changed, as it is printed; empty where it has not. */
        String change(Measure measure, String loading) {
            return before.flatMap(advice -> measures(advice, loading, measure.kind())
                            .filter(old -> old.getSubject().equals(measure.getSubject()))
                            .findFirst())
                    .map(old -> printed(measure) - printed(old))
                    .filter(change -> Double.isFinite(change) && change != 0)
                    .map(change -> (change > 0 ? "+" : "") + Digits.quantity(change, measure.kind()))
                    .orElse("");
        }

        private static double printed(Measure measure) {
            return measure.isKnown() ? measure.kind().printed(measure.getValue()) : Double.NaN;
        }
    }
}
