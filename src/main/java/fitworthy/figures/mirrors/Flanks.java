package fitworthy.figures.mirrors;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Loading;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.BodyDetails;
import fitworthy.sheet.Fitment;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What a mirror stands out past: the widest of the vehicle's own body, of the trays and canopies that are on, and of the
 * trailer that is towed.
 *
 * @param widths of each, in m
 */
record Flanks(List<Working.Input> widths) {

    /** With every tray and canopy that is on. */
    static Flanks of(Loading loading) {
        return of(loading, body -> true);
    }

    /** Without the trays and canopies that come off: a law may take them for a load. */
    static Flanks thatStay(Loading loading) {
        return of(loading, body -> !mayComeOff(body));
    }

    private static Flanks of(Loading loading, Predicate<Fitment> counts) {
        List<Working.Input> widths = new ArrayList<>();
        widths.add(in("body", loading.plan().vehicle().size().bodyWidth(), "mm"));
        loading.bodies().stream()
                .filter(counts)
                .map(Flanks::width)
                .reduce(Figure::most)
                .ifPresent(width -> widths.add(in("load", width, "mm")));
        loading.trailer().ifPresent(trailer -> widths.add(in("trailer", trailer.width(), "mm")));
        return new Flanks(widths);
    }

    /** Of one with hold-downs or legs it has to be said; of any other, left out is no. */
    static boolean mayComeOff(Fitment body) {
        return body.removable().is(YesNo.YES)
                || !body.removable().known() && ((BodyDetails.Body) body.details()).tellsHowItComesOff();
    }

    private static Figure width(Fitment body) {
        return ((BodyDetails.Body) body.details()).width();
    }

    /** Whether this tray or canopy is known to be no wider than something else here is known to be. */
    boolean hide(Fitment body) {
        return widths.stream().anyMatch(width -> width(body).isAtMost(width.figure()));
    }

    /**
     * How far a mirror sticks out past the widest, in m. A width that is not known is missing only where those that are
     * known do not keep the mirror within what is allowed.
     *
     * @param edge from the centre line to its outermost point
     * @param most how far it may stick out
     */
    Figure beyond(Figure edge, Figure most) {
        return past(edge, counted(edge, most));
    }

    /** The widths that decide: all, or those that are known where they do. */
    private List<Working.Input> counted(Figure edge, Figure most) {
        List<Working.Input> known =
                widths.stream().filter(width -> width.figure().known()).toList();
        return !known.isEmpty() && past(edge, known).isAtMost(most) ? known : widths;
    }

    private static Figure past(Figure edge, List<Working.Input> widths) {
        return edge.minus(widths.stream()
                .map(Working.Input::figure)
                .reduce(Figure::most)
                .orElseThrow()
                .times(0.5));
    }

    /** The formula of {@link #beyond}. */
    Working working(Figure edge, Figure most) {
        List<Working.Input> counted = counted(edge, most);
        String names = counted.stream().map(Working.Input::name).collect(Collectors.joining(", "));
        List<Working.Input> inputs = new ArrayList<>(List.of(in("edge", edge, "mm")));
        inputs.addAll(counted);
        return new Working.Formula(
                "beyond = edge - " + (counted.size() == 1 ? names : "max(" + names + ")") + " / 2", inputs);
    }
}
