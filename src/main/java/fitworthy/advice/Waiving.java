package fitworthy.advice;

import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.Outcome.Judged;
import fitworthy.advice.Outcome.NotAssessed;
import fitworthy.book.Book;
import fitworthy.book.FormerIds;
import fitworthy.book.Severity;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Waiver;
import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.List;
import java.util.Optional;

/**
 * A waiver of the sheet and what became of it.
 *
 * @param rule the present id of the rule that it names
 */
public record Waiving(Waiver waiver, String rule, State state) {

    /** What became of a waiver. */
    public enum State {
        ACTIVE,
        /** Its rule is not checked any more. */
        RETIRED,
        /** Its last day is past. */
        EXPIRED,
        /** It would waive a stop, but leaves open on what subject or in which loading. */
        TOO_WIDE,
        /** What was not assessed cannot be waived. */
        NOT_ASSESSED,
        NOTHING_FOUND
    }

    /**
     * Adds a fault for each waiver, in the tree of a sheet, of a rule that the book does not have and never had. None is
     * suggested: the nearest id may be that of another stop.
     */
    public static void check(Node.Mapping root, Book book, List<Fault> faults) {
        int count = root.get("waivers") instanceof Node.Listing listing
                ? listing.items().size()
                : 0;
        for (int i = 1; i <= count; i++) {
            NodePath path = NodePath.of("waivers").to(i).to("rule");
            if (path.nearestIn(root) instanceof Node.Scalar rule
                    && !book.cards().containsKey(book.formerIds().present(rule.text()))) {
                faults.add(new Fault(
                        rule.place(),
                        path.toString(),
                        "the rule book has no rule " + rule.described(),
                        "the id printed under the very finding that it is to waive; one that is only like it may be"
                                + " another stop"));
            }
        }
    }

    /**
     * The waiver that counts for a finding. A stop is waived only where the waiver names its subject and its loading.
     */
    static Optional<Waiver> of(Sheet sheet, FormerIds former, Judged judged) {
        for (Waiver waiver : sheet.waivers()) {
            if (!expired(waiver, sheet)
                    && matches(waiver, former.present(waiver.rule()), judged)
                    && !tooWide(waiver, judged)) {
                return Optional.of(waiver);
            }
        }
        return Optional.empty();
    }

    /** What became of each waiver whose load case was looked at. */
    static List<Waiving> all(
            Sheet sheet, Book book, List<String> cases, List<Finding> findings, List<NotAssessed> notAssessed) {
        FormerIds former = book.formerIds();
        return sheet.waivers().stream()
                .filter(waiver -> waiver.in().isEmpty() || cases.contains(waiver.in()))
                .map(given -> {
                    String rule = former.present(given.rule());
                    State state = book.retired(rule, sheet.asOf()).isPresent()
                            ? State.RETIRED
                            : expired(given, sheet) ? State.EXPIRED : state(given, rule, findings, notAssessed);
                    return new Waiving(given, rule, state);
                })
                .toList();
    }

    private static State state(Waiver waiver, String rule, List<Finding> findings, List<NotAssessed> notAssessed) {
        if (findings.stream()
                .anyMatch(finding -> finding.waiver().filter(waiver::equals).isPresent())) {
            return State.ACTIVE;
        }
        if (findings.stream()
                .anyMatch(finding -> matches(waiver, rule, finding.judged()) && tooWide(waiver, finding.judged()))) {
            return State.TOO_WIDE;
        }
        return notAssessed.stream().anyMatch(outcome -> matches(waiver, rule, outcome.judged()))
                ? State.NOT_ASSESSED
                : State.NOTHING_FOUND;
    }

    private static boolean expired(Waiver waiver, Sheet sheet) {
        return sheet.asOf().isAfter(waiver.until());
    }

    /** @param rule the present id of the waiver's rule */
    private static boolean matches(Waiver waiver, String rule, Judged judged) {
        return rule.equals(judged.id())
                && (waiver.subject().isEmpty() || waiver.subject().equals(judged.subject()))
                && (waiver.in().isEmpty() || waiver.in().equals(judged.loadCase()));
    }

    private static boolean tooWide(Waiver waiver, Judged judged) {
        return judged.card().severity().is(Severity.STOP)
                && (waiver.subject().isEmpty()
                        || waiver.in().isEmpty() && !judged.loadCase().isEmpty());
    }
}
