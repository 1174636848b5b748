package fitworthy.figures.mirrors;

import static fitworthy.figures.measure.MeasureKind.number;
import static fitworthy.figures.measure.MeasureKind.rated;
import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.PracticeId;
import fitworthy.figures.plan.Topic;
import fitworthy.quantity.Derived;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails;
import fitworthy.sheet.MirrorDetails.Curve;
import fitworthy.sheet.MirrorDetails.Mirror;
import fitworthy.sheet.Trailer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the mirrors show: the road past a trailer, tray or canopy, and through the rear window. */
public final class MirrorViewMeasures implements Topic {
    public static final MeasureKind PAST_TRAILER = rated(
                    "mirrors.past-trailer",
                    "mm",
                    0,
                    "outer edge of the glass from the centre line",
                    "side of the trailer")
            .byLoading();
    private static final MeasureKind PAST_LOAD = rated(
                    "mirrors.past-load",
                    "mm",
                    0,
                    "outer edge of the glass from the centre line",
                    "what it takes to see past the tray or canopy")
            .byLoading();
    public static final MeasureKind FAR_FIELD =
            number("mirrors.far-field", "m", 2, "width of road seen far behind").byLoading();
    public static final MeasureKind NEAR_FIELD = number("mirrors.near-field", "m", 2, "width of road seen close behind")
            .byLoading();
    private static final MeasureKind REACH_NEEDED = number(
                    "mirrors.reach-needed",
                    "mm",
                    0,
                    "reach of the glass from the centre line that shows the width asked for")
            .byLoading();
    private static final MeasureKind GLASS_NEEDED = number(
                    "mirrors.glass-needed", "mm", 0, "width of such glass that has to be clear of the side")
            .byLoading();
    private static final MeasureKind NEAR_REACH_NEEDED = number(
                    "mirrors.near-reach-needed",
                    "mm",
                    0,
                    "reach of the glass from the centre line that shows the width asked for close behind")
            .byLoading();
    private static final MeasureKind NEAR_GLASS_NEEDED = number(
                    "mirrors.near-glass-needed", "mm", 0, "width of such glass that has to be clear of the side")
            .byLoading();

    private static final MeasureKind REACH_WHOLE = number(
                    "mirrors.reach-whole", "mm", 0, "reach of the glass from the centre line that is enough in all")
            .byLoading();
    private static final MeasureKind GLASS_WHOLE = number(
                    "mirrors.glass-whole", "mm", 0, "width of such glass clear of the side that is enough in all")
            .byLoading();

    /** A width of road that is asked for so far behind. */
    private record Field(
            String name,
            MeasureKind seen,
            MeasureKind reach,
            MeasureKind glass,
            PracticeId width,
            PracticeId distance) {}

    private static final List<Field> FIELDS = List.of(
            new Field(
                    "far",
                    FAR_FIELD,
                    REACH_NEEDED,
                    GLASS_NEEDED,
                    PracticeId.MIRRORS_FAR_WIDTH,
                    PracticeId.MIRRORS_FAR_DISTANCE),
            new Field(
                    "near",
                    NEAR_FIELD,
                    NEAR_REACH_NEEDED,
                    NEAR_GLASS_NEEDED,
                    PracticeId.MIRRORS_NEAR_WIDTH,
                    PracticeId.MIRRORS_NEAR_DISTANCE));

    @Override
    public List<MeasureKind> kinds() {
        return List.of(
                PAST_TRAILER,
                PAST_LOAD,
                FAR_FIELD,
                NEAR_FIELD,
                REACH_NEEDED,
                GLASS_NEEDED,
                NEAR_REACH_NEEDED,
                NEAR_GLASS_NEEDED,
                REACH_WHOLE,
                GLASS_WHOLE);
    }

    @Override
    public void loading(Loading loading, List<Measure> measures) {
        List<BodyDetails.Body> bodies = loading.bodies().stream()
                .map(fitment -> (BodyDetails.Body) fitment.details())
                .toList();
        Optional<Trailer> hiding =
                loading.trailer().filter(trailer -> !trailer.seenOver().is(YesNo.YES));
        for (Side side : Side.both(loading.mirrors())) {
            List<Working.Input> asked = new ArrayList<>();
            pastLoad(loading, bodies, hiding, side, measures).ifPresent(needed -> asked.add(reaching("load", needed)));
            hiding.ifPresentOrElse(
                    trailer -> pastTrailer(loading, trailer, side, asked, measures),
                    () -> pastBody(loading, bodies, side, asked, measures));
            if (!asked.isEmpty()) {
                measures.add(most(REACH_WHOLE, side, asked));
            }
        }
    }

