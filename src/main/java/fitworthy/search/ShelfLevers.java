package fitworthy.search;

import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Severity;
import fitworthy.schema.Binder;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.FrontDetails.Lamps;
import fitworthy.sheet.Sheet;
import fitworthy.shelf.Shelf;
import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Parts that lie on the shelf in place of planned ones of the same kind: lighter ones, and any for a part that something
 * has to be changed about.
 */
final class ShelfLevers {

    private static final int MOST_FOR_A_PART = 2;
    private static final int MOST = 12;
    /** The least that makes a part a lighter one, kg. */
    private static final double LIGHTER = 1;

    /** Made for one vehicle and one end of it: what the shelf says of them is not known of another. */
    private static final Set<Kind> FOR_ONE_VEHICLE = EnumSet.of(
            Kind.BAR,
            Kind.SPRINGS,
            Kind.TOW_BAR,
            Kind.SNORKEL,
            Kind.RATING_UPGRADE,
            Kind.CHASSIS_EXTENSION,
            Kind.MIRRORS,
            Kind.AIRBOX,
            Kind.BREATHER_KIT,
            Kind.BODY_LIFT,
            Kind.WHEEL_SPACERS,
            Kind.BODY_CUT,
            Kind.SEAT_CHANGE,
            Kind.RECOVERY_POINT);

    /** Made for one vehicle, but for others of its size too. */
    private static final Set<Kind> MADE = EnumSet.of(Kind.TRAY, Kind.CANOPY, Kind.ROOF_RACK);

    /** What a shelf knows of one vehicle alone, or of one that is fitted already; the sheet plans the fitting. */
    private static final List<String> NOT_TAKEN = List.of("suits", "done", "certificate", "work");

    private final Node.Mapping root;
    private final Map<String, Node.Mapping> onShelf;
    private final Map<Kind, List<Fitment>> byKind;
    private final Set<String> onSheet;

    private ShelfLevers(Node.Mapping root, Sheet sheet, Shelf shelf) {
        this.root = root;
        this.onShelf = shelf.faults().isEmpty() ? shelf.of(fitworthy.shelf.Kind.FITMENTS) : Map.of();
        this.byKind = onShelf.values().stream()
                .flatMap(fields -> read(fields).stream())
                .filter(part -> part.mass().known())
                .collect(Collectors.groupingBy(Fitment::kind));
        this.onSheet = sheet.fitments().stream().map(Fitment::name).collect(Collectors.toSet());
    }

    /** At most twelve: for each part the lightest two. */
    static List<Lever> of(Node.Mapping root, Sheet sheet, Collection<Finding> findings, Shelf shelf) {
        Set<String> faulty = findings.stream()
                .filter(finding -> finding.judged().card().severity().value().compareTo(Severity.CHANGE) <= 0)
                .map(finding -> finding.judged().subject())
                .collect(Collectors.toCollection(HashSet::new));
        ShelfLevers levers = new ShelfLevers(root, sheet, shelf);
        return sheet.planned().fitments().stream()
                .filter(part -> !part.isDone())
                .flatMap(part -> levers.inPlaceOf(part)
                        .filter(other -> faulty.contains(part.name())
                                || other.mass().value() <= part.mass().value() - LIGHTER)
                        .sorted(Comparator.comparingDouble(other -> other.mass().value()))
                        .limit(MOST_FOR_A_PART)
                        .map(other -> Lever.whole(
                                part.name(),
                                new Change.Swap(
                                        part.name(),
                                        other.name(),
                                        levers.fields(other.name()),
                                        MADE.contains(part.kind())))))
                .limit(MOST)
                .toList();
    }

    /** By planned part, what lies on the shelf that could be fitted in its place; parts without such are not in it. */
    static Map<String, List<String>> names(Node.Mapping root, Sheet sheet, Shelf shelf) {
        ShelfLevers levers = new ShelfLevers(root, sheet, shelf);
        Map<String, List<String>> names = new LinkedHashMap<>();
        sheet.planned().fitments().stream().filter(part -> !part.isDone()).forEach(part -> {
            List<String> others = levers.inPlaceOf(part).map(Fitment::name).toList();
            if (!others.isEmpty()) {
                names.put(part.name(), others);
            }
        });
        return names;
    }

    private Stream<Fitment> inPlaceOf(Fitment part) {
        Node taken = NodePath.of("fitments", part.name()).in(root);
        return FOR_ONE_VEHICLE.contains(part.kind())
                ? Stream.of()
                : byKind.getOrDefault(part.kind(), List.of()).stream()
                        .filter(other -> !onSheet.contains(other.name())
                                && isForTheSame(part, other)
                                && !onShelf.get(other.name()).place().equals(taken.place()));
    }

    /** Of a kind that is for many things: lamps by their use, what has no kind of its own by the first word of its name. */
    private static boolean isForTheSame(Fitment part, Fitment other) {
        return switch (part.kind()) {
            case LAMPS -> ((Lamps) part.details()).use().equals(((Lamps) other.details()).use());
            case OTHER -> firstWord(part.name()).equalsIgnoreCase(firstWord(other.name()));
            default -> true;
        };
    }

    private static String firstWord(String name) {
        return name.split(" ", 2)[0];
    }

    private static Optional<Fitment> read(Node.Mapping fields) {
        List<Fault> faults = new ArrayList<>();
        Fitment part = Binder.bindPartly(Fitment.class, "shelf", new Node.Entry(fields.place(), fields), faults)
                .record();
        return faults.isEmpty() ? Optional.of(part) : Optional.empty();
    }

    private Node.Mapping fields(String name) {
        Node.Mapping taken = onShelf.get(name);
        for (String field : NOT_TAKEN) {
            taken = taken.without(field);
        }
        return taken;
    }
}
