package fitworthy.figures.fuel;

import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.MeasureKind.yesNo;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.FuelDetails.EmissionParts;
import fitworthy.sheet.FuelDetails.Exhaust;
import fitworthy.sheet.FuelDetails.Outlet;
import fitworthy.sheet.FuelDetails.Retune;
import fitworthy.sheet.IntakeDetails.Snorkel;
import java.util.List;

/** Where a planned exhaust ends, what it heats, and what it or other software does to the emission parts. */
final class ExhaustMeasures implements Topic {
    private static final MeasureKind EMISSION_PARTS =
            word("fuel.emission-parts", "whether the emission parts stay and work", EmissionParts.class);
    private static final MeasureKind SHOWN =
            yesNo("fuel.retune-shown", "whether who writes it states that the emission standard is kept to");
    private static final MeasureKind EXECUTIVE_ORDER =
            yesNo("fuel.executive-order", "whether it has an Executive Order number, or needs none");
    private static final MeasureKind OUTLET = word("fuel.outlet", "where the exhaust ends", Outlet.class);
    private static final MeasureKind SHIELD =
            yesNo("fuel.exhaust-shield", "whether a shield stands between its hot parts and what is near them");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(EMISSION_PARTS, SHOWN, EXECUTIVE_ORDER, OUTLET, SHIELD);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        boolean listed = !plan.fitments(Fitment.Kind.EXHAUST).isEmpty();
        for (Fitment fitment : plan.sheet().fitments()) {
            String name = fitment.name();
            if (fitment.details() instanceof Exhaust exhaust) {
                measures.add(Measure.of(EMISSION_PARTS, name, exhaust.emissionParts()));
                measures.add(Measure.of(OUTLET, name, exhaust.outlet()));
                measures.add(Measure.of(SHIELD, name, exhaust.shielded()));
                measures.add(Measure.of(EXECUTIVE_ORDER, name, exhaust.executiveOrder()));
            } else if (fitment.details() instanceof Retune retune) {
                measures.add(Measure.of(EMISSION_PARTS, name, retune.emissionParts()));
                measures.add(Measure.of(SHOWN, name, retune.shown()));
                measures.add(Measure.of(EXECUTIVE_ORDER, name, retune.executiveOrder()));
            } else if (fitment.details() instanceof Snorkel snorkel) {
                measures.add(Measure.of(EXECUTIVE_ORDER, name, snorkel.executiveOrder()));
            } else if (fitment.details() instanceof Body body
                    && (body.overOutlet().known() || closesIn(fitment) && !listed)) {
                measures.add(Measure.of(OUTLET, name, beside(body)));
            }
        }
    }

    /** A new canopy puts its doors where there were none; a tray has mostly none, and a listed exhaust is asked itself. */
    private static boolean closesIn(Fitment fitment) {
        return fitment.kind() == Fitment.Kind.CANOPY && !fitment.isDone();
    }

    private static Choice<Outlet> beside(Body body) {
        Choice<YesNo> over = body.overOutlet();
        return over.known()
                ? Choice.of(over.is(YesNo.YES) ? Outlet.AT_OPENING : Outlet.CLEAR)
                : Choice.missing(over.missing());
    }
}
