package fitworthy.printout.json;

import fitworthy.advice.Arrangement;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.quantity.Missing;
import java.util.List;
import java.util.Map;

/**
 * A guess that an outcome rests on.
 *
 * @param field the field that holds it
 * @param mark {@code about} or {@code usual}
 * @param shareOfSpread what it brings of the variance of the margin, 0 to 1; null where that is nothing
 */
record JsonGuess(String field, String mark, Double shareOfSpread) {

    static List<JsonGuess> all(Arrangement arrangement, Assessed outcome) {
        List<Missing> guesses = arrangement.advice().restsOn(outcome);
        Map<Missing, Double> shares =
                guesses.isEmpty() ? Map.of() : arrangement.shares().of(outcome);
        return guesses.stream()
                .map(guess -> new JsonGuess(guess.path(), guess.mark().word(), rounded(shares.get(guess))))
                .toList();
    }

    private static Double rounded(Double share) {
        return share == null ? null : Math.round(share * 1000) / 1000.0;
    }
}
