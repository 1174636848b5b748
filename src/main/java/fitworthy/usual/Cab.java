package fitworthy.usual;

import fitworthy.book.UsualPlace;
import fitworthy.book.UsualPlace.NextRow;
import fitworthy.book.UsualPlace.Value;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.sheet.Fitment.Kind;
import java.util.Map;
import java.util.Optional;

/**
 * Where the cab ends, which words that hold for every vehicle do not know: cabs have one row of seats, one and small seats, or
 * two. In m behind the front axle.
 *
 * @param used what the book says of the words that the sheet uses
 */
record Cab(Landmarks landmarks, Map<String, Value> used) {

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
        Figure seat = ahead(own);
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
        double most = ahead(along(used.get(row.place()))).value() - row.apart().value();
        return seat.value() > most ? Figure.of(most, Math.hypot(seat.tolerance(), seat.value() - most)) : seat;
    }

    private Optional<NextRow> nextRow(Value value) {
        return value.nextRow().filter(row -> used.containsKey(row.place()));
    }

    /** A tray begins behind it, whatever stands on that; a canopy on the chassis too, where it leaves the rows room. */
    private Optional<Figure> wall() {
        return landmarks.begins(Kind.TRAY).isPresent()
                ? begins(Kind.TRAY)
                : begins(Kind.CANOPY).filter(this::hasRoomFor);
    }

    /** Whether the rows of the sheet fit ahead of it, each as far forward as it may be. */
    private boolean hasRoomFor(Figure front) {
        return used.values().stream()
                .filter(value -> value.nextRow().isPresent())
                .allMatch(value -> {
                    Figure row = along(value);
                    Figure behind = nextRow(value).map(NextRow::apart).orElse(Figure.ZERO);
                    return Figure.of(row.value() - row.tolerance() + behind.value())
                            .isAtMost(front);
                });
    }

    private Figure along(Value value) {
        return landmarks.along(value.at(), "");
    }

    private Optional<Figure> begins(Kind kind) {
        return landmarks.begins(kind).filter(Figure::known);
    }
}
