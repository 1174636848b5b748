package fitworthy.search;

import fitworthy.figures.plan.Liquids;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** What the customer does without where a part is left out: the part, and what stands in or on it. */
final class GivenUp {

    private static final String IN_THE = "in the ";

    private final Resting resting;
    private final List<Sheet.Load> cargo;
    /** By the kind of part in words, what sits in it. */
    private final Map<String, List<String>> inWords = new HashMap<>();

    private final Set<String> kept = new HashSet<>();
    private final Set<String> bodies = new HashSet<>();
    private final Set<String> chosen = new HashSet<>();
    /** In kg, by the name of a part, a tank with what it is filled with, or cargo. */
    private final Map<String, Double> kilograms = new HashMap<>();
    /**
     * @param root the tree of the sheet, where places may be in words
     * @param planned the sheet with only the chosen parts in it
     */
    GivenUp(Node.Mapping root, Sheet planned) {
        planned.fitments().forEach(part -> placed(root, NodePath.of("fitments", part.name()), part.name()));
        planned.cargo().forEach(load -> placed(root, NodePath.of("cargo", load.name()), load.name()));
        planned.tanks().forEach(tank -> placed(root, NodePath.of("tanks", tank.name()), tank.name()));
        resting = new Resting(planned);
        cargo = planned.cargo();
        planned.options().forEach(option -> option.choices().forEach(choice -> chosen.addAll(choice.parts())));
        for (Fitment part : planned.fitments()) {
            add(part.name(), part.mass().value());
            if (part.kind() == Fitment.Kind.TRAY || part.kind() == Fitment.Kind.CANOPY) {
                bodies.add(part.name());
            }
            if (part.keep().is(YesNo.YES)) {
                kept.add(part.name());
            }
        }
        planned.tanks()
                .forEach(
                        tank -> add(tank.name(), Liquids.mass(tank, tank.fill()).value()));
        for (Sheet.Load load : planned.cargo()) {
            add(load.name(), load.mass().value());
        }
    }

    /** Takes down what a thing sits in by the words for its place, such as "in the canopy". */
    private void placed(Node.Mapping root, NodePath thing, String name) {
        Node at = thing.to("at").in(root);
        Node words = at instanceof Node.Mapping place ? place.get("where") : at;
        if (words instanceof Node.Scalar said && said.text().startsWith(IN_THE)) {
            inWords.computeIfAbsent(said.text().substring(IN_THE.length()), none -> new ArrayList<>())
                    .add(name);
        }
    }

    private void add(String name, double mass) {
        kilograms.merge(name, mass, Double::sum);
    }

    /**
     * Whether a part may be left out: nobody has to choose about it, it takes nothing away that is to be kept, and no tray
     * or canopy, since that would be to do without the build.
     */
    boolean mayGo(Fitment part) {
        Set<String> gone = with(part);
        return !part.isDone()
                && resting.isFirst(part.name())
                && !chosen.contains(part.name())
                && gone.stream().noneMatch(kept::contains)
                && gone.stream().noneMatch(name -> bodies.contains(name) && !name.equals(part.name()));
    }

    /** The change that leaves it out. */
    Change.Drop without(Fitment part) {
        Set<String> gone = with(part);
        List<String> more = new ArrayList<>(gone);
        more.remove(part.name());
        more.addAll(resting.cargo(cargo, gone));
        return new Change.Drop(part.name(), List.copyOf(more), kept(part.kind()), staying(part, more));
    }

    /** What sits in a part as the words for its place say, and does not go with it. */
    private List<String> staying(Fitment part, List<String> gone) {
        return inWords.getOrDefault(Words.hyphenated(part.kind().name()), List.of()).stream()
                .filter(name -> !gone.contains(name))
                .toList();
    }

    /** What no vehicle goes without. */
    private static String kept(Fitment.Kind kind) {
        return switch (kind) {
            case TYRES, WHEELS, SPRINGS -> Words.hyphenated(kind.name());
            default -> "";
        };
    }

    /** In kg. */
    double kilograms(Fitment part) {
        return kilograms(with(part));
    }

    /** What these weigh, with the cargo in or on them, kg. */
    double kilograms(Set<String> gone) {
        return Stream.concat(gone.stream(), resting.cargo(cargo, gone).stream())
                .mapToDouble(name -> kilograms.getOrDefault(name, 0.0))
                .sum();
    }

    private Set<String> with(Fitment part) {
        return resting.with(List.of(part.name()));
    }
}
