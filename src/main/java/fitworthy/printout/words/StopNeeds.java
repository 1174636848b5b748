package fitworthy.printout.words;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Arrangement.Group;
import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Severity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

/** The stops of a plan, and what each needs. */
public final class StopNeeds {

    private StopNeeds() {}

    /** Stops and what each needs, those together that need the same. */
    public static List<String> needs(List<Group<Finding>> stops) {
        return stops.stream()
                .collect(Collectors.groupingBy(
                        stop -> FindingBrief.loading(stop) + ". " + Wording.remedy(stop.worst()),
                        LinkedHashMap::new,
                        Collectors.mapping(ClearedWords::title, Collectors.joining(". "))))
                .entrySet()
                .stream()
                .map(need -> need.getValue() + need.getKey())
                .toList();
    }

    /** The stops of a plan, waived or not: no change is offered for a waiver. */
    public static List<Group<Finding>> stops(Advice advice) {
        return Arrangement.of(advice).findings().stream()
                .filter(group -> group.severity() == Severity.STOP)
                .toList();
    }
}
