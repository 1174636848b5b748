package fitworthy.printout.words;

import fitworthy.advice.Advice;
import fitworthy.advice.GuessShares;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.figures.plan.FuelRange;
import fitworthy.figures.plan.Loading;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.QuantityText;
import fitworthy.search.Terms;
import fitworthy.source.Words;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether fuel, water and power last as the trip asks, each from the loading that leaves least. */
public final class TripAnswers {

    /**
     * What is taken along.
     *
     * @param per of what its figure is
     * @param rules those that hold it against the trip; those behind answer where the ones before have nothing to say
     */
    private record Supply(String name, String per, List<Set<String>> rules) {}

    private static final Supply FUEL = new Supply("Fuel", "", List.of(Set.of("fuel.range-short")));
    private static final Supply WATER = new Supply("Water", " a person and day", List.of(Set.of("water.short")));
    private static final List<Supply> SUPPLIES = List.of(
            FUEL,
            WATER,
            new Supply(
                    "Power",
                    "",
                    List.of(
                            Set.of("electrical.lithium-too-deep", "electrical.lead-too-deep"),
                            Set.of("electrical.starter-drained"),
                            Set.of("electrical.charge-short"))));

    /** Holds what water is left behind the days against a delay. */
    private static final Set<String> DELAY = Set.of("water.no-reserve");

    /** What is left of the sums of fractions of a litre. */
    private static final double NOTHING = 1e-6;

    /** How many figures are named that an answer lacks. */
    private static final int NAMED = 2;

    private TripAnswers() {}

    /** Empty where the sheet has no trip that asks for any of it. */
    public static String of(Advice advice) {
        return SUPPLIES.stream()
                .flatMap(supply -> supply.rules().stream()
                        .flatMap(rules -> answer(advice, rules).stream())
                        .limit(1)
                        .map(outcome -> supply.name() + ": " + words(advice, supply, outcome) + "."))
                .collect(Collectors.joining(" "));
    }

    private static Optional<Outcome> answer(Advice advice, Set<String> rules) {
        return advice.outcomes()
                .filter(outcome -> rules.contains(outcome.judged().id()) && isAnswer(outcome))
                .min(Comparator.comparingInt(TripAnswers::worstFirst).thenComparingDouble(TripAnswers::left));
    }

    /** What the engine burns in the loading. */
    private static String burnt(Advice advice, Outcome outcome) {
        return advice.loadings().stream()
                .filter(loading ->
                        loading.loadCase().name().equals(outcome.judged().loadCase()))
                .map(loading -> " at " + RoomWords.consumption(FuelRange.consumption(loading), " L/100km"))
                .findFirst()
                .orElse("");
    }

    /** In brackets, how much a person uses a day. */
    private static String use(Advice advice) {
        Figure use = advice.sheet().trip().waterUse();
        return use.known()
                ? " at " + (use.guess().isPresent() ? "about " : "") + Digits.number(use.value(), "L", 1)
                        + " L a person and day"
                : "";
    }

    /** Whether it lasts while they stay in one place, as far as that is known in any loading. */
    private static String parked(Advice advice) {
        Figure parked = advice.sheet().trip().parked();
        Map<String, Double> lasting = Terms.of(advice).water();
        boolean inAll = lasting.size()
                == advice.loadings().stream().filter(Loading::setsOut).count();
        return parked.known() && inAll
                ? (Collections.min(lasting.values()) >= parked.value() ? "enough" : "not enough") + " for "
                        + QuantityText.shown(parked.value(), "days") + " in a place, "
                : "";
    }

    private static boolean isAnswer(Outcome outcome) {
        return outcome instanceof NotAssessed
                || outcome instanceof Assessed assessed && assessed.comparison().isPresent();
    }

    private static int worstFirst(Outcome outcome) {
        return outcome instanceof Finding ? 0 : outcome instanceof NotAssessed ? 1 : 2;
    }

