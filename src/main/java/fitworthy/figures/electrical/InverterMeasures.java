package fitworthy.figures.electrical;

import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.measure.Working.Input;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.ElectricalDetails.Inverter;
import fitworthy.sheet.Fitment;
import java.util.List;
import java.util.function.Function;

/**
 * What the loads behind inverters draw, and what these give by their data sheets. Where several may feed a load each is held
 * against it; which one feeds it is asked only where one of them could not.
 */
final class InverterMeasures implements Topic {
    private static final MeasureKind LARGEST = rated(
            "electrical.inverter-largest",
            "W",
            0,
            "largest load behind the inverter",
            "power that it gives without stopping");
    private static final MeasureKind TOGETHER = rated(
            "electrical.inverter-together",
            "W",
            0,
            "loads behind the inverter, all switched on",
            "power that it gives without stopping");
    private static final MeasureKind STARTING = rated(
            "electrical.inverter-starting",
            "W",
            0,
            "what the hardest to start of the loads behind the inverter draws for a moment",
            "power that it gives for a moment");
    private static final MeasureKind STARTING_BESIDE = rated(
            "electrical.inverter-starting-beside",
            "W",
            0,
            "what a load behind the inverter draws as it starts, with the others running",
            "power that it gives for a moment");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(LARGEST, TOGETHER, STARTING, STARTING_BESIDE);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        Inverters inverters = new Inverters(plan);
        for (Fitment fitment : plan.fitments(Fitment.Kind.INVERTER)) {
            Inverter inverter = (Inverter) fitment.details();
            String name = fitment.name();
            List<Circuit> loads = inverters.loads(fitment);
            List<Circuit> starting =
                    loads.stream().filter(load -> load.starting().known()).toList();
            if (!loads.isEmpty()) {
                measures.add(held(inverters, LARGEST, name, loads, Behind::largest, inverter.continuous()));
                measures.add(held(inverters, TOGETHER, name, loads, Behind::together, inverter.continuous()));
            }
            if (!starting.isEmpty()) {
                measures.add(held(inverters, STARTING, name, starting, Behind::start, inverter.surge()));
            }
            if (!starting.isEmpty() && loads.size() > 1) {
                measures.add(held(inverters, STARTING_BESIDE, name, loads, Behind::startBeside, inverter.surge()));
            }
        }
        inverters
                .unserved()
                .forEach((load, inverter) -> measures.add(Measure.of(
                        LARGEST, "inverter of " + load.name(), Inverters.power(load), Figure.missing(inverter))));
    }

    /** What an inverter is held against: all that it may feed where it bears that, else what it feeds for sure. */
    private static Measure held(
            Inverters inverters,
            MeasureKind kind,
            String subject,
            List<Circuit> loads,
            Function<Behind, Drawn> drawn,
            Figure limit) {
        List<Circuit> open =
                loads.stream().filter(load -> inverters.feeder(load).isEmpty()).toList();
        Drawn all = drawn.apply(new Behind(loads));
        if (open.isEmpty() || all.figure().isAtMost(limit)) {
            return Measure.of(kind, subject, all.figure(), limit).worked(all.workings());
        }
        Drawn sure = drawn.apply(
                new Behind(loads.stream().filter(load -> !open.contains(load)).toList()));
        return Measure.of(kind, subject, Figure.missing(Inverters.untold(open.get(0))), limit)
                .worked(sure.workings())
                .atLeast(sure.figure());
    }

    /** A power in W and how it came about. */
    private record Drawn(Figure figure, Working... workings) {}

    /** Loads behind an inverter. */
    private record Behind(List<Circuit> loads) {

        Drawn largest() {
            return new Drawn(most(loads, Inverters::power), new Working.Formula("the largest of them", powers()));
        }

        Drawn together() {
            return new Drawn(sum(), new Working.Sum("together", powers()));
        }

        Drawn start() {
            return new Drawn(most(starting(), load -> load.starting().times(load.voltage())));
        }

        Drawn startBeside() {
            Figure more = most(
                    starting(), load -> load.starting().minus(load.current()).times(load.voltage()));
            return new Drawn(
                    sum().plus(more),
                    new Working.Formula(
                            "drawn = together + more", List.of(in("together", sum(), "W"), in("more", more, "W"))),
                    new Working.Sum("together", powers()));
        }

        private List<Input> powers() {
            return loads.stream()
                    .map(load -> in(load.name(), Inverters.power(load), "W"))
                    .toList();
        }

        private Figure sum() {
            return Working.total(powers());
        }

        private List<Circuit> starting() {
            return loads.stream().filter(load -> load.starting().known()).toList();
        }

        private static Figure most(List<Circuit> loads, Function<Circuit, Figure> figure) {
            return loads.stream().map(figure).reduce(Figure.ZERO, Figure::most);
        }
    }
}
