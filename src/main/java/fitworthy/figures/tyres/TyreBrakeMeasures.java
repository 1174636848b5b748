package fitworthy.figures.tyres;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.MassDetails;
import fitworthy.sheet.Papers.Alteration;
import java.util.List;
import java.util.Optional;

/** What larger tyres and a raised GVM leave of the brakes, asked only where either is planned and not certified yet. */
final class TyreBrakeMeasures implements Topic {
    private static final MeasureKind SHARE =
            number("tyres.brake-share", "%", 1, "brake force for each kilogram of the GVM, as a share of the maker's");
    private static final MeasureKind KIT =
            yesNo("tyres.kit-brakes", "whether the papers of the GVM kit cover the brakes");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(SHARE, KIT);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Optional<MassDetails.RatingUpgrade> kit = plan.planned(MassDetails.RatingUpgrade.class);
        boolean larger = !plan.fitments(Fitment.Kind.TYRES).isEmpty()
                && !plan.tyreGrowth().isAtMost(Figure.ZERO);
        Choice<YesNo> covered = kit.map(MassDetails.RatingUpgrade::brakes).orElse(Choice.yesNo(false));
        if (kit.isEmpty() && !larger || Alterations.certified(plan, Alteration.RATINGS)) {
            return;
        }
        if (covered.is(YesNo.YES)) {
            measures.add(Measure.of(KIT, "brakes", covered));
            return;
        }
        Figure before = plan.stockTyreSet().diameter();
        Figure after = plan.tyreSet().diameter();
        Figure onTyres = larger ? before.dividedBy(after) : Figure.of(1, 0);
        Figure made = plan.vehicle().ratings().gvm();
        Figure raised = plan.ratings().gvm();
        Figure onMass = kit.isPresent() ? made.dividedBy(raised) : Figure.of(1, 0);
        Figure share = TyreFigures.brakeShare(onTyres, onMass);
        Measure left = Measure.of(SHARE, "brakes", share)
                .worked("share = on tyres x on mass", in("on tyres", onTyres, "%"), in("on mass", onMass, "%"))
                .worked("on tyres = before / after", in("before", before, "mm"), in("after", after, "mm"))
                .worked("on mass = made / raised", in("made", made, "kg"), in("raised", raised, "kg"));
        // The papers are asked for where they can decide.
        boolean enough = share.isAtLeast(plan.practice(PracticeId.TYRES_BRAKE_SHARE_LEAST));
        measures.add(enough ? left : left.given(covered));
        if (enough && kit.isPresent() && covered.is(YesNo.NO)) {
            measures.add(Measure.of(KIT, "brakes", covered));
        }
    }
}
