package fitworthy.figures.paperwork;

import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.MeasureKind.yesNo;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.Alterations.Altering;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Job;
import fitworthy.sheet.MassDetails.ChassisExtension;
import fitworthy.sheet.MassDetails.RatingApproval;
import fitworthy.sheet.MassDetails.RatingUpgrade;
import fitworthy.sheet.Papers;
import fitworthy.sheet.Papers.Alteration;
import fitworthy.sheet.Papers.Certificate;
import fitworthy.source.Words;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Whether the papers that an altered vehicle needs are in the plan, and in its price. */
public final class PaperworkMeasures implements Topic {

    public static final MeasureKind CERTIFICATE =
            yesNo("paperwork.certificate", "whether a certificate for it is in the price");
    private static final MeasureKind SETTLED = yesNo(
            "paperwork.settled", "whether it is agreed, its certificate in the price and its issue among the jobs");
    private static final MeasureKind HELD =
            word("paperwork.held", "whether the certificate of what is done is in hand", Papers.Proof.class);
    private static final MeasureKind INSURER = yesNo("paperwork.insurer-told", "whether the insurer has been told");
    private static final MeasureKind WARRANTY =
            word("paperwork.warranty", "whether the maker was asked about the warranty", Papers.Warranty.class);
    private static final MeasureKind SUITS =
            yesNo("paperwork.suits", "whether its maker states in writing that it suits the vehicle");
    private static final MeasureKind INSPECTION =
            word("paperwork.inspection", "when the altered vehicle is inspected", Papers.Inspection.class);
    private static final MeasureKind PLATE =
            yesNo("paperwork.plate", "whether the plate of the alterations is planned");
    private static final MeasureKind RATING_STAGE =
            word("paperwork.rating-stage", "whether its approval is for the stage at which it is fitted", Stage.class);
    private static final MeasureKind DELIVERY = rated(
            "paperwork.delivery",
            "days",
            0,
            "time until the new vehicle is delivered",
            "how long the quoted prices hold");

    /** Alterations after which the vehicle itself is looked at, not its papers alone. */
    private static final Set<Alteration> SEEN_BY_INSPECTOR =
            EnumSet.of(Alteration.CHASSIS, Alteration.BODY, Alteration.RATINGS, Alteration.SEATS);

    private enum Stage {
        FITS,
        WRONG,
        NONE
    }

    @Override
    public List<MeasureKind> kinds() {
        return List.of(CERTIFICATE, SETTLED, HELD, INSURER, WARRANTY, SUITS, INSPECTION, PLATE, RATING_STAGE, DELIVERY);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Alterations.altering(plan).stream()
                .filter(Altering::done)
                .forEach(part -> measures.add(Measure.of(HELD, part.name(), part.certificate())));
        List<Fitment> planned = plan.sheet().fitments().stream()
                .filter(fitment -> !fitment.isDone())
                .toList();
        if (planned.isEmpty()
                && plan.sheet().tanks().stream().noneMatch(tank -> Alterations.added(tank) && !tank.isDone())) {
            return;
        }
        Papers papers = plan.sheet().papers();
        measures.add(Measure.of(INSURER, "insurer", papers.insurerTold()));
        measures.add(Measure.of(WARRANTY, "vehicle", papers.warranty()));
        delivery(plan, measures);
        Set<Alteration> alterations = Alterations.of(plan);
        for (Alteration alteration : alterations) {
            String subject = Words.hyphenated(alteration.name()).replace('-', ' ');
            measures.add(Measure.of(CERTIFICATE, subject, priced(papers, alteration)));
            measures.add(Measure.of(SETTLED, subject, Choice.yesNo(settled(plan, alteration))));
        }
        if (alterations.stream().anyMatch(SEEN_BY_INSPECTOR::contains)) {
            measures.add(Measure.of(INSPECTION, "vehicle", papers.inspection()));
            measures.add(Measure.of(PLATE, "vehicle", papers.plate()));
        }
        for (Fitment fitment : planned) {
            switch (fitment.kind()) {
                case SPRINGS, BODY_LIFT, TOW_BAR, RATING_UPGRADE ->
                    measures.add(Measure.of(SUITS, fitment.name(), fitment.suits()));
                default -> {}
            }
            if (fitment.details() instanceof RatingUpgrade upgrade
                    && upgrade.gvm().known()) {
                measures.add(Measure.of(RATING_STAGE, fitment.name(), stage(upgrade.approval(), plan.registered())));
            }
        }
    }

    /** Where nobody says whether the vehicle is new, a time of delivery does. */
    private static void delivery(Plan plan, List<Measure> measures) {
        Papers papers = plan.sheet().papers();
        Choice<YesNo> registered = plan.registered();
        Figure delivery = registered.known() || papers.delivery().known()
                ? papers.delivery()
                : Figure.missing(registered.missing());
        if (!registered.is(YesNo.YES)) {
            measures.add(Measure.of(DELIVERY, "vehicle", delivery, papers.offer()));
        }
    }

    /** Of a cut chassis alone the sheet tells whether it is agreed. */
    private static boolean settled(Plan plan, Alteration alteration) {
        List<ChassisExtension> cuts = plan.details(ChassisExtension.class);
        return alteration == Alteration.CHASSIS
                && !cuts.isEmpty()
                && cuts.stream().allMatch(cut -> cut.approved().is(YesNo.YES))
                && priced(plan.sheet().papers(), alteration).is(YesNo.YES)
                && plan.sheet().jobs().stream().anyMatch(job -> job.kind().is(Job.Kind.CERTIFICATE));
    }

    /** What is not listed is not in the price; what is listed without a price may or may not be. */
    private static Choice<YesNo> priced(Papers papers, Alteration alteration) {
        List<Certificate> covering = papers.certificates().stream()
                .filter(certificate -> certificate.covers().is(alteration))
                .toList();
        if (covering.isEmpty()) {
            return Choice.of(YesNo.NO);
        }
        return covering.stream()
                .filter(certificate -> certificate.price() == null)
                .findFirst()
                .map(certificate -> Choice.<YesNo>missing(new Missing(
                        "papers.certificates." + certificate.name() + ".price",
                        "the price of the certificate",
                        "whoever issues it")))
                .orElse(Choice.of(YesNo.YES));
    }

    /** A kit for a new vehicle is approved with it; one for a vehicle on the road is approved vehicle by vehicle. */
    private static Choice<?> stage(Choice<RatingApproval> approval, Choice<YesNo> registered) {
        if (!approval.known() || approval.is(RatingApproval.NONE)) {
            return approval.known() ? Choice.of(Stage.NONE) : approval;
        }
        if (!registered.known()) {
            return registered;
        }
        RatingApproval wanted = registered.is(YesNo.YES) ? RatingApproval.IN_SERVICE : RatingApproval.SECOND_STAGE;
        return Choice.of(approval.is(wanted) ? Stage.FITS : Stage.WRONG);
    }
}
