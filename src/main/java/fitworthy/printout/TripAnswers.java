package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Outcome;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.figures.plan.Loading;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.FieldWords;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Figure;
import fitworthy.quantity.QuantityText;
import fitworthy.search.Terms;
import fitworthy.source.Words;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether fuel, water and power last as the trip asks, each from the loading that leaves least. */
final class TripAnswers {

    /** What is taken along. @param per of what its figure is @param rules those that hold it against the trip */
    private record Supply(String name, String per, Set<String> rules) {}

    private static final Supply WATER = new Supply("Water", " a person and day", Set.of("water.short"));
    private static final List<Supply> SUPPLIES = List.of(
            new Supply("Fuel", "", Set.of("fuel.range-short")),
            WATER,
            new Supply("Power", " of the battery", Set.of("electrical.lithium-too-deep", "electrical.lead-too-deep")));

    /** How many figures are named that an answer lacks. */
    private static final int NAMED = 2;

    private TripAnswers() {}

    /** Empty where the sheet has no trip that asks for any of it. */
    static String of(Advice advice) {
        return SUPPLIES.stream()
                .flatMap(supply -> advice
                        .outcomes()
                        .filter(outcome ->
                                supply.rules().contains(outcome.judged().id()) && isAnswer(outcome))
                        .min(Comparator.comparingInt(TripAnswers::worstFirst).thenComparingDouble(TripAnswers::left))
                        .map(outcome -> supply.name() + ": " + words(advice, supply, outcome) + ".")
                        .stream())
                .collect(Collectors.joining(" "));
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
                    + Words.few(
                            open.waitsFor().stream()
                                    .map(FieldWords::of)
                                    .distinct()
                                    .toList(),
                            NAMED);
        }
        Assessed assessed = (Assessed) outcome;
        if (!(assessed instanceof Finding)
                && assessed.judged().id().startsWith("electrical.")
                && assessed.comparison().orElseThrow().value() <= 0) {
            return "enough" + (advice.isGuessed(assessed) ? " if the guesses hold" : "")
                    + ": the sun gives in a day what is used, or more";
        }
        return (assessed instanceof Finding ? "not enough" : "enough")
                + (advice.isGuessed(assessed) ? " if the guesses hold" : "")
                + " ("
                + Wording.figureAndLimit(
                        assessed.judged(), assessed.comparison().orElseThrow(), supply.per())
                + ")";
    }
}
