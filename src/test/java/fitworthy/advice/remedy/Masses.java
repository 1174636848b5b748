package fitworthy.advice.remedy;

import static fitworthy.advice.remedy.Act.less;
import static fitworthy.advice.remedy.Fields.changed;
import static fitworthy.advice.remedy.Fields.parsed;
import static fitworthy.advice.remedy.Where.at;

import fitworthy.Books;
import fitworthy.advice.Adviser;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.Measure;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.List;

/** What is taken off the vehicle or the trailer. */
final class Masses {

    /** Not where a loading was weighed, which it has to be again. */
    static final Act OUT =
            (tree, sheet, finding, amount) -> isWeighed(sheet) ? List.of() : off(tree, amount.value(), 0.4);

    /** Nor where the frame is stretched behind the axle, since the bare vehicle was weighed before that. */
    static final Act OFF_AXLE = (tree, sheet, finding, amount) ->
            sheet.planned().fitments().stream().anyMatch(part -> part.kind() == Fitment.Kind.CHASSIS_EXTENSION)
                            || isWeighed(sheet)
                    ? List.of()
                    : off(tree, amount.value(), finding.judged().subject().startsWith("front") ? 1 : 0);

    /** Not where it does not weigh so much. */
    static final Act OFF_TRAILER = (tree, sheet, finding, amount) -> sheet.trailer()
                    .filter(trailer -> trailer.mass().value() > amount.value())
                    .isPresent()
            ? less(at("trailer.mass")).done(tree, sheet, finding, amount)
            : List.of();

    private Masses() {}

    private static boolean isWeighed(Sheet sheet) {
        return sheet.cases().stream().anyMatch(loading -> loading.weighed().isPresent());
    }

    /** Taken off the bare vehicle, so much of it off the front axle. */
    static List<Node.Mapping> off(Node.Mapping tree, double kilograms, double front) {
        if (!(has(tree, "kerb", kilograms)
                && has(tree, "front-axle", kilograms * front)
                && has(tree, "rear-axle", kilograms * (1 - front)))) {
            return List.of();
        }
        Node.Mapping changed = changed(tree, NodePath.parse("vehicle.mass.kerb"), now -> now - kilograms, "kg", false);
        changed = changed(
                changed, NodePath.parse("vehicle.mass.front-axle"), now -> now - kilograms * front, "kg", false);
        return List.of(changed(
                changed, NodePath.parse("vehicle.mass.rear-axle"), now -> now - kilograms * (1 - front), "kg", false));
    }

    /** Whether the bare vehicle weighs so much that it stays one with this taken off: twice as much. */
    private static boolean has(Node.Mapping tree, String field, double kilograms) {
        return NodePath.of("vehicle", "mass", field).in(tree) instanceof Node.Scalar mass
                && parsed(mass.text(), "kg").value() / 2 > kilograms;
    }

    /** The trailer loaded to no more than this, with the same share of it on the ball. */
    static List<Node.Mapping> loaded(Node.Mapping tree, double most) {
        double now = parsed(((Node.Scalar) NodePath.parse("trailer.mass").in(tree)).text(), "kg")
                .value();
        if (!(now > most)) {
            return List.of(tree);
        }
        Node.Mapping changed = changed(tree, NodePath.parse("trailer.mass"), mass -> most, "kg", true);
        return List.of(
                NodePath.parse("trailer.ball").in(tree) == null
                        ? changed
                        : changed(changed, NodePath.parse("trailer.ball"), ball -> ball * most / now, "kg", false));
    }

    /** The most that it weighs in any loading, kg. */
    static double heaviest(Sheet sheet) {
        try {
            return Adviser.advise(Books.engine(), sheet).loadings().stream()
                    .flatMap(loading -> Measures.of(loading).stream())
                    .filter(measure -> measure.getName().equals("mass.loaded") && measure.isKnown())
                    .mapToDouble(Measure::getValue)
                    .max()
                    .orElse(0);
        } catch (FaultsException e) {
            throw new IllegalStateException(e);
        }
    }
}
