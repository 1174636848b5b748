package fitworthy.printout;

import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Counts;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Held;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Missing;
import java.util.List;
import java.util.stream.Collectors;

/** What rests on guesses, in words. */
final class GuessWords {

    private GuessWords() {}

    /** Before the title of a finding. */
    static String before(Arrangement arrangement, Group<Finding> finding) {
        return arrangement.guesses(finding).isEmpty() ? "" : "On guesses: ";
    }

    /** Which they are; empty where it rests on what is stated. */
    static List<String> of(Arrangement arrangement, Group<Finding> finding) {
        List<Missing> guesses = arrangement.guesses(finding);
        return guesses.isEmpty() ? List.of() : List.of("Guessed, so find out first: " + names(guesses) + ".");
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

    /** The guesses in order of the sheet, by their fields. */
    static String names(List<Missing> guesses) {
        return guesses.stream().map(Missing::path).distinct().collect(Collectors.joining(", "));
    }

    /** The guesses on which a check that is in order rests, in whatever loading. */
    static String names(Group<Held> group) {
        return names(group.outcomes().stream()
                .flatMap(held -> held.guesses().stream())
                .toList());
    }
}
