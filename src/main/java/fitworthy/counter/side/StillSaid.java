package fitworthy.counter.side;

import fitworthy.counter.desk.Answer;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Standing;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Mark;
import fitworthy.quantity.QuantityText;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Point;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import fitworthy.usual.Filling;
import java.util.ArrayList;
import java.util.Optional;

/**
 * What a sheet still says of a thing that was moved out of where that is: a move changes its place along the vehicle and
 * no word.
 */
final class StillSaid {

    private static final String X = "x";

    private StillSaid() {}

    /** In a sentence; empty where the place fits the words, or nobody can tell. @param path of its place @param at the same */
    static Optional<String> of(Answer now, String path, Point at, Plan plan) {
        Node.Mapping tree = Filling.withItems(now.read().orElseThrow().tree());
        NodePath place = NodePath.find(path, tree);
        return place == null
                ? Optional.empty()
                : carrier(place, tree, at, plan)
                        .or(() -> words(place, tree, now))
                        .map(words -> "The sheet still says that it is " + words + ".");
    }

    /** The part that it is in, where that has ends and none of them holds it. */
    private static Optional<String> carrier(NodePath place, Node.Mapping tree, Point at, Plan plan) {
        Optional<String> in = text(place.above().to("in"), tree);
        return plan.sheet().fitments().stream()
                .filter(part -> in.filter(part.name()::equals).isPresent())
                .filter(part -> Standing.carries(plan, part))
                .filter(part -> Standing.holds(plan, part, at).is(YesNo.NO))
                .map(part -> "in " + part.name() + ", which is not there")
                .findFirst();
    }

    /** Words for its place, where what the rule book takes them for lies elsewhere, whatever its spread. */
    private static Optional<String> words(NodePath place, Node.Mapping tree, Answer now) {
        Optional<String> words =
                text(place.to("where"), tree).map(said -> Mark.read(said).text());
        Node.Mapping unmoved =
                Filling.filled(Trees.without(tree, place.to(X)), now.view().book(), new ArrayList<>());
        Optional<Figure> meant = text(place.to(X), unmoved).flatMap(StillSaid::along);
        Optional<Figure> moved = text(place.to(X), tree).flatMap(StillSaid::along);
        return words.filter(said -> meant.isPresent()
                && moved.isPresent()
                && Math.abs(moved.get().value() - meant.get().value())
                        > meant.get().tolerance() + moved.get().tolerance());
    }

    private static Optional<Figure> along(String written) {
        try {
            return Optional.of(QuantityText.parse(Mark.read(written).text(), Dimension.LENGTH));
        } catch (QuantityText.Unreadable e) {
            return Optional.empty();
        }
    }

    private static Optional<String> text(NodePath path, Node.Mapping tree) {
        return path.in(tree) instanceof Node.Scalar word ? Optional.of(word.text()) : Optional.empty();
    }
}
