package fitworthy.search;

import fitworthy.figures.plan.CanopyTop;
import fitworthy.figures.plan.OnRoof;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Contents;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.FrontDetails.LampPlace;
import fitworthy.sheet.FrontDetails.Lamps;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SuspensionDetails.Springs;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What goes with a part that is left out: what stands in or on it as the sheet says, what by its kind needs it, such as a
 * canopy its tray, and what comes off with a canopy in every loading without it. Own rules of thumb: no change is offered
 * that leaves a part hanging in the air.
 */
final class Resting {

    private final Contents contents;
    /** By the kind that they need, the parts that need it. */
    private final Map<Kind, Set<String>> needing = new EnumMap<>(Kind.class);
    /** By kind, the parts that others may need. */
    private final Map<Kind, Set<String>> needed = new EnumMap<>(Kind.class);
    /** By canopy, what is off wherever it is. */
    private final Map<String, Set<String>> offWith = new HashMap<>();

    /** By the only rack on the roof or on a canopy, the parts that stand on it though no {@code in} says so. */
    private final Map<String, Set<String>> onRack = new HashMap<>();
    /** The same of cargo. */
    private final Map<String, Set<String>> cargoOnRack = new HashMap<>();

    /** By planned springs, what goes with them, the first of them at the head. */
    private final Map<String, List<String>> springs;

    /** @param planned the sheet with only the chosen parts in it */
    Resting(Sheet planned) {
        springs = springs(planned);
        contents = new Contents(planned.fitments(), planned.tanks());
        onlyRack(planned).ifPresent(rack -> {
            if (nothingSaysSo(planned, rack)) {
                onRack.put(
                        rack,
                        names(planned.fitments().stream()
                                .filter(part -> isOnRoof(part)
                                        && !part.isDone()
                                        && part.in().isEmpty())
                                .map(Fitment::name)));
            }
            cargoOnRack.put(
                    rack,
                    names(planned.cargo().stream()
                            .filter(load -> isOnRoof(load) && load.in().isEmpty())
                            .map(Sheet.Load::name)));
        });
        onCanopies(planned);
        Set<String> mayGo = new LinkedHashSet<>();
        for (Fitment part : planned.fitments()) {
            Kind kind = part.kind();
            needs(part).ifPresent(under -> needing.computeIfAbsent(under, none -> new LinkedHashSet<>())
                    .add(part.name()));
            needed.computeIfAbsent(kind, none -> new LinkedHashSet<>()).add(part.name());
            if (kind != Kind.TRAY) {
                mayGo.add(part.name());
            }
        }
        planned.tanks().forEach(tank -> mayGo.add(tank.name()));
        needed.getOrDefault(Kind.CANOPY, Set.of()).forEach(canopy -> {
            Set<String> with = offWith(canopy, planned.cases());
            with.retainAll(mayGo);
            offWith.put(canopy, with);
        });
    }

    /** The kind that a part needs under or before it where the plan has one. */
    private static Optional<Kind> needs(Fitment part) {
        return Optional.ofNullable(
                switch (part.kind()) {
                    case CANOPY -> Kind.TRAY;
                    case TRAY -> Kind.CHASSIS_EXTENSION;
                    case WINCH -> Kind.BAR;
                    case LAMPS -> isOnBar((Lamps) part.details()) ? Kind.BAR : null;
                    default -> null;
                });
    }

    private static boolean isOnBar(Lamps lamps) {
        return lamps.place().is(LampPlace.BEHIND_BAR)
                || lamps.place().is(LampPlace.AHEAD_OF_BAR)
                || lamps.place().is(LampPlace.ON_TOP_OF_BAR);
    }

    private static Set<String> offWith(String canopy, List<LoadCase> cases) {
        Set<String> with = new LinkedHashSet<>();
        boolean first = true;
        for (LoadCase loadCase : cases) {
            if (loadCase.off().contains(canopy)) {
                if (first) {
                    with.addAll(loadCase.off());
                } else {
                    with.retainAll(loadCase.off());
                }
                first = false;
            }
        }
        return with;
    }

    /** The single rack, on which stand the cargo on the roof and, where nothing says so, the parts, as {@code RackLoad} counts them. */
    private static Optional<String> onlyRack(Sheet planned) {
        List<String> racks = planned.fitments().stream()
                .filter(part -> part.kind() == Kind.ROOF_RACK && !part.roof().is(YesNo.NO))
                .map(Fitment::name)
                .toList();
        return racks.size() == 1 ? Optional.of(racks.get(0)) : Optional.empty();
    }

