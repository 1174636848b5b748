package fitworthy.figures.across;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Places;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Standing;
import fitworthy.quantity.Choice;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.Point;
import fitworthy.sheet.Sheet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is left without the part that it stands in or on: aboard where that part is off, as far as the places or what is
 * usual tell and nobody says what it stands in, and planned where that part is not taken.
 */
final class Carriers {

    private static final MeasureKind STANDS_IN = MeasureKind.yesNo(
                    "across.left-in-air", "whether it stays aboard at a place in what is off")
            .byLoading();
    private static final MeasureKind NOWHERE =
            MeasureKind.yesNo("across.left-nowhere", "whether it stands in or on a part of a choice that is not taken");

    static final List<MeasureKind> KINDS = List.of(STANDS_IN, NOWHERE);

    private Carriers() {}

    static void plan(Plan plan, List<Measure> measures) {
        Sheet sheet = plan.sheet();
        Set<String> nowhere = new TreeSet<>(plan.leftNowhere());
        Map<String, Choice<YesNo>> usual =
                UsualCarriers.without(sheet.fitments(), sheet.tanks(), sheet.cargo(), plan.notTaken());
        usual.forEach((name, answer) -> measures.add(Measure.of(NOWHERE, name, answer)));
        nowhere.removeAll(usual.keySet());
        nowhere.forEach(name -> measures.add(Measure.of(NOWHERE, name, Choice.of(YesNo.YES))));
        if (nowhere.isEmpty() && usual.isEmpty() && !sheet.options().isEmpty()) {
            measures.add(Measure.of(NOWHERE, "parts planned", Choice.of(YesNo.NO)));
        }
    }

    static void loading(Loading loading, List<Measure> measures) {
        Places places = loading.plan().places();
        Map<Boolean, List<Fitment>> parts =
                loading.plan().sheet().fitments().stream().collect(Collectors.partitioningBy(loading::carries));
        List<Fitment> off = parts.get(false).stream()
                .filter(part -> part.kind() == Kind.CANOPY || places.space(part).isPresent())
                .toList();
        Map<String, Choice<YesNo>> without = UsualCarriers.without(
                parts.get(true),
                loading.plan().sheet().tanks().stream().filter(loading::carries).toList(),
                loading.plan().sheet().cargo().stream().filter(loading::carries).toList(),
                parts.get(false));
        if (off.isEmpty() && without.isEmpty()) {
            return;
        }
        Map<String, Point> aboard = new TreeMap<>();
        parts.get(true).stream()
                .filter(part -> part.in().isEmpty() && part.kind() != Kind.CANOPY && part.kind() != Kind.TRAY)
                .forEach(part -> places.of(part).ifPresent(at -> aboard.put(part.name(), at)));
        loading.plan().sheet().tanks().stream()
                .filter(tank -> loading.carries(tank) && tank.in().isEmpty())
                .forEach(tank -> aboard.put(tank.name(), places.of(tank)));
        Map<String, Choice<YesNo>> held = new TreeMap<>();
        aboard.forEach((name, at) -> held.put(
                name,
                Choice.any(off.stream().map(carrier -> Standing.holds(loading.plan(), carrier, at)))
                        .orElse(Choice.of(YesNo.NO))));
        without.forEach((name, answer) -> held.merge(
                name, answer, (one, other) -> Choice.any(Stream.of(other, one)).orElseThrow()));
        List<Measure> left = held.entrySet().stream()
                .filter(part -> part.getValue().is(YesNo.YES))
                .map(part -> Measure.of(STANDS_IN, part.getKey(), part.getValue()))
                .toList();
        measures.addAll(left);
        Choice<YesNo> others = Choice.any(held.values().stream().filter(answer -> !answer.is(YesNo.YES)))
                .orElse(Choice.of(YesNo.NO));
        if (left.isEmpty() || !others.known()) {
            measures.add(Measure.of(STANDS_IN, "parts aboard", others));
        }
    }
}
