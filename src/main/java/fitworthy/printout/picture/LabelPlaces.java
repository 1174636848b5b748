package fitworthy.printout.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds places for small labels near their marks, where they cover neither each other nor another mark. */
final class LabelPlaces {

    private static final int DIRECTIONS = 24;
    private static final double STEP = 2;
    private static final double FARTHEST = 160;
    private static final double GAP = 1;

    /** A rectangle by its left upper corner. */
    record Box(double x, double y, double width, double height) {
        boolean overlaps(Box other, double gap) {
            return x < other.x + other.width + gap
                    && other.x < x + width + gap
                    && y < other.y + other.height + gap
                    && other.y < y + height + gap;
        }

        double middleX() {
            return x + width / 2;
        }

        double middleY() {
            return y + height / 2;
        }
    }

    private record Leader(double x1, double y1, double x2, double y2) {
        boolean crosses(Leader other) {
            return side(other.x1, other.y1) * side(other.x2, other.y2) < 0
                    && other.side(x1, y1) * other.side(x2, y2) < 0;
        }

        private double side(double x, double y) {
            return (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1);
        }

        boolean passes(Box box) {
            return crosses(new Leader(box.x, box.y, box.x + box.width, box.y + box.height))
                    || crosses(new Leader(box.x, box.y + box.height, box.x + box.width, box.y));
        }
    }

    private final Box page;
    private final List<Box> taken = new ArrayList<>();
    private final List<Leader> leaders = new ArrayList<>();

    LabelPlaces(Box page) {
        this.page = page;
    }

    /** Keeps a place free of labels. */
    void take(Box box) {
        taken.add(box);
    }

    /**
     * A place for a label of a round mark: the nearest that is free, so that it needs no line to the mark or a short
     * one. The line crosses no other unless there is no such place.
     */
    Box place(double x, double y, double radius, double width, double height) {
        Box box = nearest(x, y, radius, width, height, true)
                .or(() -> nearest(x, y, radius, width, height, false))
                .orElse(new Box(x - width / 2, y - height / 2, width, height));
        taken.add(box);
        leaders.add(new Leader(x, y, box.middleX(), box.middleY()));
        return box;
    }

    private Optional<Box> nearest(double x, double y, double radius, double width, double height, boolean uncrossed) {
        for (double away = radius + height / 2 + GAP; away < radius + FARTHEST; away += STEP) {
            for (int i = 0; i < DIRECTIONS; i++) {
                // Up first, then alternately to both sides.
                double turn = Math.PI * 2 / DIRECTIONS * ((i + 1) / 2) * (i % 2 == 0 ? 1 : -1);
                Box box = new Box(
                        x + Math.sin(turn) * (away + width / 4) - width / 2,
                        y - Math.cos(turn) * away - height / 2,
                        width,
                        height);
                if (free(box) && (!uncrossed || clear(new Leader(x, y, box.middleX(), box.middleY()), box))) {
                    return Optional.of(box);
                }
            }
        }
        return Optional.empty();
    }

    private boolean free(Box box) {
        return box.x >= page.x
                && box.y >= page.y
                && box.x + box.width <= page.x + page.width
                && box.y + box.height <= page.y + page.height
                && taken.stream().noneMatch(other -> other.overlaps(box, GAP));
    }

    private boolean clear(Leader leader, Box box) {
        return leaders.stream().noneMatch(other -> other.crosses(leader) || other.passes(box));
    }
}
