package fitworthy.printout;

import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Counts;
import fitworthy.advice.Arrangement.Headings;
import fitworthy.printout.words.SeverityWords;
import java.util.ArrayList;
import java.util.List;

/** What advice comes to, in words. */
final class Verdict {

    private Verdict() {}

    /** The outcome in a sentence, with what was found and how many figures are missing. */
    static String of(Arrangement arrangement) {
        List<String> parts = new ArrayList<>();
        Headings headings = arrangement.headings();
        headings.found().forEach((severity, count) -> parts.add(count + " " + SeverityWords.behind(count, severity)));
        if (headings.under() > 0) {
            parts.add(parts.remove(parts.size() - 1) + " (" + headings.under() + " more told under them)");
        }
        if (arrangement.counts().notAssessed() > 0) {
            parts.add(open(arrangement.counts()));
        }
        if (arrangement.counts().held() > 0) {
            parts.add(GuessWords.count(arrangement.counts()));
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
