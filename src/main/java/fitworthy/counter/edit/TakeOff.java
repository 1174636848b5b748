package fitworthy.counter.edit;

import fitworthy.counter.desk.Answer;
import fitworthy.counter.desk.Change;
import fitworthy.source.FaultsException;
import fitworthy.source.NodePath;
import fitworthy.source.Place;
import fitworthy.source.TextEdit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Takes an item out of its list, and out of what names it. A circuit goes with its part, and a waiver with what it is
 * about.
 *
 * @param path of the item, by the names of items in lists
 */
public record TakeOff(String path) implements Change {

    private static final Comparator<Place> IN_ORDER =
            Comparator.comparing(Place::line).thenComparing(Place::column);

    private static final Set<String> GO_ALONG = Set.of("circuits", "waivers");

    @Override
    public String label() {
        return Labels.item(path) + " taken off";
    }

    @Override
    public String label(Answer before) {
        try {
            Spot item = Spot.of(path, before);
            String along = along(item, before)
                    .map(gone -> Labels.field(gone, before.whole()))
                    .distinct()
                    .collect(Collectors.joining(", "));
            return along.isEmpty() ? label() : label() + ", and " + along;
        } catch (FaultsException e) {
            return label();
        }
    }

    @Override
    public Answer in(Answer now) throws FaultsException {
        Spot item = Spot.of(path, now);
        if (item.own() == null) {
            throw Spot.refused(now, path, "is not in the sheet's own text", "what it comes from");
        }
        List<NodePath> gone = new ArrayList<>(along(item, now).toList());
        gone.add(item.path());
        // What stands further down first, so that the positions of the others still hold.
        gone.sort(Comparator.comparing((NodePath there) -> there.in(now.tree()).place(), IN_ORDER)
                .reversed());
        Answer made = now;
        for (NodePath there : gone) {
            made = SetValue.written(TextEdit.without(made.text(), there), made, path);
        }
        return made;
    }

    /** What is taken along, as far as it stands in the text itself. */
    private static Stream<NodePath> along(Spot item, Answer now) {
        return References.to(item.path(), now.whole()).stream()
                .map(named -> GO_ALONG.contains(named.steps().get(0).toString()) ? named.above() : named)
                .filter(named -> named.in(now.tree()) != null)
                .distinct();
    }
}
