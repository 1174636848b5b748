package fitworthy.counter.plan;

import fitworthy.counter.desk.Change;
import fitworthy.counter.edit.SetValue;
import fitworthy.counter.edit.Several;
import fitworthy.sheet.TubFate;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What becomes of the tub that a vehicle came with, said at its tray or canopy. */
final class Tub {

    private static final String REMOVES = "removes";

    private Tub() {}

    /** @throws FaultsException where there is nothing to say it at, or where it is said otherwise already */
    static Change of(PlanSheet sheet, TubFate tub) throws FaultsException {
        List<NodePath> bodies = bodies(sheet);
        if (bodies.isEmpty()) {
            throw Edit.refused(
                    sheet,
                    "fitments",
                    "there is no tray or canopy yet that this could be said of",
                    "add the tray or canopy first");
        }
        Optional<NodePath> told = bodies.stream()
                .filter(body -> sheet.at(body.to(REMOVES)) != null)
                .findFirst();
        if (told.isPresent()) {
            throw Edit.refused(
                    sheet,
                    sheet.key(told.get()),
                    sheet.text(told.get().to("name")).orElse("a part") + " says already what comes off for it",
                    "change it there");
        }
        NodePath body = bodies.get(0);
        NodePath stays = body.to(TubFate.TUB_STAYS);
        if (tub == TubFate.STAYS_ON) {
            return new SetValue(sheet.key(stays), "yes");
        }
        List<Change> changes = new ArrayList<>();
        if (sheet.own(stays) != null) {
            changes.add(new SetValue(sheet.key(stays), ""));
        }
        NodePath removes = body.to(REMOVES);
        Node gone = NodeReader.read("", REMOVES + ": " + TubFate.TUB, new ArrayList<>())
                .get(REMOVES);
        changes.add(new PutWhole("tub off", sheet.key(removes), gone));
        return new Several("tub off", changes);
    }

    /** Trays before canopies, which may stand on one. */
    private static List<NodePath> bodies(PlanSheet sheet) {
        NodePath parts = NodePath.of("fitments");
        return Stream.of("tray", "canopy")
                .flatMap(kind -> IntStream.rangeClosed(1, sheet.items(parts).size())
                        .mapToObj(parts::to)
                        .filter(part ->
                                sheet.text(part.to("kind")).filter(kind::equals).isPresent()))
                .toList();
    }
}
