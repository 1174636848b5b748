package fitworthy.figures.radio;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Point;
import fitworthy.sheet.RadioDetails;
import fitworthy.sheet.Sheet.Terrain;
import fitworthy.sheet.Sheet.Trip;
import java.util.Comparator;
import java.util.List;

/** Radios and aerials. None of it depends on the loading. */
public final class RadioMeasures implements Topic {

    private static final MeasureKind GAIN_HILLS =
            number("radio.gain-hills", "dBi", 1, "lowest gain of the aerials, for hills");
    private static final MeasureKind GAIN_OPEN =
            number("radio.gain-open", "dBi", 1, "highest gain of the aerials, for open country");
    private static final MeasureKind NEEDS_PLANE = yesNo("radio.needs-plane", "whether it needs a ground plane");
    private static final MeasureKind ON_METAL = yesNo("radio.on-metal", "whether it stands on earthed sheet metal");
    private static final MeasureKind SIGHT =
            number("radio.sight", "deg", 1, "angle from straight ahead at which the driver sees it");
    private static final MeasureKind ASIDE =
            number("radio.aside", "mm", 0, "distance to the passenger's side that clears the view ahead");
    private static final MeasureKind SEPARATION = number("radio.separation", "", 2, "wavelengths between the aerials");
    private static final MeasureKind HEIGHT =
            rated("radio.height", "mm", 0, "height of its tip", "headroom on the way");
    private static final MeasureKind HIDDEN = yesNo("radio.hidden", "whether it is hidden");
    private static final MeasureKind REMOTE_HEAD = yesNo("radio.remote-head", "whether display and keys are on a lead");
    private static final MeasureKind AIRED = yesNo("radio.aired", "whether air moves around it");
    private static final MeasureKind POWER = number("radio.power", "W", 1, "power of the transmitter");
    private static final MeasureKind RANGE = rated("radio.range", "km", 1, "distance wanted", "reach at best");

