package fitworthy.figures.mass;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
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
                    "mass.residual-way",
                    "whether the weighbridge shows more or less there than the summed parts",
                    Way.class)
            .byLoading();
    private static final MeasureKind UNEXPLAINED = number(
                    "mass.unexplained", "kg", 0, "what the weighbridge found beyond the summed parts")
            .signed()
            .byLoading();
    private static final MeasureKind FOUND_OVER = MeasureKind.yesNo(
                    "mass.found-over", "whether what the weighbridge found beyond the parts takes it over its GVM")
            .byLoading();

    @Override
    public List<MeasureKind> kinds() {
        return List.of(RESIDUAL, RESIDUAL_WAY, UNEXPLAINED, FOUND_OVER);
    }

    private enum Way {
        MORE,
        LESS
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
        });
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
        measures.add(Measure.of(FOUND_OVER, "vehicle", Choice.yesNo(decides)));
    }

    private static void residual(String axle, Figure residual, Figure reading, Figure parts, List<Measure> measures) {
        Figure size = residual.known() ? Figure.of(Math.abs(residual.value()), 0) : residual;
        measures.add(Measure.of(RESIDUAL, axle, size, tolerance(residual))
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

    private static Figure tolerance(Figure figure) {
        return figure.known() ? Figure.of(figure.tolerance(), 0) : figure;
    }
}