    private static double left(Outcome outcome) {
        return outcome instanceof Assessed assessed
                ? assessed.comparison().orElseThrow().margin()
                : 0;
    }

    private static String words(Advice advice, Supply supply, Outcome outcome) {
        if (outcome instanceof NotAssessed open) {
            String lasts = supply.equals(WATER) ? TermsWords.water(Terms.of(advice)) : TermsWords.NONE;
            return (lasts.equals(TermsWords.NONE)
                            ? ""
                            : "lasts about " + lasts + use(advice) + "; " + parked(advice)
                                    + "whether it is between supplies is ")
                    + "not known; missing: "
                    + missing(open);
        }
        Assessed assessed = (Assessed) outcome;
        Comparison compared = assessed.comparison().orElseThrow();
        boolean guessed = advice.isGuessed(assessed);
        boolean covered = supply.equals(WATER) && !(assessed instanceof Finding);
        Figure use = advice.sheet().trip().waterUse();
        if (covered && use.known() && compared.value() < use.value() - NOTHING) {
            return "not enough at the planned use"
                    + ifTheyHold(guessed || use.guess().isPresent()) + " ("
                    + Wording.value(assessed.judged(), compared) + supply.per() + ", planned "
                    + Digits.number(use.value(), "L", 1) + " L)";
        }
        String per = assessed.judged().measure().kind().unit().equals("%")
                ? " of the " + assessed.judged().subject()
                : supply.per();
        String delay = covered ? delay(advice) : "";
        return (compared.uncertain()
                        ? TooClose.WORDS
                        : (assessed instanceof Finding
                                        ? "not enough"
                                        : delay.isEmpty() ? "enough" : "enough for the days")
                                + ifTheyHold(guessed))
                + " ("
                + (guessed || compared.uncertain()
                        ? Wording.value(assessed.judged(), compared) + per + ", "
                                + Wording.limit(assessed.judged(), compared)
                        : delay.isEmpty()
                                ? Wording.figureAndLimit(assessed.judged(), compared, per)
                                : Wording.value(assessed.judged(), compared) + per)
                + (supply.equals(FUEL) ? burnt(advice, assessed) : "")
                + (guessed && compared.uncertain() ? "; what decides: " + deciding(advice, assessed) : "")
                + ")" + delay;
    }

    private static String ifTheyHold(boolean guessed) {
        return guessed ? " if the guesses hold" : "";
    }

    /** What water is left for a delay; nothing where that is enough, or nobody asks. */
    private static String delay(Advice advice) {
        return answer(advice, DELAY)
                .map(outcome -> {
                    if (outcome instanceof NotAssessed open) {
                        return open.waitsFor().stream().allMatch(Missing::isInBook)
                                ? "; how much for a delay no rule of this region says"
                                : "; whether for a delay is not known; missing: " + missing(open);
                    }
                    Assessed assessed = (Assessed) outcome;
                    Comparison compared = assessed.comparison().orElseThrow();
                    if (!(assessed instanceof Finding)) {
                        return "";
                    }
                    boolean none = Digits.asPrinted(assessed.judged(), compared).value() <= 0;
                    return "; "
                            + (compared.uncertain()
                                    ? TooClose.WORDS
                                    : (none ? "nothing" : "too little") + ifTheyHold(advice.isGuessed(assessed)))
                            + " for a delay (" + Wording.margin(assessed.judged(), compared) + ")";
                })
                .orElse("");
    }

    private static String missing(NotAssessed open) {
        return Words.few(open.waitsFor().stream().map(FieldWords::of).distinct().toList(), NAMED);
    }

    /** The guesses that bring most of its spread. */
    private static String deciding(Advice advice, Assessed assessed) {
        return GuessShares.in(advice).of(assessed).keySet().stream()
                .map(FieldWords::of)
                .distinct()
                .limit(NAMED)
                .collect(Collectors.joining("; "));
    }
}