    /** By what share of a radio's frequency an aerial may be off and still be of its band: an assumption, see docs/method.md. */
    private static final double BAND = 0.1;

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                GAIN_HILLS,
                GAIN_OPEN,
                NEEDS_PLANE,
                ON_METAL,
                SIGHT,
                SEPARATION,
                HEIGHT,
                HIDDEN,
                REMOTE_HEAD,
                AIRED,
                POWER,
                RANGE,
                ASIDE);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        List<Fitment> aerials = plan.fitments(Fitment.Kind.AERIAL).stream()
                .sorted(Comparator.comparing(Fitment::name))
                .toList();
        Trip trip = plan.sheet().trip();
        if (!aerials.isEmpty()) {
            gain(bands(plan), trip, measures);
        }
        for (int i = 0; i < aerials.size(); i++) {
            aerial(plan, aerials.get(i), measures);
            for (Fitment other : aerials.subList(i + 1, aerials.size())) {
                separation(plan, aerials.get(i), other, measures);
            }
        }
        plan.fitments(Fitment.Kind.RADIO).forEach(radio -> radio(plan, radio, measures));
    }

    /**
     * The gains of the aerials that can be changed for each other: those of the band of each radio that talks to other
     * vehicles, or all where the sheet has no such radio.
     */
    private static List<List<Figure>> bands(Plan plan) {
        List<RadioDetails.Aerial> aerials = plan.details(RadioDetails.Aerial.class);
        List<List<Figure>> bands = plan.details(RadioDetails.Radio.class).stream()
                .filter(radio -> !radio.service().is(RadioDetails.RadioService.OTHER))
                .map(radio -> band(radio, aerials))
                .toList();
        return bands.isEmpty()
                ? List.of(aerials.stream().map(RadioDetails.Aerial::gain).toList())
                : bands;
    }

    private static List<Figure> band(RadioDetails.Radio radio, List<RadioDetails.Aerial> aerials) {
        Figure told = frequenciesTold(aerials.size() > 1 ? radio.frequency() : Figure.ZERO, aerials);
        List<RadioDetails.Aerial> near = aerials.stream()
                .filter(aerial -> radio.frequency().times(1 + BAND).isAtLeast(aerial.frequency())
                        && radio.frequency().times(1 - BAND).isAtMost(aerial.frequency()))
                .toList();
        return (near.isEmpty() ? aerials.stream().min(fittest(radio)).stream().toList() : near)
                .stream()
                        .map(aerial -> told.missingWith(aerial.gain(), aerial.gain()))
                        .toList();
    }

    /** A figure, missing where one of several aerials does not tell its frequency: which of them is the radio's is not known. */
    private static Figure frequenciesTold(Figure figure, List<RadioDetails.Aerial> aerials) {
        return aerials.stream()
                .filter(aerial -> aerials.size() > 1)
                .map(RadioDetails.Aerial::frequency)
                .reduce(figure, (told, frequency) -> told.missingWith(frequency, told));
    }

    /** Of the aerials of a band the fittest is judged, and of several radios the worst off. */
    private static void gain(List<List<Figure>> bands, Trip trip, List<Measure> measures) {
        if (!trip.terrain().known() || trip.terrain().is(Terrain.HILLS)) {
            measures.add(Measure.of(
                            GAIN_HILLS,
                            "aerials",
                            bands.stream()
                                    .map(gains ->
                                            gains.stream().reduce(Figure::least).orElseThrow())
                                    .reduce(Figure::most)
                                    .orElseThrow())
                    .given(trip.terrain()));
        }
        if (!trip.terrain().known() || trip.terrain().is(Terrain.OPEN)) {
            measures.add(Measure.of(
                            GAIN_OPEN,
                            "aerials",
                            bands.stream()
                                    .map(gains ->
                                            gains.stream().reduce(Figure::most).orElseThrow())
                                    .reduce(Figure::least)
                                    .orElseThrow())
                    .given(trip.terrain()));
        }
    }

    private static void aerial(Plan plan, Fitment fitment, List<Measure> measures) {
        RadioDetails.Aerial aerial = (RadioDetails.Aerial) fitment.details();
        measures.add(Measure.of(NEEDS_PLANE, fitment.name(), aerial.needsGroundPlane()));
        if (!aerial.needsGroundPlane().is(YesNo.NO)) {
            measures.add(Measure.of(ON_METAL, fitment.name(), aerial.onMetal()));
        }
        Point eye = plan.places().eye();
        Figure least = plan.practice(PracticeId.RADIO_SIGHT_LEAST);
        plan.places().of(fitment).filter(at -> !at.x().isAtLeast(eye.x())).ifPresent(at -> {
            measures.add(Measure.of(SIGHT, fitment.name(), RadioRange.sightAngle(eye, at))
                    .worked(
                            "angle = atan(|aerial aside - eye aside| / (eye back - aerial back))",
                            in("aerial aside", at.y(), "mm"),
                            in("eye aside", eye.y(), "mm"),
                            in("eye back", eye.x(), "mm"),
                            in("aerial back", at.x(), "mm")));
            measures.add(Measure.enough(ASIDE, fitment.name(), RadioRange.aside(eye, at, least))
                    .worked(
                            "aside = max(0, (eye back - aerial back) x tan(least) + to the eye)",
                            in("eye back", eye.x(), "mm"),
                            in("aerial back", at.x(), "mm"),
                            in("least", least, "deg"),
                            in("to the eye", RadioRange.toTheEye(eye, at), "mm")));
        });
        Figure headroom = plan.sheet().trip().headroom();
        // One that stands elsewhere is asked whether it folds only where its tip is higher than the way is.
        boolean judged = aerial.place().is(RadioDetails.AerialPlace.ROOF)
                || aerial.place().known()
                        && (aerial.folds().is(YesNo.NO) || aerial.tip().isAbove(headroom));
        if (judged && !aerial.folds().is(YesNo.YES)) {
            Figure tip = aerial.folds().known()
                    ? aerial.tip()
                    : Figure.missing(aerial.folds().missing());
            measures.add(Measure.of(HEIGHT, fitment.name(), tip, headroom));
        } else if (!aerial.place().known()) {
            measures.add(Measure.of(
                    HEIGHT, fitment.name(), Figure.missing(aerial.place().missing()), headroom));
        }
    }

    private static void separation(Plan plan, Fitment one, Fitment other, List<Measure> measures) {
        Figure lower = ((RadioDetails.Aerial) one.details())
                .frequency()
                .least(((RadioDetails.Aerial) other.details()).frequency());
        Point from = place(plan, one);
        Point to = place(plan, other);
        Figure separation = RadioRange.wavelengths(from, to, lower);
        // Two on the very same foot are changed for each other and never stand together.
        if (!separation.isZero()) {
            measures.add(Measure.of(SEPARATION, one.name() + " and " + other.name(), separation)
                    .worked(
                            "apart = sqrt(along^2 + across^2 + up^2) x frequency / 299.792458",
                            in("along", from.x().minus(to.x()), "m"),
                            in("across", from.y().minus(to.y()), "m"),
                            in("up", from.z().minus(to.z()), "m"),
                            in("frequency", lower, "MHz")));
        }
    }

    private static Point place(Plan plan, Fitment aerial) {
        Figure missing = Figure.missing(new Missing("fitments." + aerial.name() + ".at", "where it stands", "a tape"));
        return plan.places().of(aerial).orElse(new Point(missing, missing, missing));
    }

    private static void radio(Plan plan, Fitment fitment, List<Measure> measures) {
        RadioDetails.Radio radio = (RadioDetails.Radio) fitment.details();
        if (!radio.hidden().is(YesNo.NO)) {
            measures.add(Measure.of(HIDDEN, fitment.name(), radio.hidden()));
            measures.add(Measure.of(REMOTE_HEAD, fitment.name(), radio.remoteHead()));
            measures.add(Measure.of(AIRED, fitment.name(), radio.aired()));
        }
        if (!radio.service().is(RadioDetails.RadioService.OTHER)) {
            measures.add(Measure.of(
                    POWER,
                    fitment.name(),
                    radio.service().known()
                            ? radio.power()
                            : Figure.missing(radio.service().missing())));
        }
        List<RadioDetails.Aerial> aerials = plan.details(RadioDetails.Aerial.class);
        Figure told = frequenciesTold(plan.sheet().trip().radioRange(), aerials);
        aerials.stream()
                .min(fittest(radio))
                .ifPresent(aerial -> measures.add(range(fitment.name(), told, radio, aerial)));
    }

    /** The aerial nearest to the radio's frequency first, of several the tallest. */
    private static Comparator<RadioDetails.Aerial> fittest(RadioDetails.Radio radio) {
        return Comparator.<RadioDetails.Aerial>comparingDouble(aerial ->
                        Math.abs(aerial.frequency().value() - radio.frequency().value()))
                .thenComparing(aerial -> aerial.tip().value(), Comparator.reverseOrder());
    }

    /** The smaller of what the signal and what the horizon allows, to a vehicle with the same radio and aerial. */
    private static Measure range(String name, Figure wanted, RadioDetails.Radio radio, RadioDetails.Aerial aerial) {
        Figure free = RadioRange.freeSpace(radio.power(), aerial.gain(), radio.sensitivity(), radio.frequency());
        Figure horizon = RadioRange.horizon(aerial.tip(), aerial.tip());
        return Measure.of(RANGE, name, wanted, free.least(horizon))
                .worked("reach = min(free, horizon)", in("free", free, "km"), in("horizon", horizon, "km"))
                .worked(
                        "free = 10^((10 x log(power / (signal / 1000000)^2 x 50) + 2 x gain - 32.4"
                                + " - 20 x log(frequency)) / 20)",
                        in("power", radio.power(), "W"),
                        in("signal", radio.sensitivity(), "uV"),
                        in("gain", aerial.gain(), "dBi"),
                        in("frequency", radio.frequency(), "MHz"))
                .worked("horizon = 2 x sqrt(2 x 4 / 3 x 6371 x tip / 1000)", in("tip", aerial.tip(), "m"));
    }
}
