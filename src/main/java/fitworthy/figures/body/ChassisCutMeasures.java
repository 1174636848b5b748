package fitworthy.figures.body;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.MassDetails.ChassisExtension;
import fitworthy.sheet.PropellerShaft;
import fitworthy.sheet.PropellerShaft.CentreBearing;
import java.util.List;

/** What goes with the cut of a chassis: propeller shaft, lines, weld, and what it may tow after it. */
final class ChassisCutMeasures implements Topic {
    private static final MeasureKind SHAFT_SPEED = number(
            "body.shaft-speed",
            "%",
            0,
            "speed of the propeller shaft at the trip's highest speed, as a share of that at which it whirls");
    private static final MeasureKind SHAFT_LONGEST =
            number("body.shaft-longest", "mm", 0, "longest piece of such a tube for that speed");
    private static final MeasureKind SHAFT_ANGLE =
            number("body.shaft-angle", "deg", 1, "angle of a joint of the propeller shaft");
    private static final MeasureKind ANGLE_SPEED = number(
            "body.shaft-angle-speed",
            "",
            0,
            "angle of a joint in degrees times the speed of the propeller shaft in rpm, at the trip's highest speed");
    private static final MeasureKind ANGLE_MOST = number(
            "body.shaft-angle-most",
            "deg",
            1,
            "greatest angle that a joint takes at the shaft's speed, or at touring speed where that is not known");
    private static final MeasureKind CENTRE_BEARING =
            word("body.centre-bearing", "what is known of the centre bearing", CentreBearing.class);
    private static final MeasureKind LINES =
            yesNo("body.cut-lines", "whether brake and fuel lines of the new length are planned");
    private static final MeasureKind CABLES =
            yesNo("body.cut-cables", "whether park-brake cable and wiring of the new length are planned");
    private static final MeasureKind WELD =
            yesNo("body.weld-procedure", "whether it is on paper how the rails are joined");
    private static final MeasureKind RAILS =
            yesNo("body.rails-stated", "whether it is stated in writing that its rails bear what bends them");
    private static final MeasureKind TOWING =
            yesNo("body.cut-towing", "whether it is stated in writing what it may tow after the cut");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                SHAFT_SPEED,
                SHAFT_ANGLE,
                ANGLE_SPEED,
                CENTRE_BEARING,
                LINES,
                CABLES,
                WELD,
                RAILS,
                TOWING,
                SHAFT_LONGEST,
                ANGLE_MOST);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        for (Fitment fitment : plan.fitments(Fitment.Kind.CHASSIS_EXTENSION)) {
            if (!fitment.isDone()) {
                cut(plan, fitment.name(), (ChassisExtension) fitment.details(), measures);
            }
        }
    }

    private static void cut(Plan plan, String name, ChassisExtension cut, List<Measure> measures) {
        shaft(plan, name, cut.shaft(), measures);
        measures.add(Measure.of(CENTRE_BEARING, name, cut.shaft().centreBearing()));
        measures.add(Measure.of(LINES, name, cut.lines()));
        measures.add(Measure.of(CABLES, name, cut.cables()));
        measures.add(Measure.of(WELD, name, cut.weldProcedure()));
        // Rails that the sheet tells of are worked out.
        if (plan.vehicle().rails().isEmpty()) {
            measures.add(Measure.of(RAILS, name, cut.railsStated()));
        }
        if (plan.trailer().isPresent() || !plan.fitments(Fitment.Kind.TOW_BAR).isEmpty()) {
            measures.add(Measure.of(TOWING, name, cut.towingStated()));
        }
    }

    private static void shaft(Plan plan, String name, PropellerShaft shaft, List<Measure> measures) {
        Figure inside = shaft.diameter().minus(shaft.wall().times(2));
        Figure critical = Whirling.critical(shaft.diameter(), inside, shaft.span());
        Figure road = plan.sheet().trip().topSpeed();
        Figure ratio = plan.vehicle().axleRatio();
        Figure turns = Whirling.speed(road, ratio, plan.tyreDiameter());
        Working[] speed = {
            new Working.Formula(
                    "shaft = speed x 1000000 / 60 x ratio / (3.05 x tyre)",
                    List.of(in("speed", road, "km/h"), in("ratio", ratio, ""), in("tyre", plan.tyreDiameter(), "mm"))),
            plan.tyreSet().nominal("tyre")
        };
        measures.add(Measure.of(SHAFT_SPEED, name, turns.dividedBy(critical))
                .worked("share = shaft / critical", in("shaft", turns, "rpm"), in("critical", critical, "rpm"))
                .worked(speed)
                .worked(
                        "critical = 121000000 x sqrt(outside^2 + inside^2) / span^2",
                        in("outside", shaft.diameter(), "mm"),
                        in("inside", inside, "mm"),
                        in("span", shaft.span(), "mm"))
                .worked(
                        "inside = outside - 2 x wall",
                        in("outside", shaft.diameter(), "mm"),
                        in("wall", shaft.wall(), "mm")));
        angle(plan, name, shaft.jointAngle(), turns, speed, measures);
        Figure most = plan.practice(PracticeId.BODY_SHAFT_SPEED_MOST);
        measures.add(
                Measure.most(SHAFT_LONGEST, name, Whirling.longest(shaft.diameter(), inside, turns.dividedBy(most)))
                        .worked(
                                "longest = sqrt(121000000 x sqrt(outside^2 + inside^2) x most / shaft)",
                                in("outside", shaft.diameter(), "mm"),
                                in("inside", inside, "mm"),
                                in("most", most, "%"),
                                in("shaft", turns, "rpm")));
    }

    /** A faster shaft takes less. */
    private static void angle(
            Plan plan, String name, Figure angle, Figure turns, Working[] speed, List<Measure> measures) {
        measures.add(Measure.of(SHAFT_ANGLE, name, angle));
        measures.add(Measure.of(ANGLE_SPEED, name, angle.times(turns))
                .worked("product = angle x shaft", in("angle", angle, "deg"), in("shaft", turns, "rpm"))
                .worked(speed));
        Figure product = plan.practice(PracticeId.BODY_SHAFT_ANGLE_SPEED_MOST);
        Figure touring = plan.practice(PracticeId.SUSPENSION_JOINT_ANGLE_MOST);
        measures.add(
                turns.known()
                        ? Measure.most(
                                        ANGLE_MOST,
                                        name,
                                        product.dividedBy(turns).least(touring))
                                .worked(
                                        "most = min(touring, product / shaft)",
                                        in("touring", touring, "deg"),
                                        in("product", product, ""),
                                        in("shaft", turns, "rpm"))
                        : Measure.most(ANGLE_MOST, name, touring));
    }
}
