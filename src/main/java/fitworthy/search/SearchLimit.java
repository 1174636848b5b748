package fitworthy.search;

import java.util.function.BooleanSupplier;

/** How long a search may go on, and whether that was enough to try everything. By any thread. */
final class SearchLimit {

    private final BooleanSupplier stop;
    private volatile boolean cut;

    /** @param stop asked again and again whether to give up */
    SearchLimit(BooleanSupplier stop) {
        this.stop = stop;
    }

    /** Whether to give up; the search is then not complete. */
    boolean reached() {
        boolean reached = stop.getAsBoolean();
        cut |= reached;
        return reached;
    }

    /** To be called where something is left out that might have been tried. */
    void leaveOut() {
        cut = true;
    }

    /** Whether nothing was left out. */
    boolean complete() {
        return !cut;
    }
}
