package fitworthy.figures.tyres;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.word;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.figures.plan.Track;
import fitworthy.figures.plan.TyreSet;
import fitworthy.figures.plan.VehicleClass;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Mark;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Papers.Alteration;
import fitworthy.sheet.TyreSize;
import fitworthy.sheet.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What a change of tyres or wheels does, asked only where either is planned, and whether the spare goes with it. */
final class TyreChangeMeasures implements Topic {
    private static final MeasureKind GROWTH =
            number("tyres.diameter-growth", "mm", 1, "growth of the nominal diameter");
    private static final MeasureKind GROWTH_PASSENGER =
            number("tyres.diameter-growth-passenger", "mm", 1, "growth of the nominal diameter on a passenger car");
    private static final MeasureKind LOSS = number("tyres.diameter-loss", "mm", 1, "loss of nominal diameter");
    private static final MeasureKind CHANGE =
            number("tyres.diameter-change", "%", 2, "change of the nominal diameter either way");
    private static final MeasureKind SPEEDOMETER =
            number("tyres.speedometer", "%", 1, "speed shown as a share of the true speed");
    private static final MeasureKind GEARING =
            number("tyres.gearing", "%", 1, "how much longer the larger tyres make the gearing");
    private static final MeasureKind LIFT = number("tyres.lift", "mm", 0, "lift from the larger tyres");
    private static final MeasureKind WIDTH =
            number("tyres.width", "%", 0, "tyre width as a share of the maker's tyres");
    private static final MeasureKind SPEED_RATING =
            number("tyres.speed-rating", "km/h", 0, "speed of the new tyres' symbol, slower than the maker's");
    private static final MeasureKind RIM_NARROW =
            rated("tyres.rim-narrow", "in", 1, "rim width", "narrowest rim for the tyre");
    private static final MeasureKind RIM_WIDE =
            rated("tyres.rim-wide", "in", 1, "rim width", "widest rim for the tyre");
    private static final MeasureKind RIM_SAME =
            yesNo("tyres.rim-same", "whether tyres and wheels have the same rim diameter");
    private static final MeasureKind TRACK =
            number("tyres.track", "mm", 0, "added track").signed();
    private static final MeasureKind TRACK_PASSENGER = number(
                    "tyres.track-passenger", "mm", 0, "added track of a passenger car")
            .signed();
    private static final MeasureKind OUTSIDE = number(
                    "tyres.outside", "mm", 0, "how far the tyres stand beyond the body")
            .signed();
    private static final MeasureKind INWARD_BY =
            word("tyres.inward-by", "what brings the wheels further in", Inward.class);
    private static final MeasureKind SPARE_SAME =
            yesNo("tyres.spare-same", "whether the spare is of the same size as the tyres on the road");
    private static final MeasureKind CLEARANCE = number("tyres.clearance", "mm", 1, "least gap round the tyre");

    private static final FieldSchema SPARE_SIZE =
            RecordSchema.of(Vehicle.Spare.class).field("size");

