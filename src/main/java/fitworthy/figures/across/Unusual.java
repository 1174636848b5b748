package fitworthy.figures.across;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.Given;
import fitworthy.schema.Plausible;
import fitworthy.sheet.Trailer;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/** Figures and days of the sheet that can be, but are beyond what is usual for what they are. */
final class Unusual {

    private static final MeasureKind UNUSUAL =
            MeasureKind.told("across.unusual", "what the sheet gives beyond what is usual for it", "none");

    /** What is usual of them is so of a ball: a pin stands over the axle, or ahead of it, with more on it. */
    private static final Set<Plausible> OF_A_BALL = Set.of(Plausible.BALL_OVERHANG, Plausible.BALL_LOAD);

    static final List<MeasureKind> KINDS = List.of(UNUSUAL);

    private Unusual() {}

    static void plan(Plan plan, List<Measure> measures) {
        LocalDate asOf = plan.sheet().asOf();
        boolean pin = plan.trailer().filter(Trailer::onFifthWheel).isPresent();
        List<Given> unusual = Given.in(
                plan.sheet(),
                (field, value) ->
                        !(pin && OF_A_BALL.contains(field.description().within())) && !isUsual(field, value, asOf));
        if (unusual.isEmpty()) {
            measures.add(measure("figures of the sheet", "none"));
        }
        unusual.forEach(given -> measures.add(measure(given.path(), told(given))));
    }

    private static Measure measure(String subject, String word) {
        return Measure.of(UNUSUAL, subject, word, List.of());
    }

    private static boolean isUsual(FieldSchema field, Object value, LocalDate asOf) {
        Plausible kind = field.description().within();
        return value instanceof LocalDate day ? kind.isUsual(day, asOf) : kind.isUsual(((Figure) value).value());
    }

    /** What is given, and what is usual. */
    private static String told(Given given) {
        Plausible kind = given.field().description().within();
        return given.value() instanceof LocalDate day
                ? day + ", where up to " + Plausible.YEARS_AHEAD + " years after as-of is usual"
                : kind.shown(((Figure) given.value()).value()) + ", where " + kind.usual() + " is usual";
    }
}
