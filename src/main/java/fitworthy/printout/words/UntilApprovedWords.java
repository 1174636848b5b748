package fitworthy.printout.words;

import fitworthy.advice.Advice;
import fitworthy.advice.UntilApproved;
import fitworthy.advice.UntilApproved.Left;
import fitworthy.figures.mass.LoadMeasures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What holds once a part that raises ratings is approved, and how the plan stands until then. */
final class UntilApprovedWords {

    private UntilApprovedWords() {}

    /** Ratings that a part raises hold once somebody has approved it. */
    static String raised(Advice advice) {
        return UntilApproved.of(advice)
                .map(until -> " once " + until.part() + " is approved")
                .orElse("");
    }

    /** How the plan stands against the maker's ratings until then; empty where no part raises them. */
    static String until(Advice advice) {
        return UntilApproved.of(advice)
                .map(until -> " Until " + until.part() + " is approved " + stands(until) + ".")
                .orElse("");
    }

    /** The same behind what holds then. */
    static String untilThen(Advice advice) {
        return UntilApproved.of(advice)
                .map(until -> " Until then " + stands(until) + ".")
                .orElse("");
    }

    private static String stands(UntilApproved until) {
        List<String> parts = new ArrayList<>();
        if (!until.over().isEmpty()) {
            parts.add("over: " + byLoading(until.over(), left -> left.limit() + " by " + over(left)));
        }
        if (!until.close().isEmpty()) {
            parts.add(TooClose.WORDS + ": " + byLoading(until.close(), UntilApprovedWords::within));
        }
        if (!until.unknown().isEmpty()) {
            parts.add("not known: " + String.join(", ", until.unknown()));
        }
        return parts.isEmpty()
                ? "within its ratings too"
                        + until.least()
                                .map(least -> ", least spare: "
                                        + byLoading(
                                                List.of(least),
                                                left -> left.limit() + " "
                                                        + Wording.margin(
                                                                left.compared().margin(), LoadMeasures.LOADED)))
                                .orElse("")
                : String.join("; ", parts);
    }

    private static String over(Left left) {
        return Wording.over(left.compared().margin(), left.compared().tolerance(), LoadMeasures.LOADED);
    }

    private static String within(Left left) {
        double margin = left.compared().margin();
        return left.limit() + " "
                + (Wording.isNothing(margin, LoadMeasures.LOADED)
                        ? Wording.NOTHING
                        : margin < 0 ? "over by " + over(left) : Wording.margin(margin, LoadMeasures.LOADED) + " spare")
                + " +/- " + Digits.quantity(left.compared().tolerance(), LoadMeasures.LOADED);
    }

    /** Those of one loading together. */
    private static String byLoading(List<Left> all, Function<Left, String> words) {
        Map<String, List<String>> byLoading = new LinkedHashMap<>();
        all.forEach(left -> byLoading
                .computeIfAbsent(left.loading(), none -> new ArrayList<>())
                .add(words.apply(left)));
        return byLoading.entrySet().stream()
                .map(entry -> String.join(", ", entry.getValue()) + " (" + entry.getKey() + ")")
                .collect(Collectors.joining(", "));
    }
}