    /** Of wheels and spacers, what can be chosen otherwise. */
    private enum Inward {
        MORE_OFFSET,
        THINNER_SPACERS,
        THINNER_SPACERS_OR_MORE_OFFSET
    }

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                GROWTH,
                GROWTH_PASSENGER,
                LOSS,
                CHANGE,
                SPEEDOMETER,
                GEARING,
                LIFT,
                WIDTH,
                SPEED_RATING,
                RIM_NARROW,
                RIM_WIDE,
                RIM_SAME,
                TRACK,
                TRACK_PASSENGER,
                OUTSIDE,
                INWARD_BY,
                SPARE_SAME,
                CLEARANCE);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        measures.add(Measure.of(SPARE_SAME, "spare", spareSame(plan)));
        boolean newTyres = !plan.fitments(Fitment.Kind.TYRES).isEmpty();
        boolean newWheels = !plan.fitments(Fitment.Kind.WHEELS).isEmpty();
        boolean spacers = !plan.fitments(Fitment.Kind.WHEEL_SPACERS).isEmpty();
        if (newTyres || newWheels) {
            Figure rim = plan.wheels().width();
            for (TyreSet set : plan.tyreSets()) {
                String wheels = plan.tyreSets().size() == 1 ? "wheels" : "wheels of " + set.subject(plan.tyreSets());
                measures.add(Measure.of(RIM_NARROW, wheels, rim, set.tyres().rimLeast()));
                measures.add(Measure.of(RIM_WIDE, wheels, rim, set.tyres().rimMost()));
                measures.add(Measure.of(RIM_SAME, wheels, rimSame(plan, set, newWheels)));
            }
        }
        if (newTyres || newWheels || spacers) {
            plan.tyreSets()
                    .forEach(set -> measures.add(Measure.of(
                            CLEARANCE, set.subject(plan.tyreSets()), set.tyres().clearance())));
            if (!isCertified(plan)) {
                measures.add(outside(plan));
                measures.add(Measure.of(INWARD_BY, "wheels", Choice.of(inward(plan, newWheels, spacers))));
            }
        }
        if (newTyres) {
            plan.tyreSets().forEach(set -> newTyres(plan, set, measures));
        }
        if ((newWheels || spacers) && !isCertified(plan)) {
            track(plan, newWheels, spacers, measures);
        }
    }

    private static void newTyres(Plan plan, TyreSet planned, List<Measure> measures) {
        TyreSet stock = plan.stockTyreSet();
        String subject = planned.subject(plan.tyreSets());
        Figure before = stock.diameter();
        Figure after = planned.diameter();
        Figure growth = planned.growthOver(stock);
        Working.Input[] diameters = {in("after", after, "mm"), in("before", before, "mm")};
        Working[] sizes = {planned.nominal("after"), stock.nominal("before")};
        List<Measure> toApprove = new ArrayList<>();
        toApprove.add(Measure.of(CHANGE, subject, size(TyreFigures.growth(before, after)))
                .worked("change = |after / before - 1|", diameters)
                .worked(sizes));
        if (!(growth.value() >= 0)) {
            toApprove.add(Measure.of(LOSS, subject, growth.times(-1))
                    .worked("loss = before - after", diameters)
                    .worked(sizes));
        }
        if (!(growth.value() < 0)) {
            byClass(plan, GROWTH_PASSENGER, GROWTH, subject, "the greatest growth of tyres", growth)
                    .map(measure ->
                            measure.worked("growth = after - before", diameters).worked(sizes))
                    .forEach(toApprove::add);
            measures.add(Measure.of(GEARING, subject, TyreFigures.growth(before, after))
                    .worked("growth = after / before - 1", diameters)
                    .worked(sizes));
            measures.add(Measure.of(LIFT, subject, growth.times(0.5))
                    .worked("lift = (after - before) / 2", diameters)
                    .worked(sizes));
            if (!growth.isZero() && !planned.tyres().speedometerSet().is(YesNo.YES)) {
                Figure over = plan.vehicle().speedometerOver();
                measures.add(Measure.of(
                                SPEEDOMETER,
                                plan.tyreSets().size() == 1 ? "speedometer" : "speedometer with " + subject,
                                TyreFigures.speedShown(over, before, after))
                        .worked(
                                "shown = (1 + over) x before / after",
                                in("over", over, "%"),
                                diameters[0],
                                diameters[1])
                        .worked(sizes));
            }
        }
        Figure width = planned.width();
        Figure madeWidth = stock.width();
        toApprove.add(
                Measure.of(WIDTH, subject, classed(plan, "the greatest width of tyres", width.dividedBy(madeWidth)))
                        .worked("width = after / before", in("after", width, "mm"), in("before", madeWidth, "mm")));
        // What is accepted without approval is no question where the approval is in hand.
        if (!isCertified(plan)) {
            measures.addAll(toApprove);
        }
        Figure madeSpeed = stock.speed(plan.tables());
        Figure speed = planned.speed(plan.tables());
        if (isSlower(plan)) {
            measures.add(Measure.of(
                            SPEED_RATING,
                            subject,
                            classed(plan, "the least speed symbol", speed.missingWith(madeSpeed, speed)))
                    .worked(planned.symbol()));
        }
    }

    /** Whether the symbol of new tyres is, or may be, slower than the maker's. */
    private static boolean isSlower(Plan plan) {
        return !plan.tyreSet()
                .speed(plan.tables())
                .isAtLeast(plan.stockTyreSet().speed(plan.tables()));
    }

    /**
     * The speed in m/s for which a new tyre's symbol has to be, whatever is driven; none where the symbol is no slower than
     * the maker's, or where nothing is known to be asked of it.
     */
    static Figure leastSymbol(Plan plan) {
        Figure least = classed(plan, "the least speed symbol", plan.practice(PracticeId.TYRES_SPEED_LEAST));
        Figure made = plan.stockTyreSet().speed(plan.tables());
        return plan.fitments(Fitment.Kind.TYRES).isEmpty() || !isSlower(plan) || !least.known()
                ? Figure.ZERO
                : made.known() ? least.least(made) : least;
    }

    /** By half of what track and one tyre are wider than the body. */
    private static Measure outside(Plan plan) {
        Figure track = Track.widest(plan);
        Figure width = widest(plan);
        Figure body = plan.vehicle().size().bodyWidth();
        return Measure.of(OUTSIDE, "tyres", standOut(plan))
                .worked(
                        "outside = (track + width - body) / 2",
                        in("track", track, "mm"),
                        in("width", width, "mm"),
                        in("body", body, "mm"));
    }

    /** Thinner spacers alone where the wheels stay and the spacers are as thick as the tyres stand out. */
    private static Inward inward(Plan plan, boolean newWheels, boolean spacers) {
        if (!spacers) {
            return Inward.MORE_OFFSET;
        }
        boolean tooThin = standOut(plan).isAbove(Track.spacer(plan));
        return newWheels || tooThin ? Inward.THINNER_SPACERS_OR_MORE_OFFSET : Inward.THINNER_SPACERS;
    }

    private static Figure standOut(Plan plan) {
        return Track.widest(plan)
                .plus(widest(plan))
                .minus(plan.vehicle().size().bodyWidth())
                .times(0.5);
    }

    private static Figure widest(Plan plan) {
        return plan.tyreSets().stream().map(TyreSet::width).reduce(Figure::most).orElseThrow();
    }

    private static boolean isCertified(Plan plan) {
        return Alterations.certified(plan, Alteration.TYRES);
    }

    private static Choice<YesNo> spareSame(Plan plan) {
        Vehicle.Spare spare = plan.vehicle().spare();
        if (spare.size().isEmpty()) {
            return Choice.missing(SPARE_SIZE.missingIn("vehicle.spare"));
        }
        return Choice.every(plan.tyreSets().stream()
                .map(set -> set.tyres().size().isEmpty()
                        ? Choice.<YesNo>missing(set.noSize())
                        : Choice.yesNo(TyreSize.read(spare.size())
                                .equals(TyreSize.read(set.tyres().size()))))
                .<Choice<YesNo>>toArray(Choice[]::new));
    }

    /**
     * Wheels that stay have the rim diameter of the tyres that came on them. Where the sheet leaves the wheels to the
     * book, tyres of another size than its usual one are taken to be bought for the wheels that are there.
     */
    private static Choice<YesNo> rimSame(Plan plan, TyreSet set, boolean newWheels) {
        Figure tyre = set.rim();
        Figure given = plan.wheels().diameter();
        boolean usual = given.mark() == Mark.USUAL;
        Figure wheel = newWheels
                ? usual ? tyre : given
                : usual
                        ? plan.stockTyreSet().rim().or(tyre)
                        : given.or(plan.stockTyreSet().rim());
        List<Missing> missing = tyre.missingWith(wheel, tyre).missing();
        // Rims come in steps of half an inch, so a millimetre tells them apart.
        return missing.isEmpty()
                ? Choice.yesNo(Math.abs(tyre.value() - wheel.value()) < 0.001)
                : Choice.missing(missing.get(0));
    }

    private static void track(Plan plan, boolean newWheels, boolean spacers, List<Measure> measures) {
        Figure none = Figure.of(0, 0);
        Figure added = (newWheels ? Track.addedByWheels(plan) : none)
                .plus(spacers ? Track.spacer(plan).times(2) : none);
        List<Working.Input> inputs = new ArrayList<>();
        if (newWheels) {
            inputs.add(in("before", plan.vehicle().wheels().offset(), "mm"));
            inputs.add(in("after", plan.wheels().offset(), "mm"));
        }
        if (spacers) {
            inputs.add(in("spacer", Track.spacer(plan), "mm"));
        }
        String formula =
                "added = 2 x " + (newWheels ? spacers ? "(before - after + spacer)" : "(before - after)" : "spacer");
        byClass(plan, TRACK_PASSENGER, TRACK, "wheels", "the greatest added track", added)
                .map(measure -> measure.worked(new Working.Formula(formula, List.copyOf(inputs))))
                .forEach(measures::add);
    }

    /** What a passenger car has a limit of its own for: of the one or the other, and of both where it is not known. */
    private static Stream<Measure> byClass(
            Plan plan, MeasureKind car, MeasureKind other, String subject, String limit, Figure figure) {
        boolean passenger = VehicleClass.passenger(plan);
        return Stream.concat(
                passenger || !VehicleClass.known(plan)
                        ? Stream.of(Measure.of(car, subject, ofCar(plan, figure)))
                        : Stream.empty(),
                passenger ? Stream.empty() : Stream.of(Measure.of(other, subject, classed(plan, limit, figure))));
    }

    /** A figure of a vehicle that is a passenger car, or may be. */
    private static Figure ofCar(Plan plan, Figure figure) {
        return VehicleClass.known(plan) ? figure : figure.missingWith(Figure.missing(VehicleClass.missing()), figure);
    }

    /**
     * The figure where the vehicle is of an off-road or goods class, whose limits the book holds, else what is missing.
     */
    private static Figure classed(Plan plan, String limit, Figure figure) {
        if (VehicleClass.passenger(plan)) {
            return figure.missingWith(
                    Figure.missing(Missing.inBook(
                            "limit for passenger cars",
                            limit + " of a passenger car, which the rule book does not hold")),
                    figure);
        }
        return VehicleClass.offRoadOrGoods(plan)
                ? figure
                : figure.missingWith(Figure.missing(VehicleClass.missing()), figure);
    }

    private static Figure size(Figure figure) {
        return figure.value() < 0 ? figure.times(-1) : figure;
    }
}
