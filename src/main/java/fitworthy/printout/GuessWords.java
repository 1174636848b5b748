package fitworthy.printout;

import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Counts;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Held;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Mark;
import fitworthy.quantity.Missing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What rests on guesses, in words. */
final class GuessWords {

    /** The share of a spread from which on a guess is named by itself. */
    private static final double WORTH_NAMING = 0.1;

    private static final String USUAL = "the book's usual figure";

    private GuessWords() {}

    /** Before the title of a finding. */
    static String before(Arrangement arrangement, Group<Finding> finding) {
        return arrangement.guesses(finding).isEmpty() ? "" : "On guesses: ";
    }

    /** Which they are, and what they bring of its spread; empty where it rests on what is stated. */
    static List<String> of(Arrangement arrangement, Group<Finding> finding) {
        List<Missing> guesses = arrangement.guesses(finding);
        return guesses.isEmpty() ? List.of() : lines(arrangement, guesses, finding.worst());
    }

    /** The same of an outcome in one loading. */
    static List<String> of(Arrangement arrangement, Assessed outcome) {
        List<Missing> guesses = arrangement.advice().restsOn(outcome);
        return guesses.isEmpty() ? List.of() : lines(arrangement, guesses, outcome);
    }

    private static List<String> lines(Arrangement arrangement, List<Missing> guesses, Assessed outcome) {
        String spread = outcome.comparison()
                .map(comparison -> Wording.spread(outcome.judged(), comparison))
                .orElse("");
        Map<Missing, Double> shares =
                spread.isEmpty() ? Map.of() : arrangement.shares().of(outcome);
        String found = "Guessed, so find out first: " + names(guesses) + ".";
        return shares.isEmpty() ? List.of(found) : List.of(found, "Of the " + spread + ", " + parts(shares) + ".");
    }

    /** What the guesses bring of a spread: the greatest each by itself, all others together. The rest is stated. */
    private static String parts(Map<Missing, Double> shares) {
        List<String> parts = new ArrayList<>();
        double others = 0;
        for (Map.Entry<Missing, Double> share : shares.entrySet()) {
            if (share.getValue() >= WORTH_NAMING) {
                parts.add(share.getKey().path() + (parts.isEmpty() ? " brings " : " ") + percent(share.getValue()));
            } else {
                others += share.getValue();
            }
        }
        if (Math.round(others * 100) > 0) {
            parts.add(
                    parts.isEmpty()
                            ? "all guesses together bring " + percent(others)
                            : "other guesses " + percent(others));
        }
        return parts.isEmpty() ? "guesses bring less than 1 %" : String.join(", ", parts);
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    /** How many checks are in order only if guesses hold. */
    static String count(Counts counts) {
        return counts.held() + (counts.held() == 1 ? " check" : " checks") + " in order if the guesses hold";
    }

    /** What is so if the guesses hold. */
    static String words(Held held) {
        String rule = " (" + held.judged().id() + ")";
        return held.arises()
                ? Wording.fill(held.judged().card().met(), held) + rule
                : held.judged().subject() + ": "
                        + held.judged().measure().kind().meaning() + ": nothing to check" + rule;
    }

    /** The guesses in order of the sheet, by their fields, what somebody guessed before what the book did. */
    static String names(List<Missing> guesses) {
        String about = names(guesses, Mark.ABOUT);
        String usual = names(guesses, Mark.USUAL);
        return usual.isEmpty() ? about : about + (about.isEmpty() ? "" : "; ") + USUAL + "s: " + usual;
    }

    private static String names(List<Missing> guesses, Mark mark) {
        return guesses.stream()
                .filter(guess -> guess.mark() == mark)
                .map(Missing::path)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    /** What a field is, and that the book filled it in where it did. */
    static String meaning(Missing guess) {
        return guess.meaning() + (guess.mark() == Mark.USUAL ? ", " + USUAL : "");
    }

    /** The guesses on which a check that is in order rests, in whatever loading. */
    static String names(Group<Held> group) {
        return names(group.outcomes().stream()
                .flatMap(held -> held.guesses().stream())
                .toList());
    }
}
