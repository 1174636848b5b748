package fitworthy.figures.mass;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Guesses;
import fitworthy.sheet.LoadCase;
import java.util.List;

/** What a weighbridge shows beside what the parts sum to. */
final class WeighbridgeMeasures implements Topic {

    private static final MeasureKind RESIDUAL = rated(
                    "mass.residual",
                    "kg",
                    0,
                    "difference between weighbridge and summed parts",
                    "their joint tolerance")
            .byLoading();

    private static final MeasureKind RESIDUAL_WAY = MeasureKind.word(
                    "mass.residual-way", "whether the weighbridge shows more or less than the summed parts", Way.class)
            .byLoading();
    private static final MeasureKind UNEXPLAINED = number(
                    "mass.unexplained", "kg", 0, "weight found at the weighbridge beyond the summed parts")
            .signed()
            .byLoading();
    private static final MeasureKind FOUND_OVER = MeasureKind.yesNo(
                    "mass.found-over", "whether weight beyond the parts takes it over its GVM")
            .byLoading();

    private static final MeasureKind EXPLAINED = MeasureKind.word(
                    "mass.residual-explained",
                    "what explains the difference at the weighbridge: what is stated, only guesses, or neither",
                    Explained.class)
            .byLoading();
    private static final MeasureKind GUESSED = MeasureKind.yesNo(
                    "mass.residual-guessed",
                    "whether guesses could explain half a kilogram or more of such a difference")
            .byLoading();
    private static final MeasureKind GUESSED_SPREAD = number(
                    "mass.guessed-spread", "kg", 0, "part of the difference that the guesses could explain")
            .byLoading();

    @Override
    public List<MeasureKind> kinds() {
        return List.of(RESIDUAL, RESIDUAL_WAY, UNEXPLAINED, FOUND_OVER, EXPLAINED, GUESSED, GUESSED_SPREAD);
    }

    /** What spreads by less is printed as nothing, in kg. */
    private static final Figure LEAST = Figure.of(0.5, 0);

    private enum Way {
        MORE,
        LESS
    }

    private enum Explained {
        STATED,
        GUESSES,
        NEITHER
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        unexplained(
                loading, loading.axles().total().minus(loading.plan().ratings().gvm()), measures);
        loading.residual().ifPresent(residual -> {
            LoadCase.Weighed reading = loading.loadCase().weighed().orElseThrow();
            AxleLoads parts = loading.parts();
            residual("front axle", residual.front(), reading.frontAxle(), parts.front(), measures);
            residual("rear axle", residual.rear(), reading.rearAxle(), parts.rear(), measures);
            Loading.Residual stated = stated(loading, residual);
            guessed("front axle", residual.front(), stated.front(), measures);
            guessed("rear axle", residual.rear(), stated.rear(), measures);
        });
    }

    /** Reading less parts as if what is guessed were known. @param residual the same as it is */
    private static Loading.Residual stated(Loading loading, Loading.Residual residual) {
        Plan plan = loading.plan();
        if (Guesses.of(plan.sheet()).isEmpty()) {
            return residual;
        }
        Plan sure = new Plan(Guesses.settled(plan.sheet(), guess -> true), plan.tables(), plan::practice);
        return Loading.weighed(sure).stream()
                .filter(other ->
                        other.loadCase().name().equals(loading.loadCase().name()))
                .findFirst()
                .flatMap(Loading::residual)
                .orElse(residual);
    }

    private static void guessed(String axle, Figure residual, Figure stated, List<Measure> measures) {
        double all = residual.tolerance();
        double known = stated.tolerance();
        Figure spread = Figure.of(Math.sqrt(Math.max(0, all * all - known * known)), 0);
        // Where nothing is guessed the two are one, and what is missing changes nothing about that.
        Choice<YesNo> guessed = residual.known() || residual == stated
                ? Choice.yesNo(spread.isAtLeast(LEAST))
                : Choice.missing(residual.missing().get(0));
        measures.add(Measure.of(GUESSED, axle, guessed));
        if (!guessed.is(YesNo.NO)) {
            measures.add(Measure.of(EXPLAINED, axle, explained(residual, tolerance(stated))));
        }
        measures.add(Measure.of(GUESSED_SPREAD, axle, residual.known() ? spread : residual)
                .worked(
                        "spread = sqrt(tolerance^2 - of what is stated^2)",
                        in("tolerance", tolerance(residual), "kg"),
                        in("of what is stated", tolerance(stated), "kg")));
    }

    /** @param stated joint tolerance of what is stated, kg */
    private static Choice<Explained> explained(Figure residual, Figure stated) {
        Figure size = size(residual);
        if (!size.known()) {
            return Choice.missing(size.missing().get(0));
        }
        return Choice.of(
                size.isAtMost(stated)
                        ? Explained.STATED
                        : size.isAtMost(tolerance(residual)) ? Explained.GUESSES : Explained.NEITHER);
    }

    /** @param over by how much the GVM is passed, kg; not above zero where it is not */
    private static void unexplained(Loading loading, Figure over, List<Measure> measures) {
        List<Working.Input> residuals = loading.masses().stream()
                .filter(mass -> mass.sort() == Sort.RESIDUAL)
                .map(mass -> in(mass.name(), mass.mass(), "kg"))
                .toList();
        Figure found = Working.total(residuals);
        if (!residuals.isEmpty()) {
            measures.add(Measure.of(UNEXPLAINED, "vehicle", found).worked(new Working.Sum("found", residuals)));
        }
        boolean decides = over.value() > 0 && found.isAtLeast(over);
        // By how much the GVM is passed tells what passes it; that it is passed may be known without.
        measures.add(
                over.known()
                        ? Measure.of(FOUND_OVER, "vehicle", Choice.yesNo(decides))
                        : Measure.of(FOUND_OVER, "vehicle", "", over.missing()));
    }

    private static void residual(String axle, Figure residual, Figure reading, Figure parts, List<Measure> measures) {
        measures.add(Measure.of(RESIDUAL, axle, size(residual), tolerance(residual))
                .worked("difference = |reading - parts|", in("reading", reading, "kg"), in("parts", parts, "kg"))
                .worked(
                        "tolerance = sqrt(of reading^2 + of parts^2)",
                        in("of reading", tolerance(reading), "kg"),
                        in("of parts", tolerance(parts), "kg")));
        measures.add(Measure.of(
                RESIDUAL_WAY,
                axle,
                residual.known()
                        ? Choice.of(residual.value() < 0 ? Way.LESS : Way.MORE)
                        : Choice.missing(residual.missing().get(0))));
    }

    private static Figure size(Figure residual) {
        return residual.known() ? Figure.of(Math.abs(residual.value()), 0) : residual;
    }

    private static Figure tolerance(Figure figure) {
        return figure.known() ? Figure.of(figure.tolerance(), 0) : figure;
    }
}
