package fitworthy.figures.towing;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.BallLoad;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.PassengerTyres;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Figure;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Trailer.AxleTyres;
import java.util.List;

/** Whether axles and tyres of the trailer bear what is on them, and how long and wide it is. */
public final class UnderTrailerMeasures implements Topic {
    public static final MeasureKind AXLE_LOAD = rated("towing.axle-load", "kg", 0, "load on the trailer's axles", "GTM")
            .onTrailer();
    private static final MeasureKind AXLES_UNTOLD = number(
            "towing.axles-untold",
            "%",
            1,
            "load on the axles of a trailer that states no GTM, as a share of the mass on its plate");
    public static final MeasureKind TYRE_LOAD = rated(
                    "towing.tyre-load", "kg", 0, "load on the trailer's axles", "what its tyres carry")
            .onTrailer();
    public static final MeasureKind LEVELLED = rated(
                    "towing.levelled-load",
                    "kg",
                    0,
                    "load on the trailer's axles with the load-levelling hitch",
                    "what axles or tyres may carry")
            .onTrailer();
    private static final MeasureKind WIDTH = number("towing.width", "mm", 0, "width of the trailer");
    private static final MeasureKind BODY_LENGTH =
            number("towing.body-length", "mm", 0, "length of the trailer without its drawbar");
    private static final MeasureKind DRAWN_BY = number("towing.drawn-by", "kg", 0, "GVM of the vehicle that tows it");

    /** What of tyres of which the sheet tells nothing is asked first. */
    private static final Figure UNTOLD =
            Figure.missing(RecordSchema.of(AxleTyres.class).field("load-index").missingIn("trailer.tyres"));

    @Override
    public List<MeasureKind> kinds() {
        return List.of(AXLE_LOAD, AXLES_UNTOLD, TYRE_LOAD, LEVELLED, WIDTH, BODY_LENGTH, DRAWN_BY);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        plan.trailer().ifPresent(trailer -> {
            Figure load = trailer.mass().minus(trailer.ball());
            Working onAxles = new Working.Formula(
                    "load = trailer - ball",
                    List.of(in("trailer", trailer.mass(), "kg"), in("ball", trailer.ball(), "kg")));
            if (isTold(trailer)) {
                measures.add(Measure.of(AXLE_LOAD, "trailer", load, trailer.gtm())
                        .worked(onAxles)
                        .worked(BallLoad.of(plan.sheet()).orElseThrow().working()));
            } else {
                untold(plan, trailer, measures);
            }
            measures.add(trailer.tyres()
                    .map(tyres -> onTyres(TYRE_LOAD, "trailer", plan, tyres, load, onAxles))
                    .orElseGet(() -> Measure.of(TYRE_LOAD, "trailer", load, UNTOLD)));
            if (Levelling.planned(plan)) {
                levelled(plan, trailer, measures);
            }
            size(plan, trailer, measures);
        });
    }

    /** Whether what its axles may carry is told, or has to be: many a plate states what the whole trailer may weigh and no more. */
    private static boolean isTold(Trailer trailer) {
        return trailer.gtm().known() || !trailer.rated().known();
    }

    private static void untold(Plan plan, Trailer trailer, List<Measure> measures) {
        Figure held = Levelling.planned(plan) ? Levelling.of(plan, trailer).held() : trailer.ball();
        measures.add(
                Measure.of(AXLES_UNTOLD, "trailer", trailer.mass().minus(held).dividedBy(trailer.rated()))
                        .worked(
                                "share = (trailer - held) / rated",
                                in("trailer", trailer.mass(), "kg"),
                                in("held", held, "kg"),
                                in("rated", trailer.rated(), "kg")));
    }

    /** What the hitch takes off the vehicle, the trailer's axles and tyres have to carry. */
    private static void levelled(Plan plan, Trailer trailer, List<Measure> measures) {
        Levelling levelling = Levelling.of(plan, trailer);
        Figure load = levelling.onTrailerAxles(trailer.mass());
        Working[] onAxles = {
            new Working.Formula(
                    "load = trailer - ball x (1 - share x reach)",
                    List.of(
                            in("trailer", trailer.mass(), "kg"),
                            in("ball", trailer.ball(), "kg"),
                            in("share", levelling.share(), "%"),
                            in("reach", levelling.reach(), "%"))),
            Levelling.reached(plan, trailer)
        };
        if (isTold(trailer)) {
            measures.add(
                    Measure.of(LEVELLED, "trailer's axles", load, trailer.gtm()).worked(onAxles));
        }
        trailer.tyres()
                .ifPresent(tyres -> measures.add(onTyres(LEVELLED, "trailer's tyres", plan, tyres, load, onAxles)));
    }

    private static Measure onTyres(
            MeasureKind kind, String subject, Plan plan, AxleTyres tyres, Figure load, Working... onAxles) {
        Figure one = plan.tables().tyreLoad(tyres.loadIndex());
        Figure carried = one.times(tyres.count());
        PassengerTyres passenger = PassengerTyres.under(plan, tyres.passenger());
        Figure counted = passenger.counted(carried, load);
        return Measure.of(kind, subject, load, counted)
                .worked(onAxles)
                .worked(passenger.working(carried, counted))
                .worked("carried = tyres x load of one", in("tyres", tyres.count(), ""), in("load of one", one, "kg"));
    }

    private static void size(Plan plan, Trailer trailer, List<Measure> measures) {
        measures.add(Measure.of(WIDTH, "trailer", trailer.width()));
        measures.add(Measure.of(DRAWN_BY, "vehicle", plan.ratings().gvm()));
        measures.add(Measure.of(BODY_LENGTH, "trailer", trailer.length().minus(trailer.drawbar()))
                .worked(
                        "body = length - drawbar",
                        in("length", trailer.length(), "mm"),
                        in("drawbar", trailer.drawbar(), "mm")));
    }
}
