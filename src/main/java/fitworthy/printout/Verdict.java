package fitworthy.printout;

import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Counts;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What advice comes to, in words. */
final class Verdict {

    private Verdict() {}

    /** The outcome in a sentence, with what was found and how many figures are missing. */
    static String of(Arrangement arrangement) {
        List<String> parts = new ArrayList<>();
        arrangement.told().stream()
                .filter(told -> !told.head().isWaived())
                .collect(Collectors.groupingBy(told -> told.head().severity(), TreeMap::new, Collectors.counting()))
                .forEach((severity, count) -> parts.add(count + " " + Words.hyphenated(severity.name())));
        if (arrangement.counts().notAssessed() > 0) {
            parts.add(open(arrangement.counts()));
        }
        String waived = HouseWords.waived(arrangement);
        String first = arrangement
                .advice()
                .worst()
                .map(worst -> switch (worst) {
                    case STOP -> "Do not buy, fit or drive it so.";
                    case CHANGE -> "Something in the plan has to change.";
                    case CONFIRM -> "Somebody has to agree before it goes ahead.";
                    case NOTE -> "Nothing in the way, with something worth knowing.";
                })
                .orElse(waived.isEmpty() ? "Nothing found in what was assessed." : "Nothing found but what is waived.");
        return first
                + (parts.isEmpty() ? "" : " Found: " + String.join(", ", parts) + ".")
                + (waived.isEmpty() ? "" : " Not counted: " + waived + ".");
    }

    /** How many checks lack a figure, and how many figures they lack. */
    static String open(Counts counts) {
        return counts.notAssessed() + (counts.notAssessed() == 1 ? " check" : " checks") + " not made for want of "
                + counts.figuresMissing() + (counts.figuresMissing() == 1 ? " figure" : " figures");
    }
}
