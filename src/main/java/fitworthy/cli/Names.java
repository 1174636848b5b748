package fitworthy.cli;

import fitworthy.book.Book;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** Names as typed, which have to be among those that there are. */
final class Names {

    private Names() {}

    /**
     * A fault for each name that is not there.
     *
     * @param option where they were typed
     * @param missing what there is no such thing of, like {@code the sheet has no option}
     * @param right what would be right
     */
    static List<Fault> faults(
            String option, Collection<String> typed, Collection<String> known, String missing, String right) {
        return typed.stream()
                .filter(name -> !known.contains(name))
                .map(name -> new Fault(
                        Place.of(option), "", missing + " '" + name + "'" + Words.suggestion(name, known), right))
                .toList();
    }

    /** Refuses names that are not there. */
    static void check(String option, Collection<String> typed, Collection<String> known, String missing, String right)
            throws FaultsException {
        FaultsException.refuse(faults(option, typed, known, missing, right));
    }

    /**
     * The present id of a rule, by that or a former one, or by a practice value that it alone uses; refuses one that the
     * book does not have.
     */
    static String rule(String id, Book book) throws FaultsException {
        String present = book.formerIds().present(id);
        if (book.practice().containsKey(present)) {
            List<String> users = book.users(present);
            if (users.size() == 1) {
                return users.get(0);
            }
            throw new FaultsException(List.of(new Fault(
                    Place.of("RULE"),
                    "",
                    "'" + present + "' is a practice value, "
                            + (users.isEmpty() ? "which figures alone ask for" : "which several rules use"),
                    users.isEmpty() ? "a rule whose figures it is for" : "one of " + String.join(", ", users))));
        }
        check("RULE", List.of(present), book.cards().keySet(), "the rule book has no rule", rules(id, book));
        return present;
    }

    /** The rules of a topic, or those whose ids hold what was typed, or come near it after the topic. */
    private static String rules(String typed, Book book) {
        List<String> near = book.cards().keySet().stream()
                .filter(rule -> rule.startsWith(typed + "."))
                .toList();
        if (near.isEmpty()) {
            String part = Words.nearest(
                    typed,
                    book.cards().keySet().stream().map(Names::withoutTopic).toList());
            near = book.cards().keySet().stream()
                    .filter(rule -> rule.contains(typed) || withoutTopic(rule).equals(part))
                    .toList();
        }
        return near.isEmpty()
                ? "an id as printed under a finding, such as mass.gvm-over, or one of the topics "
                        + book.cards().keySet().stream()
                                .map(rule -> rule.substring(0, rule.indexOf('.')))
                                .distinct()
                                .collect(Collectors.joining(", "))
                        + " for a list of its rules"
                : "one of " + String.join(", ", near);
    }

    private static String withoutTopic(String rule) {
        return rule.substring(rule.indexOf('.') + 1);
    }
}