    /** The most of what is known of several figures. */
    private static Measure most(MeasureKind kind, Side side, List<Working.Input> figures) {
        List<Working.Input> known =
                figures.stream().filter(each -> each.figure().known()).toList();
        return known.isEmpty()
                ? Measure.of(kind, side.name(), figures.get(0).figure())
                : Measure.of(kind, side.name(), greatest(known))
                        .worked(
                                (known.size() == 1 ? "most = %s" : "most = max(%s)")
                                        .formatted(known.stream()
                                                .map(Working.Input::name)
                                                .collect(Collectors.joining(", "))),
                                known.toArray(Working.Input[]::new));
    }

    private static Figure greatest(List<Working.Input> figures) {
        return figures.stream().map(Working.Input::figure).reduce(Figure::most).orElseThrow();
    }

    private static Working.Input reaching(String name, Figure reach) {
        return in(name, Derived.of(in -> wholeMillimetres(in[0]), reach), "mm");
    }

    /** @return how far out the glass has to be, where that is asked */
    /**
     * How far out the glass has to be to look straight along the widest tray or canopy, where that is asked: what the law
     * wants seen begins at the widest, so the corner of a narrower trailer need not show. A trailer known to be wider hides
     * more than the tray or canopy does.
     *
     * @param hiding the trailer, where it is not seen over
     */
    private static Optional<Figure> pastLoad(
            Loading loading,
            List<BodyDetails.Body> bodies,
            Optional<Trailer> hiding,
            Side side,
            List<Measure> measures) {
        Standing standing = Standing.of(loading, side);
        // The glass stands out from the cab, so that nobody has to say how far for what is no wider.
        Figure cab = cab(loading);
        Optional<Figure> asked = bodies.stream()
                .map(BodyDetails.Body::width)
                .filter(width -> hiding.filter(trailer -> width.isAtMost(trailer.width()))
                        .isEmpty())
                .map(width -> width.times(0.5))
                .reduce(Figure::most)
                .filter(half -> standing.known() || !half.isAtMost(cab));
        asked.ifPresent(half -> measures.add(Measure.of(PAST_LOAD, side.name(), standing.reach(half), half)
                .worked("needed = width / 2", in("width", half.times(2), "mm"))
                .worked(standing.working())));
        return asked;
    }

    /** Half of the cab's width: the mirrors that the vehicle came with were made for what is no wider. */
    private static Figure cab(Loading loading) {
        return loading.plan().vehicle().size().bodyWidth().times(0.5);
    }

    /** How far the glass reaches past the trailer, and the road beside and behind it. */
    private static void pastTrailer(
            Loading loading, Trailer trailer, Side side, List<Working.Input> asked, List<Measure> measures) {
        Figure widest = loading.widestBehind(trailer);
        if (loading.plannedMirrors().isEmpty() && widest.isAtMost(cab(loading))) {
            return;
        }
        Figure trailerHalf = trailer.width().times(0.5);
        measures.add(Measure.of(PAST_TRAILER, side.name(), side.mirror().reach(), trailerHalf)
                .worked("side = width / 2", in("width", trailer.width(), "mm")));
        asked.add(reaching("trailer", trailerHalf));
        road(loading, side, widest, asked, measures);
    }

    /**
     * The road beside and behind a tray or canopy that is wider than the cab, where no trailer hides it.
     */
    private static void pastBody(
            Loading loading,
            List<BodyDetails.Body> bodies,
            Side side,
            List<Working.Input> asked,
            List<Measure> measures) {
        Figure cab = cab(loading);
        bodies.stream()
                .map(body -> body.width().times(0.5))
                .reduce(Figure::most)
                .filter(widest -> !widest.isAtMost(cab))
                .map(widest -> widest.missingWith(cab, widest))
                .ifPresent(widest -> {
                    Figure needed = FIELDS.stream()
                            .map(field -> reachNeeded(loading.plan(), side, widest, field))
                            .reduce(widest, Figure::most);
                    Figure reach = Standing.of(loading, side).reach(needed);
                    road(loading, side.reaching(reach), widest, asked, measures);
                });
    }

    private static Figure reachNeeded(Plan plan, Side side, Figure widest, Field field) {
        return sighted(
                plan,
                side,
                (line, in) -> wholeMillimetres(line.reachNeeded(in[0], in[1], in[2])),
                widest,
                plan.practice(field.width()),
                plan.practice(field.distance()));
    }

