package fitworthy.figures.electrical;

import static fitworthy.figures.measure.MeasureKind.lookedUp;
import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.MeasureKind.yesNo;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.ElectricalDetails;
import fitworthy.sheet.ElectricalDetails.Charger;
import fitworthy.sheet.Fitment;
import java.util.List;
import java.util.stream.Stream;

/** What cables carry, and fuses, circuit by circuit, and the panel that switches them. */
final class CircuitMeasures implements Topic {
    private static final MeasureKind CABLE = rated(
            "electrical.cable", "mm2", 1, "section of the cable", "least section in the table that carries the load");
    private static final MeasureKind CABLE_LOAD = number("electrical.cable-load", "A", 1, "load on the cable");
    private static final MeasureKind CABLE_MAKER =
            rated("electrical.cable-maker", "A", 1, "load on the cable", "rating by the cable's maker");
    private static final MeasureKind CABLE_CARRIES =
            number("electrical.cable-carries", "A", 0, "what the cable carries");
    private static final MeasureKind OUTDONE = yesNo(
            "electrical.cable-outdone",
            "whether the load is surely more than the cable carries, so that no fuse suits both");
    private static final MeasureKind FUSED = yesNo("electrical.fused", "whether the circuit has a fuse");
    private static final MeasureKind FAR_FUSED =
            yesNo("electrical.far-fused", "whether the cable has a fuse at the other battery's end too");
    private static final MeasureKind FUSE_LOAD = rated("electrical.fuse-load", "A", 1, "load", "rating of the fuse");
    private static final MeasureKind FUSE_SHARE =
            number("electrical.fuse-share", "%", 0, "rating of the fuse, as a share of what the cable carries");
    private static final MeasureKind FUSE_SHARE_FAR =
            number("electrical.fuse-share-far", "%", 0, "rating of the fuse, as a share of what the cable carries");
    private static final MeasureKind CABLE_AND_FUSE = lookedUp(
            ElectricalMeasures.CABLE_AND_FUSE,
            "the cable and the fuse with which all checks of the circuit are in order");
    private static final MeasureKind FUSE_WAY =
            number("electrical.fuse-way", "mm", 0, "bare cable between the battery and the fuse");
    private static final MeasureKind FUSE_WAY_ENCLOSED =
            number("electrical.fuse-way-enclosed", "mm", 0, "enclosed cable between the battery and the fuse");
    private static final MeasureKind EARTH =
            yesNo("electrical.earth", "whether it returns by a cable of its own or a cleaned chassis stud");
    private static final MeasureKind PANEL_USED =
            number("electrical.panel-used", "", 0, "circuits switched by the panel");
    private static final MeasureKind PANEL_WAYS = number("electrical.panel-ways", "", 0, "circuits the panel has");

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                CABLE,
                CABLE_LOAD,
                CABLE_MAKER,
                CABLE_CARRIES,
                OUTDONE,
                FUSED,
                FAR_FUSED,
                FUSE_LOAD,
                FUSE_SHARE,
                FUSE_SHARE_FAR,
                CABLE_AND_FUSE,
                FUSE_WAY,
                FUSE_WAY_ENCLOSED,
                EARTH,
                PANEL_USED,
                PANEL_WAYS);
    }

    @Override
    public void plan(Plan plan, List<Measure> measures) {
        for (Circuit circuit : plan.sheet().circuits()) {
            if (!circuit.isMains()) {
                onBattery(plan, circuit, measures);
            }
            if (!circuit.shortTime().is(YesNo.YES) && !circuit.isPluggedIn()) {
                lasting(plan, circuit, measures);
            }
            if (!circuit.isPluggedIn()) {
                cableAndFuse(plan, circuit, measures);
            }
        }
        EnergyFlow.unfed(plan).forEach((charger, feed) -> unfed(plan, FAR_FUSED, charger, feed, measures));
        new Inverters(plan)
                .unfed()
                .forEach(inverter -> unfed(
                        plan,
                        FUSED,
                        inverter,
                        new Missing(
                                "circuits",
                                "the circuit that feeds " + inverter.name() + ", with that part as its own",
                                "the plan"),
                        measures));
        panel(plan, measures);
    }

    /** Of a part whose circuit is not on the sheet neither its fuse is known nor what would suit. */
    private static void unfed(Plan plan, MeasureKind fused, Fitment part, Missing feed, List<Measure> measures) {
        measures.add(Measure.of(fused, part.name(), "", List.of(feed)));
        if (plan.sheet().circuits().stream().noneMatch(circuit -> circuit.name().equals(part.name()))) {
            measures.add(Measure.of(CABLE_AND_FUSE, part.name(), "", List.of(feed)));
        }
    }

    private static void cableAndFuse(Plan plan, Circuit circuit, List<Measure> measures) {
        CableAndFuse suited = suited(plan, circuit);
        Stream.of(circuit.name(), circuit.farEnd())
                .filter(subject -> subject.equals(circuit.name()) || asksFarFuse(plan, circuit))
                .forEach(subject -> measures.add(Measure.of(CABLE_AND_FUSE, subject, suited.words(), List.of())
                        .worked(suited.working())));
    }

    /** What suits a circuit. */
    static CableAndFuse suited(Plan plan, Circuit circuit) {
        return new CableAndFuse(plan, circuit, betweenBatteries(plan, circuit) || asksFarFuse(plan, circuit));
    }

    /** What is asked of a cable that a battery feeds; one behind an inverter has neither its fuse nor the chassis there. */
    private static void onBattery(Plan plan, Circuit circuit, List<Measure> measures) {
        measures.add(Measure.of(FUSED, circuit.name(), circuit.fuse().isThere()));
        way(circuit.name(), circuit.fuse(), measures);
        farEnd(plan, circuit, measures);
        measures.add(Measure.of(EARTH, circuit.name(), circuit.earth()));
    }

    /** A cable between two batteries is fed from both ends, unless it ends at a charger with a cable of its own. */
    private static void farEnd(Plan plan, Circuit circuit, List<Measure> measures) {
        if (betweenBatteries(plan, circuit)) {
            measures.add(Measure.of(FAR_FUSED, circuit.name(), circuit.farFuse().isThere()));
        }
        if (asksFarFuse(plan, circuit)) {
            way(circuit.farEnd(), circuit.farFuse(), measures);
        }
    }

    private static boolean betweenBatteries(Plan plan, Circuit circuit) {
        boolean ownCable = plan.sheet().circuits().stream()
                .anyMatch(other -> other.part().equals(circuit.part())
                        && !other.isOnShore()
                        && other.battery().known()
                        && circuit.battery().known()
                        && !other.battery().is(circuit.battery().value()));
        return !ownCable
                && PartCurrents.isStrongest(plan, circuit)
                && plan.fitments(Fitment.Kind.CHARGER).stream()
                        .anyMatch(charger -> charger.name().equals(circuit.part())
                                && ((Charger) charger.details()).fromAlternator());
    }

    /** Where there is a fuse at the far end, or may be. */
    private static boolean asksFarFuse(Plan plan, Circuit circuit) {
        Circuit.Fuse fuse = circuit.farFuse();
        return fuse.rating().known()
                ? fuse.rating().value() > 0
                : fuse.distance().known() || betweenBatteries(plan, circuit);
    }

    private static void way(String subject, Circuit.Fuse fuse, List<Measure> measures) {
        if (fuse.rating().value() > 0 || !fuse.rating().known()) {
            measures.add(
                    Measure.of(fuse.enclosed().is(YesNo.YES) ? FUSE_WAY_ENCLOSED : FUSE_WAY, subject, fuse.distance()));
        }
    }

    /** What warms a cable only if it goes on for longer than a winch pull. */
    private static void lasting(Plan plan, Circuit circuit, List<Measure> measures) {
        Circuit.Cable cable = circuit.cable();
        Feeds feeds = new Feeds(plan);
        Ampacity ampacity = new Ampacity(plan.tables(), cable);
        Figure fuse = circuit.fuse().rating();
        boolean guarded = fuse.value() > 0 && fuse.isAtMost(ampacity.sure());
        Figure current = passed(feeds.carried(circuit), guarded, fuse);
        Figure known = passed(feeds.least(circuit), guarded, fuse);
        Working working = guarded && feeds.carried(circuit).isAbove(fuse)
                ? () -> List.of("its fuse lets no more pass for long than its "
                        + in("", fuse, "A").shown())
                : feeds.working(circuit);
        Figure sure = ampacity.carries().times(plan.practice(PracticeId.ELECTRICAL_CABLE_SHARE));
        // No maker rates a cable for less than this share of the table: below that his rating is not asked.
        if (cable.rating().known() || !current.isAtMost(sure)) {
            Figure rated = ampacity.rated(current);
            measures.add(Measure.of(CABLE_MAKER, circuit.name(), current, rated)
                    .worked(working, ampacity.heated("limit", rated))
                    .atLeast(known));
        }
        if (!cable.rating().known()) {
            Figure least = ampacity.leastFor(known);
            boolean thin = cable.section().isBelow(least);
            measures.add(Measure.of(CABLE_LOAD, circuit.name(), current.or(known))
                    .worked(working)
                    .asLeast(!current.known() && known.known()));
            measures.add(Measure.of(
                            CABLE,
                            circuit.name(),
                            cable.section(),
                            current.known() || !thin ? ampacity.leastFor(current) : least)
                    .worked(
                            "from the table of cables for this insulation, the least that carries current / warmth",
                            ampacity.inputs(in("current", current, "A")))
                    .worked(working));
        }
        if (fuse.value() > 0 || !fuse.known()) {
            guarded(plan, circuit.name(), fuse, circuit, measures);
        }
        if (asksFarFuse(plan, circuit)) {
            guarded(plan, circuit.farEnd(), circuit.farFuse().rating(), circuit, measures);
        }
    }

    /** What of a current a cable has to bear: where its fuse is no larger than it carries, no more than that. */
    private static Figure passed(Figure current, boolean guarded, Figure fuse) {
        return guarded ? current.least(fuse) : current;
    }

    private static void guarded(Plan plan, String subject, Figure fuse, Circuit circuit, List<Measure> measures) {
        Circuit.Cable cable = circuit.cable();
        Ampacity ampacity = new Ampacity(plan.tables(), cable);
        boolean stated = cable.rating().known();
        Feeds feeds = new Feeds(plan);
        measures.add(Measure.of(FUSE_LOAD, subject, feeds.carried(circuit), fuse)
                .worked(feeds.working(circuit))
                .atLeast(feeds.least(circuit)));
        for (MeasureKind kind : List.of(FUSE_SHARE, FUSE_SHARE_FAR)) {
            Figure most = plan.practice(
                    kind == FUSE_SHARE ? PracticeId.ELECTRICAL_FUSE_SHARE_MOST : PracticeId.ELECTRICAL_FUSE_SHARE_STOP);
            Figure carries = stated ? ampacity.rated(fuse.dividedBy(most)) : ampacity.carries();
            measures.add(Measure.of(kind, subject, stated ? fuse.dividedBy(carries) : ampacity.share(fuse, most))
                    .worked("share = fuse / carries", in("fuse", fuse, "A"), in("carries", carries, "A"))
                    .worked(carries(ampacity, cable, carries)));
        }
        measures.add(Measure.most(CABLE_CARRIES, subject, ampacity.sure())
                .worked(carries(ampacity, cable, ampacity.sure())));
        Figure sure = feeds.least(circuit);
        measures.add(Measure.of(
                OUTDONE,
                subject,
                ampacity.sure().known()
                        ? Choice.yesNo(ampacity.isOutdoneBy(sure))
                        : Choice.missing(ampacity.sure().missing().get(0))));
    }

    /** How what a cable carries came about. */
    private static Working carries(Ampacity ampacity, Circuit.Cable cable, Figure carries) {
        return cable.rating().known()
                ? ampacity.heated("carries", carries)
                : new Working.Formula(
                        "from the table of cables for this insulation, times warmth",
                        List.of(ampacity.inputs(in("section", cable.section(), "mm2"))));
    }

    private static void panel(Plan plan, List<Measure> measures) {
        List<Working.Input> panels = plan.fitments(Fitment.Kind.SWITCH_PANEL).stream()
                .map(panel -> in(panel.name(), ((ElectricalDetails.SwitchPanel) panel.details()).ways(), ""))
                .toList();
        panels.stream().map(Working.Input::figure).reduce(Figure::plus).ifPresent(ways -> {
            List<Working.Input> used = plan.sheet().circuits().stream()
                    .filter(circuit -> circuit.switched().is(YesNo.YES))
                    .map(circuit -> in(circuit.name(), Figure.of(1, 0), ""))
                    .toList();
            measures.add(Measure.of(PANEL_USED, "switch panel", used(plan, used.size(), ways))
                    .worked(new Working.Sum("used", used)));
            measures.add(Measure.of(PANEL_WAYS, "switch panel", ways).worked(new Working.Sum("ways", panels)));
        });
    }

    /** Circuits switched; missing where those of which nobody says so decide whether the ways are enough. */
    private static Figure used(Plan plan, int switched, Figure ways) {
        List<Missing> open = plan.sheet().circuits().stream()
                .map(Circuit::switched)
                .filter(answer -> !answer.known())
                .map(Choice::missing)
                .toList();
        Figure sure = Figure.of(switched, 0);
        boolean decides =
                sure.isAtMost(ways) && Figure.of(switched + open.size()).isAbove(ways);
        return decides ? Figure.missing(open) : sure;
    }
}
