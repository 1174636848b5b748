package fitworthy.printout.letter;

import fitworthy.advice.Advice;
import fitworthy.advice.Burden;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Ratings;
import fitworthy.advice.UntilApproved;
import fitworthy.book.Party;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Points;
import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Levelling;
import fitworthy.figures.plan.Loading;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.Digits.Held;
import fitworthy.printout.words.LevelledWords;
import fitworthy.printout.words.RatingWords;
import fitworthy.printout.words.TooClose;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;

/** What a letter tells of what the vehicle will weigh, and of what weighs most in it. */
final class LetterMasses {

    /** Whom the loads of the axles concern beside the whole mass. */
    private static final Set<Party> NEED_AXLES =
            Set.of(Party.ENGINEER, Party.LOW_VOLUME_CERTIFIER, Party.AUTHORITY, Party.TYRE_FITTER, Party.WEIGHBRIDGE);

    /** What is to be sent and stands in the letter itself. */
    private static final Pattern MASS = Pattern.compile("the (?:vehicle's )?loaded mass(?:es of vehicle and trailer)?");

    private static final Pattern AXLES = Pattern.compile("the axle (?:loads?|limits?)(?: [^,]*)?");

    /** Of what takes most off a limit so many are named. */
    private static final int MOST_HEAVY = 8;

    private final Advice advice;

    LetterMasses(Advice advice) {
        this.advice = advice;
    }

    /** What who is asked has to know of the masses. @param enclosed what is to be sent; loses what is told here */
    List<Block> blocks(Party party, List<String> enclosed) {
        if (party == Party.BUILDER || party == Party.CUSTOMER) {
            return List.of();
        }
        boolean axles = enclosed.removeIf(thing -> AXLES.matcher(thing).matches()) || NEED_AXLES.contains(party);
        boolean mass = enclosed.removeIf(thing -> MASS.matcher(thing).matches()) || party == Party.INSURER;
        String levelled = axles ? LevelledWords.sum(advice.loadings()) : "";
        return axles || mass
                ? List.of(
                        new Paragraph("What it will weigh:" + (levelled.isEmpty() ? "" : " " + levelled)),
                        new Points(advice.loadings().stream()
                                .map(loading -> masses(loading, axles))
                                .toList()))
                : List.of();
    }

    /**
     * What takes most off a rating that is passed, to choose from: of those off which something named takes any, the one that is
     * passed furthest. None where nothing named does.
     */
    List<Block> heaviest() {
        return Ratings.of(advice).passed().stream()
                .map(passed -> heaviest(passed, Burden.takesOff(advice, passed.judged())))
                .filter(blocks -> !blocks.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    private List<Block> heaviest(Assessed passed, Map<String, Double> takes) {
        Measure measure = passed.judged().measure();
        List<Block> blocks = new ArrayList<>();
        if (!takes.isEmpty()) {
            blocks.add(new Paragraph("What takes most off the " + RatingWords.name(passed) + ", which is exceeded by "
                    + Held.of(measure).leftText() + RatingWords.in(passed) + ", each by itself:"));
            blocks.add(new Points(takes.entrySet().stream()
                    .limit(MOST_HEAVY)
                    .map(thing -> thing.getKey() + ": " + Digits.quantity(thing.getValue(), measure.kind()))
                    .toList()));
        }
        if (measure.kind() == LoadMeasures.COMBINED) {
            Trailer trailer = advice.loadings().get(0).plan().trailer().orElseThrow();
            Figure most = trailer.mass().minus(trailer.lightest());
            blocks.add(new Paragraph("What is left out of " + trailer.name() + " takes its whole mass off the GCM"
                    + (most.value() > 0 ? ", " + Digits.quantity(most.value(), measure.kind()) + " at most." : ".")));
        }
        return blocks;
    }

    /** What a loading weighs against its limits. */
    private String masses(Loading loading, boolean withAxles) {
        AxleLoads axles = loading.axles();
        List<String> loads = new ArrayList<>(
                List.of(load("vehicle", LoadMeasures.LOADED, axles.total(), "GVM", loading, Vehicle.Ratings::gvm)));
        if (withAxles) {
            loads.add(load(
                    "front axle",
                    LoadMeasures.AXLE,
                    Levelling.front(loading),
                    "limit",
                    loading,
                    Vehicle.Ratings::frontAxle));
            loads.add(load("rear axle", LoadMeasures.AXLE, axles.rear(), "limit", loading, Vehicle.Ratings::rearAxle));
        }
        if (loading.towing()) {
            loads.add(load(
                    "with the trailer",
                    LoadMeasures.COMBINED,
                    loading.combined(),
                    "GCM",
                    loading,
                    Vehicle.Ratings::gcm));
        }
        return loading.loadCase().name() + ": " + String.join(", ", loads) + ".";
    }

    /** Against the rating in force, and the one that is wanted where a part is to raise it. */
    private String load(
            String what,
            MeasureKind kind,
            Figure load,
            String name,
            Loading loading,
            Function<Vehicle.Ratings, Figure> rating) {
        Figure planned = rating.apply(loading.plan().ratings());
        Figure made = rating.apply(loading.plan().vehicle().ratings());
        boolean raised = UntilApproved.of(advice).isPresent()
                && made.known()
                && planned.known()
                && made.value() != planned.value();
        Figure limit = raised ? made : planned;
        String wanted = raised
                ? "; wanted " + Held.of(Measure.of(kind, what, load, planned)).limitText()
                : "";
        Measure measure = Measure.of(kind, what, load, limit);
        Held held = Held.of(measure);
        String tolerance = Digits.number(load.tolerance(), "kg", 0);
        return what + " " + held.valueText()
                + (load.known() && !tolerance.equals("0") ? " +/- " + tolerance + " kg" : "") + " (" + name + " "
                + held.limitText() + (held.left() < 0 ? ", over by " + held.leftText() : "")
                + (Math.abs(measure.getHeadroom()) < measure.getTolerance() ? ", " + TooClose.WORDS : "") + wanted
                + ")";
    }
}