    /**
     * The road beside and behind what is widest. The width of glass is that for where the mirror stands, or for where it
     * has to stand in all if that is farther out.
     *
     * @param widest its side, from the centre line
     * @param asked how far out the glass has to be for something else; what the road asks is added
     */
    private static void road(
            Loading loading, Side side, Figure widest, List<Working.Input> asked, List<Measure> measures) {
        Plan plan = loading.plan();
        Mirror mirror = side.mirror();
        Map<Field, Figure> reaches = new LinkedHashMap<>();
        for (Field field : FIELDS) {
            Figure width = plan.practice(field.width());
            Figure behind = plan.practice(field.distance());
            measures.add(seen(field.seen(), loading, side, widest, behind));
            Figure reach = reachNeeded(plan, side, widest, field);
            measures.add(Measure.of(field.reach(), side.name(), reach)
                    .worked(steps(reach, plan, side, line -> new SightSteps(
                                    line,
                                    widest.value(),
                                    line.reachNeeded(widest.value(), width.value(), behind.value()),
                                    behind.value())
                            .reachNeeded(width.value()))));
            reaches.put(field, reach);
            asked.add(in(field.name(), reach, "mm"));
        }
        Figure out =
                asked.stream().map(Working.Input::figure).filter(Figure::known).reduce(mirror.reach(), Figure::most);
        List<Working.Input> glasses = new ArrayList<>();
        for (Field field : FIELDS) {
            Figure width = plan.practice(field.width());
            Figure behind = plan.practice(field.distance());
            Figure stands = out.most(reaches.get(field));
            Figure glass = sighted(
                    plan,
                    side,
                    (line, in) -> wholeMillimetres(line.glass(line.acrossNeeded(in[0], in[1], in[2]), in[1])),
                    width,
                    stands,
                    behind);
            measures.add(Measure.of(field.glass(), side.name(), glass)
                    .worked(steps(glass, plan, side, line -> new SightSteps(
                                    line, widest.value(), stands.value(), behind.value())
                            .glassNeeded(width.value()))));
            glasses.add(in(field.name(), glass, "mm"));
        }
        measures.add(most(GLASS_WHOLE, side, glasses));
    }

    private static Working steps(Figure result, Plan plan, Side side, Function<SightLine, List<String>> steps) {
        return () -> result.known()
                ? steps.apply(new SightLine(
                        plan.places().eye().x().value(),
                        plan.places().eye().y().value() * side.sign(),
                        side.mirror().x().value(),
                        radius(side.mirror()).value()))
                : List.of();
    }

    /** Upwards, so that the value as printed is enough. */
    private static double wholeMillimetres(double metres) {
        return Math.ceil(metres * 1000 - 1e-6) / 1000;
    }

    /** Road seen beyond a side, by the part of the glass that lies farther out. */
    private static Measure seen(MeasureKind kind, Loading loading, Side side, Figure widest, Figure behind) {
        Mirror mirror = side.mirror();
        Figure seen = sighted(
                loading.plan(),
                side,
                (line, in) -> line.seen(Math.min(line.across(in[3], in[1]), in[1] - in[0]), in[1], in[2]),
                widest,
                mirror.reach(),
                behind,
                mirror.glass());
        return Measure.of(kind, side.name(), seen).worked(steps(seen, loading.plan(), side, line -> new SightSteps(
                        line, widest.value(), mirror.reach().value(), behind.value())
                .seen(mirror.glass().value())));
    }

    /** A formula over a mirror's sight line and further figures. */
    private interface Sighted {
        double at(SightLine line, double[] further);
    }

    private static Figure sighted(Plan plan, Side side, Sighted formula, Figure... further) {
        Figure[] inputs = Stream.concat(
                        Stream.of(
                                plan.places().eye().x(),
                                plan.places().eye().y().times(side.sign()),
                                side.mirror().x(),
                                radius(side.mirror())),
                        Stream.of(further))
                .toArray(Figure[]::new);
        return Derived.of(
                in -> formula.at(new SightLine(in[0], in[1], in[2], in[3]), Arrays.copyOfRange(in, 4, in.length)),
                inputs);
    }

    private static Figure radius(Mirror mirror) {
        if (!mirror.curve().known()) {
            return Figure.missing(mirror.curve().missing());
        }
        return mirror.curve().is(Curve.FLAT) ? Figure.of(Double.POSITIVE_INFINITY, 0) : mirror.radius();
    }
}