    /** By the only rack of each canopy, what by its place stands on top of that. */
    private void onCanopies(Sheet planned) {
        Set<String> cargo = names(planned.cargo().stream().map(Sheet.Load::name));
        List<Fitment> racks = planned.fitments().stream()
                .filter(part -> part.kind() == Kind.ROOF_RACK)
                .toList();
        for (Fitment rack : racks) {
            CanopyTop.under(planned, rack).filter(top -> top.isOnly(racks)).ifPresent(top -> {
                Set<String> up = names(top.standing().entrySet().stream()
                        .filter(standing -> standing.getValue().is(YesNo.YES))
                        .map(Map.Entry::getKey));
                cargoOnRack.put(rack.name(), names(up.stream().filter(cargo::contains)));
                boolean nothingSaysSo = contents.with(List.of(rack.name())).size() == 1
                        && planned.cargo().stream().noneMatch(load -> load.in().equals(rack.name()));
                if (nothingSaysSo) {
                    onRack.put(rack.name(), names(up.stream().filter(name -> !cargo.contains(name))));
                }
            });
        }
    }

    private boolean nothingSaysSo(Sheet planned, String rack) {
        Set<String> told = contents.with(List.of(rack));
        return planned.fitments().stream().noneMatch(part -> isOnRoof(part) && told.contains(part.name()))
                && planned.cargo().stream().noneMatch(load -> isOnRoof(load) && told.contains(load.in()));
    }

    private static boolean isOnRoof(Fitment part) {
        return part.kind() != Kind.ROOF_RACK && OnRoof.of(part).is(YesNo.YES);
    }

    private static boolean isOnRoof(Sheet.Load load) {
        return OnRoof.of(load).is(YesNo.YES);
    }

    private static Set<String> names(Stream<String> names) {
        return names.collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /**
     * By planned springs what goes with them: a rating kit, which stands on them, and where both ends are raised the springs of
     * both, since without one of them the vehicle stands up at the other end.
     */
    private static Map<String, List<String>> springs(Sheet planned) {
        List<String> kits = planned.fitments().stream()
                .filter(part -> part.kind() == Kind.RATING_UPGRADE && !part.isDone())
                .map(Fitment::name)
                .toList();
        Map<String, Springs> springs = new LinkedHashMap<>();
        planned.fitments().stream()
                .filter(part -> !part.isDone() && part.details() instanceof Springs)
                .forEach(part -> springs.put(part.name(), (Springs) part.details()));
        List<String> raising = springs.keySet().stream()
                .filter(name -> !springs.get(name).lift().isZero())
                .toList();
        boolean bothEnds =
                raising.stream().map(name -> springs.get(name).end()).distinct().count() > 1;
        Map<String, List<String>> together = new HashMap<>();
        springs.keySet()
                .forEach(name -> together.put(
                        name,
                        Stream.concat(
                                        bothEnds && raising.contains(name) ? raising.stream() : Stream.of(name),
                                        kits.stream())
                                .toList()));
        return together;
    }

    /** Whether a part is the one by whose name all that goes with it is left out. */
    boolean isFirst(String part) {
        return springs.getOrDefault(part, List.of(part)).get(0).equals(part);
    }

    /** Which of some cargo stands in or on these parts. */
    List<String> cargo(List<Sheet.Load> some, Set<String> parts) {
        return some.stream()
                .filter(load -> parts.contains(load.in())
                        || cargoOnRack.entrySet().stream()
                                .anyMatch(rack -> parts.contains(rack.getKey())
                                        && rack.getValue().contains(load.name())))
                .map(Sheet.Load::name)
                .toList();
    }

    /** These parts with all that goes with them. */
    Set<String> with(Collection<String> parts) {
        Set<String> gone = contents.with(parts);
        int before;
        do {
            before = gone.size();
            offWith.forEach((canopy, others) -> {
                if (gone.contains(canopy)) {
                    gone.addAll(others);
                }
            });
            springs.forEach((set, others) -> {
                if (gone.contains(set)) {
                    gone.addAll(others);
                }
            });
            needing.forEach((kind, others) -> {
                if (isGone(kind, gone)) {
                    gone.addAll(others);
                }
            });
            onRack.forEach((rack, others) -> {
                if (gone.contains(rack)) {
                    gone.addAll(others);
                }
            });
            gone.addAll(contents.with(gone));
        } while (gone.size() > before);
        return gone;
    }

    private boolean isGone(Kind kind, Set<String> gone) {
        return needed.containsKey(kind) && gone.containsAll(needed.get(kind));
    }

    /** Whether a changed plan has a part that stood on another kind of part, and none of that kind any more. */
    boolean leavesHanging(Sheet changed) {
        Resting left = new Resting(changed);
        return needed.keySet().stream()
                .anyMatch(kind -> !left.needed.containsKey(kind) && left.needing.containsKey(kind));
    }
}
