package fitworthy.usual;

import fitworthy.book.UsualPlace;
import fitworthy.book.UsualPlace.NextRow;
import fitworthy.book.UsualPlace.Value;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment.Kind;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Where the cab ends, which words that hold for every vehicle do not know: cabs have one row of seats, one and small seats, or
 * two. In m behind the front axle.
 *
 * @param rows what the book says of the words for the rows of seats that the vehicle has
 */
record Cab(Landmarks landmarks, Map<String, Value> rows) {

    /** Seats that fit into one row; a vehicle with more has another behind it. */
    private static final Figure ONE_ROW = Figure.of(3, 0);
    /** Seats of a longer cab before a tray or tub, whose rear ones are small: a cab of two full rows has more. */
    private static final Figure SMALL_REAR_ROW = Figure.of(4, 0);

    /**
     * With the rows that its seats make, or, where the sheet does not say how many there are, with those that it speaks of.
     *
     * @param used what the book says of the words that the sheet uses
     * @param book what it says of all words
     */
    static Cab of(Landmarks landmarks, Map<String, Value> used, Map<String, Value> book) {
        if (!landmarks.seats().known()) {
            return new Cab(landmarks, used);
        }
        Map<String, Value> rows = new LinkedHashMap<>();
        book.forEach((words, value) -> value.nextRow().ifPresent(next -> {
            rows.put(words, value);
            if (!isOneRow(landmarks) && book.containsKey(next.place())) {
                rows.put(next.place(), book.get(next.place()));
            }
        }));
        return new Cab(landmarks, rows);
    }

    /** Whether all its seats are in the first row. */
    static boolean isOneRow(Landmarks landmarks) {
        return landmarks.seats().isAtMost(ONE_ROW);
    }

    /** A place in words with all its spread in the cab or on its roof, where it belongs there. @param own as the book has it */
    Figure within(UsualPlace place, Value value, Figure own) {
        if (place.roof().is(YesNo.YES)) {
            // A canopy that reaches over the cab leaves that part of its roof to nothing else.
            return begins(Kind.TRAY)
                    .map(tray -> begins(Kind.CANOPY).map(tray::least).orElse(tray))
                    .or(() -> begins(Kind.CANOPY))
                    .map(end -> ahead(own, end))
                    .orElse(own);
        }
        if (!place.seats().is(YesNo.YES)) {
            return own;
        }
        Figure seat = ahead(small(value, own));
        return nextRow(value).map(row -> beforeRow(seat, row)).orElse(seat);
    }

    private Figure ahead(Figure seat) {
        return wall().map(wall -> ahead(seat, wall)).orElse(seat);
    }

    private static Figure ahead(Figure place, Figure end) {
        Figure ahead = Figure.of(end.value() - place.tolerance(), Math.hypot(place.tolerance(), end.tolerance()));
        return place.isAbove(ahead) ? ahead : place;
    }

    /** The rows keep their distance; what moves a row forward for that makes its place less sure by as much. */
    private Figure beforeRow(Figure seat, NextRow row) {
        double most = ahead(along(rows.get(row.place()))).value() - row.apart().value();
        return seat.value() > most ? Figure.of(most, Math.hypot(seat.tolerance(), seat.value() - most)) : seat;
    }

    /** The row behind another; a tray that leaves no room for that stands behind a cab of one row, whatever its seats. */
    private Optional<NextRow> nextRow(Value value) {
        return value.nextRow().filter(row -> rows.containsKey(row.place())).filter(row -> begins(Kind.TRAY)
                .filter(tray -> !hasRoomFor(tray))
                .isEmpty());
    }

    /** A tray begins behind it, whatever stands on that; a canopy on the chassis too, where it leaves the rows room. */
    private Optional<Figure> wall() {
        return landmarks.begins(Kind.TRAY).isPresent()
                ? begins(Kind.TRAY)
                : begins(Kind.CANOPY).filter(this::hasRoomFor);
    }

    /** Whether the rows of the sheet fit ahead of it, each as far forward as it may be. */
    private boolean hasRoomFor(Figure front) {
        return rows.values().stream()
                .filter(value -> value.nextRow().isPresent())
                .allMatch(value -> {
                    Figure row = along(value);
                    Figure behind = value.nextRow()
                            .filter(next -> rows.containsKey(next.place()))
                            .map(NextRow::apart)
                            .orElse(Figure.ZERO);
                    return Figure.of(row.value() - row.tolerance() + behind.value())
                            .isAtMost(front);
                });
    }

    /** The small seats behind the first row of a longer cab are as near to it as knees allow. */
    private Figure small(Value value, Figure row) {
        if (!landmarks.isUtility()
                || !landmarks.seats().isAtMost(SMALL_REAR_ROW)
                || !landmarks.seats().isAbove(ONE_ROW)) {
            return row;
        }
        return rows.values().stream()
                .flatMap(first -> first
                        .nextRow()
                        .filter(next -> value.equals(rows.get(next.place())))
                        .map(next -> landmarks.along(first.at(), "").value()
                                + next.apart().value())
                        .stream())
                .findFirst()
                .filter(near -> near < row.value())
                .map(near -> Figure.of(near, row.tolerance()))
                .orElse(row);
    }

    private Figure along(Value value) {
        return small(value, landmarks.along(value.at(), ""));
    }

    private Optional<Figure> begins(Kind kind) {
        return landmarks.begins(kind).filter(Figure::known);
    }
}
