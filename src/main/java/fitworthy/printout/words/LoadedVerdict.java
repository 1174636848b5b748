package fitworthy.printout.words;

import fitworthy.advice.Advice;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Ratings;
import fitworthy.advice.TrailerRoom;
import fitworthy.advice.TrailerRoom.AtPlate;
import fitworthy.book.Book;
import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.room.RoomMeasures;
import fitworthy.sheet.Guesses;
import fitworthy.sheet.Trailer;
import fitworthy.source.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How the vehicle stands against its ratings as it will be loaded, and what it tows. */
public final class LoadedVerdict {

    private static final String TOWING = "towing";
    /** How many loadings or choices are named in a sentence. */
    private static final int NAMED = 5;

    /** What the two ratings are that everything is told of, for who never met them. */
    public static final String RATINGS =
            "The GVM is the most that the vehicle may weigh loaded, with what presses on its tow bar."
                    + " The GCM is the most for vehicle and trailer together.";

    private LoadedVerdict() {}

    /**
     * Whether the vehicle is within its ratings as it will be loaded, and by how much it is over or what is least spare;
     * then of a trailer that no loading tows, whether it could be, and of one that nobody knows the mass of, what it passes
     * at its plate.
     */
    public static String loaded(Advice advice) {
        return ofLoadings(advice) + (TrailerRoom.isLeftUntowed(advice) ? " " + untowed(advice) : "") + atPlate(advice);
    }

    /** The same, and which of each open choice it is told with, where these are not listed beside it. */
    public static String loadedAsChosen(Advice advice) {
        List<String> open = advice.sheet().options().stream()
                .filter(option -> option.take().isEmpty())
                .map(option -> option.taken().name() + " (" + option.name() + ")")
                .toList();
        return loaded(advice)
                + (open.isEmpty() ? "" : " Choices still open, told here with: " + Words.few(open, NAMED) + ".");
    }

    /**
     * What the rating that is passed furthest leaves in the loadings that keep it, but for those in which that is too close to
     * call and told so already; empty where there is no other.
     */
    public static String keptElsewhere(Advice advice) {
        Optional<Assessed> worst = Ratings.of(advice).passed().stream().findFirst();
        String kept = worst.stream()
                .flatMap(rating -> Stream.<List<? extends Assessed>>of(advice.findings(), advice.met(), advice.held())
                        .flatMap(List::stream)
                        .filter(outcome -> outcome.judged().measure().kind()
                                        == rating.judged().measure().kind()
                                && outcome.judged()
                                        .subject()
                                        .equals(rating.judged().subject())
                                && outcome.comparison()
                                        .filter(comparison -> comparison.margin() >= 0 && !comparison.uncertain())
                                        .isPresent()))
                .collect(Collectors.toMap(
                        outcome -> outcome.judged().loadCase(),
                        outcome -> outcome.judged().loadCase() + " "
                                + (Wording.isNothing(outcome)
                                        ? "just at it"
                                        : RatingWords.spare(advice, outcome) + " below it"),
                        (one, other) -> one,
                        LinkedHashMap::new))
                .values()
                .stream()
                .limit(NAMED)
                .collect(Collectors.joining(", "));
        return kept.isEmpty() ? "" : " " + Words.capital(RatingWords.name(worst.orElseThrow())) + ": " + kept + ".";
    }

    private static String atPlate(Advice advice) {
        List<AtPlate> passed = TrailerRoom.atPlate(advice);
        if (passed.isEmpty()) {
            return "";
        }
        Trailer trailer = passed.get(0).trailer();
        String about = Guesses.of(advice.sheet()).isEmpty() ? "" : "about ";
        return " What " + trailer.name() + " weighs is not known; at its plate, the most it may weigh ("
                + kilograms(trailer.rated().value()) + "), it would be over: "
                + passed.stream()
                        .map(limit -> limit.limit() + " by " + about + kilograms(limit.by()))
                        .collect(Collectors.joining(", "))
                + " (" + passed.get(0).loading() + ").";
    }

