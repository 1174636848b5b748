package fitworthy.cli;

import fitworthy.book.Book;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import fitworthy.source.Words;
import java.util.Collection;
import java.util.List;

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
        refuse(faults(option, typed, known, missing, right));
    }

    /** The present id of a rule, by that or a former one; refuses one that the book does not have. */
    static String rule(String id, Book book) throws FaultsException {
        String present = book.formerIds().present(id);
        check(
                "RULE",
                List.of(present),
                book.cards().keySet(),
                "the rule book has no rule",
                "an id as printed under a finding, such as mass.gvm-over");
        return present;
    }

    static void refuse(List<Fault> faults) throws FaultsException {
        if (!faults.isEmpty()) {
            throw new FaultsException(faults);
        }
    }
}
