package fitworthy.proof;

import fitworthy.book.Book;
import fitworthy.source.Fault;
import fitworthy.source.NodePath;
import fitworthy.usual.PlacesInWords;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Whether each place in words that a book knows stands in a case, so that what comes of it is looked at. */
final class PlaceReview {

    private final List<CaseResult> trials;
    private final List<Fault> faults;

    PlaceReview(List<CaseResult> trials, List<Fault> faults) {
        this.trials = trials;
        this.faults = faults;
    }

    void look(Book book) {
        Set<String> used = new HashSet<>();
        trials.forEach(trial -> used.addAll(PlacesInWords.used(trial.text().tree(), book)));
        book.usualPlaces().places().keySet().stream()
                .filter(words -> !used.contains(words))
                .forEach(words -> faults.add(new Fault(
                        book.usualPlaces().entries().get(words).place(NodePath.TOP),
                        words,
                        "no case names this place",
                        "a case in cases.yaml with 'at: " + words + "', and a figure that comes of it")));
    }
}