    private static String untowed(Advice advice) {
        TrailerRoom room = TrailerRoom.of(advice).orElseThrow();
        String none = "No loading tows " + room.trailer().name();
        return room.tooHeavyBy()
                .map(over -> none + "; at " + kilograms(room.trailer().mass().value()) + " it is " + kilograms(over)
                        + " too heavy (" + room.governs() + ").")
                .orElse(none + ", so what it does to the vehicle is not checked.");
    }

    /** By how much the trailer as planned is over what the two may weigh, or over a limit of its own; empty where it is not. */
    public static String overWithTrailer(Advice advice) {
        List<Assessed> passed = Ratings.of(advice).passed().stream()
                .filter(rating -> rating.judged().measure().kind() == LoadMeasures.COMBINED
                        || Book.topic(rating.judged().id()).equals(TOWING))
                .toList();
        Map<Boolean, List<Assessed>> byCloseness = RatingWords.byCloseness(passed);
        List<Assessed> sure = byCloseness.get(false);
        List<Assessed> close = byCloseness.get(true);
        return (sure.isEmpty()
                        ? ""
                        : " With the trailer as planned it is over: " + RatingWords.over(advice, sure) + ".")
                + (close.isEmpty()
                        ? ""
                        : " Too close to call with the trailer as planned: " + RatingWords.within(advice, close) + ".");
    }

    private static String kilograms(double mass) {
        return Digits.quantity(mass, RoomMeasures.TRAILER);
    }

    private static String ofLoadings(Advice advice) {
        Ratings ratings = Ratings.of(advice);
        List<Assessed> over = RatingWords.byCloseness(ratings.passed()).get(false);
        List<Assessed> close = ratings.close();
        if (!over.isEmpty()) {
            return "Loaded as planned it is over its ratings: " + RatingWords.over(advice, over) + "."
                    + (close.isEmpty() ? "" : " Too close to call: " + RatingWords.within(advice, close) + ".");
        }
        if (close.stream().anyMatch(rating -> rating.comparison().orElseThrow().tooClose())) {
            return "Loaded as planned it is too close to call whether it is within its ratings: "
                    + RatingWords.within(advice, close) + ". Settle it before you go ahead."
                    + UntilApprovedWords.until(advice);
        }
        if (ratings.open() == 0 && ratings.assessed().isEmpty()) {
            return "No rating was checked, so it is not known whether it is within its ratings loaded as planned.";
        }
        if (ratings.open() > 0) {
            return "Not known whether it is within its ratings loaded as planned: " + ratings.open() + " of "
                    + (ratings.open() + ratings.assessed().size()) + " not checked, information missing."
                    + UntilApprovedWords.until(advice);
        }
        boolean guessed = ratings.assessed().stream().anyMatch(rating -> advice.isGuessed(rating));
        return "Loaded as planned it is within its ratings"
                + (advice.loadings().size() == 1 ? "" : " in every loading") + UntilApprovedWords.raised(advice)
                + (guessed ? ", if the guesses hold" : "")
                + ratings.least()
                        .map(least -> "; "
                                + (Wording.isNothing(least)
                                        ? Wording.NOTHING + RatingWords.give(least) + ": " + RatingWords.name(least)
                                        : "least spare: " + RatingWords.name(least) + " "
                                                + RatingWords.spare(advice, least))
                                + RatingWords.in(least))
                        .orElse("")
                + (close.isEmpty()
                        ? ""
                        : "; too close to call: "
                                + close.stream().map(RatingWords::name).collect(Collectors.joining(", ")))
                + "." + UntilApprovedWords.untilThen(advice) + later(advice, ratings.later());
    }

    /** What is over, or too close to call, once tanks and supplies are used up; empty where nothing is. */
    private static String later(Advice advice, List<Assessed> later) {
        Map<Boolean, List<Assessed>> byCloseness = later.stream()
                .collect(Collectors.partitioningBy(
                        rating -> rating.comparison().orElseThrow().uncertain()));
        List<Assessed> over = byCloseness.get(false);
        List<Assessed> close = byCloseness.get(true);
        String told = Stream.of(
                        over.isEmpty() ? "" : "it is over: " + RatingWords.over(advice, over),
                        close.isEmpty() ? "" : "too close to call: " + RatingWords.within(advice, close))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
        return told.isEmpty() ? "" : " On the way, as tanks and supplies are used up, " + told + ".";
    }
}
