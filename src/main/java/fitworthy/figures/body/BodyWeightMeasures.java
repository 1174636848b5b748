package fitworthy.figures.body;

import static fitworthy.figures.measure.MeasureKind.yesNo;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.figures.plan.Standing;
import fitworthy.figures.plan.Topic;
import fitworthy.figures.plan.Weighed;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.Sheet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whether the sheet counts the mass of trays and canopies and of what comes off for them, and takes out what is in a canopy when it is off. */
final class BodyWeightMeasures implements Topic {
    private static final MeasureKind WEIGHED = yesNo("body.weighed", "whether the sheet has a mass for it");
    private static final MeasureKind REPLACED =
            yesNo("body.replaced", "whether the sheet says what of the vehicle's own body comes off for it");
    private static final MeasureKind LEFT_ABOARD = yesNo(
                    "body.left-aboard", "whether something stays where the canopy stands while it is off")
            .byLoading();

    @Override
    public List<MeasureKind> kinds() {
        return List.of(WEIGHED, REPLACED, LEFT_ABOARD);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Stream.of(Kind.TRAY, Kind.CANOPY)
                .flatMap(kind -> plan.fitments(kind).stream())
                // What was weighed with the vehicle is counted, unless it comes off.
                .filter(body -> !body.isDone() || body.removable().is(YesNo.YES))
                .forEach(body -> measures.add(Measure.of(WEIGHED, body.name(), Weighed.alone(body))));
        List<Fitment> trays = plan.fitments(Kind.TRAY);
        (trays.isEmpty() ? plan.fitments(Kind.CANOPY) : trays)
                .stream().filter(body -> !body.isDone()).forEach(body -> replaced(
                                body, plan.vehicle().tub())
                        .ifPresent(told -> measures.add(Measure.of(REPLACED, body.name(), told))));
    }

    /** Nothing where the vehicle comes without a body of its own there, or that stays on, and none is said to come off. */
    private static Optional<Choice<YesNo>> replaced(Fitment body, Choice<YesNo> tub) {
        if (((Body) body.details()).tubStays().is(YesNo.YES)) {
            return Optional.empty();
        }
        if (body.removes().isPresent()) {
            return Optional.of(Choice.of(YesNo.YES));
        }
        return tub.is(YesNo.NO)
                ? Optional.empty()
                : Optional.of(tub.known() ? Choice.of(YesNo.NO) : Choice.missing(tub.missing()));
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        loading.plan().fitments(Kind.CANOPY).stream()
                .filter(canopy -> !loading.carries(canopy))
                .forEach(canopy -> leftBehind(loading, canopy, measures));
    }

    /** Parts that come off as the canopy does, and cargo, between its two ends along the vehicle and not under or beside it. */
    private static void leftBehind(Loading loading, Fitment canopy, List<Measure> measures) {
        Body body = (Body) canopy.details();
        Figure end = body.front().plus(body.length());
        if (!end.known()) {
            measures.add(Measure.of(
                    LEFT_ABOARD,
                    canopy.name(),
                    Choice.<YesNo>missing(end.missing().get(0))));
            return;
        }
        List<LoadCase> withIt = loading.plan().cases().stream()
                .filter(loadCase -> !loading.plan().off(loadCase).contains(canopy.name()))
                .toList();
        Set<String> comeOff = Stream.concat(
                        loading.plan().sheet().fitments().stream()
                                .filter(part -> part.removable().is(YesNo.YES)
                                        && part.in().isEmpty()
                                        && !(part.details() instanceof Body))
                                .map(Fitment::name),
                        loading.plan().sheet().cargo().stream()
                                .filter(load -> load.in().isEmpty() && isTaken(load, withIt))
                                .map(Sheet.Load::name))
                .collect(Collectors.toSet());
        Map<String, Choice<YesNo>> left = new LinkedHashMap<>();
        loading.masses().stream()
                .filter(mass ->
                        (mass.sort() == Sort.CARGO || mass.sort() == Sort.FITMENT) && comeOff.contains(mass.name()))
                .filter(mass -> !mass.mass().isZero())
                .filter(mass -> !Standing.isClear(loading.plan(), canopy, mass.at()))
                .forEach(mass -> left.put(mass.name(), isBetween(mass.at().x(), body.front(), end)));
        left.values().removeIf(stays -> stays.is(YesNo.NO));
        if (left.isEmpty()) {
            measures.add(Measure.of(LEFT_ABOARD, canopy.name(), Choice.of(YesNo.NO)));
        }
        left.forEach((name, stays) -> measures.add(Measure.of(LEFT_ABOARD, name, stays)));
    }

    /**
     * Whether a load travels in the canopy too: what is taken without it alone rides where it stood.
     *
     * @param withIt the loadings in which the canopy is on; where there are none nothing says so
     */
    private static boolean isTaken(Sheet.Load load, List<LoadCase> withIt) {
        return withIt.isEmpty() || withIt.stream().anyMatch(loadCase -> loadCase.carries(load.name()));
    }

    private static Choice<YesNo> isBetween(Figure x, Figure front, Figure end) {
        return x.known()
                ? Choice.yesNo(x.isAtLeast(front) && x.isAtMost(end))
                : Choice.missing(x.missing().get(0));
    }
}
