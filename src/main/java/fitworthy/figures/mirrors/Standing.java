package fitworthy.figures.mirrors;

import static fitworthy.figures.measure.Working.in;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.PracticeId;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.MirrorDetails.Mirror;
import fitworthy.sheet.MirrorDetails.Stow;
import java.util.List;
import java.util.Optional;

/**
 * How far out a mirror's glass is in a loading. Without a trailer one that retracts is drawn in, unless it may stay out as
 * far as it stands out then. Where the sheet does not say what becomes of them, planned mirrors are taken to retract unless
 * it decides that they may come off, and those the vehicle came with where they have an edge when retracted.
 *
 * @param retracts whether it comes in without the trailer that is not there
 * @param staysOut whether it may stay out all the same; yes where it does not retract
 * @param ifOff what stands there if it comes off, where nobody says whether it does
 */
record Standing(Mirror mirror, boolean retracts, Choice<YesNo> staysOut, Optional<IfOff> ifOff) {

    /** The mirror that the vehicle came with. @param stow what nobody says */
    private record IfOff(Mirror made, Missing stow) {}

    static Standing of(Loading loading, Side side) {
        Mirror mirror = side.mirror();
        Choice<Stow> stow = loading.mirrors().stow();
        boolean retracts = !loading.towing()
                && (stow.known()
                        ? stow.is(Stow.RETRACTS)
                        : loading.plannedMirrors().isPresent()
                                || mirror.edgeStowed().known());
        return new Standing(
                mirror,
                retracts,
                retracts ? mayStayOut(loading, mirror) : Choice.of(YesNo.YES),
                Optional.of(stow).filter(said -> retracts && !said.known()).flatMap(unsaid -> loading.plannedMirrors()
                        .map(planned -> new IfOff(side.made(loading.plan()), unsaid.missing()))));
    }

    private static Choice<YesNo> mayStayOut(Loading loading, Mirror mirror) {
        Figure most = loading.plan().practice(PracticeId.MIRRORS_BEYOND_VEHICLE_MOST);
        Figure over = Flanks.of(loading).beyond(mirror.edge(), most).minus(most);
        return over.known()
                ? Choice.yesNo(over.isAtMost(Figure.ZERO))
                : Choice.missing(over.missing().get(0));
    }

    /**
     * From the centre line, m. Where nobody knows whether it may stay out it is taken as drawn in, and missing only where
     * that decides; so is what stands there if it comes off.
     *
     * @param needed how far out it has to be
     */
    Figure reach(Figure needed) {
        Figure reach = ifOn(needed);
        return ifOff.filter(
                        off -> reach.isAtLeast(needed) && !off.made().reach().isAtLeast(needed))
                .map(off -> Figure.missing(off.stow()))
                .orElse(reach);
    }

    private Figure ifOn(Figure needed) {
        return !staysOut.known() && !taken().isAtLeast(needed) && mirror.reach().isAtLeast(needed)
                ? Figure.missing(staysOut.missing())
                : taken();
    }

    /** What of it can be said whatever it may: whether its reach is known as far as it may have to be drawn in. */
    boolean known() {
        return (retracts ? drawnIn() : mirror.reach()).known();
    }

    /** Whether it comes in without the trailer, but may stay out and so is taken to. */
    boolean leftOut() {
        return retracts && staysOut.is(YesNo.YES);
    }

    private Figure taken() {
        return staysOut.is(YesNo.YES) ? mirror.reach() : drawnIn();
    }

    /** The glass comes in by as much as the housing does. */
    private Figure drawnIn() {
        return mirror.reach().minus(mirror.edge().minus(mirror.edgeStowed()));
    }

    Working[] working() {
        return staysOut.is(YesNo.YES)
                ? new Working[0]
                : new Working[] {
                    new Working.Formula(
                            "drawn in = reach - (edge - stowed)",
                            List.of(
                                    in("reach", mirror.reach(), "mm"),
                                    in("edge", mirror.edge(), "mm"),
                                    in("stowed", mirror.edgeStowed(), "mm")))
                };
    }
}
