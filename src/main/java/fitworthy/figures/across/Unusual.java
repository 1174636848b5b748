package fitworthy.figures.across;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.schema.Given;
import fitworthy.schema.Plausible;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Figures and days of the sheet that can be, but are beyond what is usual for what they are. */
final class Unusual {

    private static final MeasureKind UNUSUAL =
            MeasureKind.told("across.unusual", "what the sheet gives beyond what is usual for it", "none");

    static final List<MeasureKind> KINDS = List.of(UNUSUAL);

    private Unusual() {}

    static void plan(Plan plan, List<Measure> measures) {
        LocalDate asOf = plan.sheet().asOf();
        List<Measure> unusual = Given.in(plan.sheet()).stream()
                .flatMap(given -> unusual(given, asOf).map(told -> measure(given.path(), told)).stream())
                .toList();
        measures.addAll(unusual.isEmpty() ? List.of(measure("figures of the sheet", "none")) : unusual);
    }

    private static Measure measure(String subject, String word) {
        return Measure.of(UNUSUAL, subject, word, List.of());
    }

    /** What is given, and what is usual; nothing where the one is within the other. */
    private static Optional<String> unusual(Given given, LocalDate asOf) {
        Plausible kind = given.field().description().within();
        if (given.value() instanceof LocalDate day) {
            return kind.isUsual(day, asOf)
                    ? Optional.empty()
                    : Optional.of(day + ", where up to " + Plausible.YEARS_AHEAD + " years after as-of is usual");
        }
        double value = ((Figure) given.value()).value();
        return kind.isUsual(value)
                ? Optional.empty()
                : Optional.of(kind.shown(value) + ", where " + kind.usual() + " is usual");
    }
}
