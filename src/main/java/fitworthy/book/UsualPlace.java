package fitworthy.book;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.QuantityText;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import fitworthy.source.Words;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A place in words, as rules/usual/places.yaml holds it. The words are the key that it stands under. */
public record UsualPlace(
        @Field(value = "what is meant by it", needed = true, example = "on a rack above the cabin") String meaning,
        @Field(value = "other words for the same", example = "[at the front bar]") List<String> also,
        @Field(
                        "whether what is there is carried on the roof of the cab, which ends where any tray or canopy begins; not told where left out")
                Choice<YesNo> roof,
        @Field("whether it lies among the seats, ahead of the cab's rear wall; not told where left out")
                Choice<YesNo> seats,
        @Field(value = "where that is", needed = true) List<Value> values) {

    /** Where it is, by region and date. */
    public record Value(
            @Field(value = "a region of rules/book.yaml", needed = true, example = "any") String region,
            @Field(
                            value = "the first day on which it holds",
                            needed = true,
                            example = "2000-01-01",
                            within = Plausible.DAY)
                    LocalDate from,
            @Field(value = "the place", needed = true) Spot at,
            @Field("the place on a vehicle whose sheet does not give what that is measured from")
                    Optional<Spot> otherwise,
            @Field("the row of seats behind it, where the sheet has one") Optional<NextRow> nextRow,
            @Field(value = "how good the evidence is: common practice or memory", needed = true) Choice<Basis> basis,
            @Field(value = "what a reader should know of it", example = "Cabs of one row are shorter.") String note) {

        /** The place as a handbook tells it. */
        public String words() {
            return at.words()
                    + otherwise
                            .map(spot -> "; where the sheet does not give that: " + spot.words())
                            .orElse("")
                    + nextRow.map(row -> "; at least "
                                    + QuantityText.shown(row.apart().value(), "mm") + " ahead of '" + row.place() + "'")
                            .orElse("");
        }
    }

    /** A row of seats, and how far behind another it is at least. */
    public record NextRow(
            @Field(value = "the place in words", needed = true, example = "rear seats") String place,
            @Field(
                            value = "how far behind this row at least",
                            in = Dimension.LENGTH,
                            within = Plausible.ALONG,
                            needed = true,
                            example = "600 mm")
                    Figure apart) {}

    /** A place by what it is measured from; each figure with its spread. */
    public record Spot(
            @Field(value = "what it is measured from", needed = true) Choice<Start> start,
            @Field(
                            value =
                                    "how far behind that, as a share of the maker's wheelbase, or of the tray's or canopy's length",
                            in = Dimension.SHARE,
                            signed = true,
                            example = "52 % +/- 5 %")
                    Figure share,
            @Field(
                            value = "how far behind that, beside the share",
                            in = Dimension.LENGTH,
                            signed = true,
                            within = Plausible.ALONG,
                            example = "-750 mm +/- 150 mm")
                    Figure back,
            @Field(
                            value = "to the left of the centre line",
                            in = Dimension.LENGTH,
                            signed = true,
                            within = Plausible.ASIDE,
                            needed = true,
                            example = "0 mm +/- 300 mm")
                    Figure y,
            @Field(
                            value = "up from the ground",
                            in = Dimension.LENGTH,
                            within = Plausible.UP,
                            example = "900 mm +/- 200 mm")
                    Figure z,
            @Field(
                            value = "up from the floor of the tray or canopy, in place of 'z'",
                            in = Dimension.LENGTH,
                            signed = true,
                            within = Plausible.ALONG,
                            example = "300 mm +/- 200 mm")
                    Figure aboveFloor) {

        private String words() {
            String point = start.value().words();
            String from = " behind the " + (start.value().isOfBody() ? "front of the " : "") + point;
            return Stream.of(
                            shown("", share, "%", from),
                            shown("", back, "mm", share.known() ? " more" : from),
                            shown("aside ", y, "mm", ""),
                            shown("up ", z, "mm", ""),
                            shown("above the floor ", aboveFloor, "mm", ""))
                    .filter(figure -> !figure.isEmpty())
                    .collect(Collectors.joining(", "));
        }

        private static String shown(String before, Figure figure, String unit, String after) {
            return figure.known()
                    ? before + QuantityText.shown(figure.value(), unit) + " +/- "
                            + QuantityText.shown(figure.tolerance(), unit) + after
                    : "";
        }
    }

    /** What a place is measured from. */
    public enum Start {
        FRONT_AXLE,
        REAR_AXLE,
        /** Halfway between the axles. */
        MIDDLE,
        TOW_BALL,
        /** The vehicle's own rearmost point, without tray and canopy. */
        REAR_END,
        /** The front of the tray. */
        TRAY,
        /** The front of the canopy. */
        CANOPY,
        /** The front of the tray, or of the canopy where there is none. */
        LOAD_AREA;

        /** What it is called, as in "behind the rear axle". */
        public String words() {
            return Words.hyphenated(name()).replace('-', ' ');
        }

        /** Whether anybody can measure from it with a tape. */
        public boolean isTaped() {
            return this == FRONT_AXLE || this == REAR_AXLE || this == TOW_BALL || this == REAR_END;
        }

        /** Whether only a tray or canopy has it. */
        public boolean isOfBody() {
            return compareTo(TRAY) >= 0;
        }
    }

    /** The latest that has begun, in the first of these regions that has one: a region, its parent, that one's. */
    public Optional<Value> inForce(List<String> lineage, LocalDate day) {
        return lineage.stream()
                .flatMap(region -> values.stream()
                        .filter(value ->
                                value.region().equals(region) && !value.from().isAfter(day))
                        .max(Comparator.comparing(Value::from))
                        .stream())
                .findFirst();
    }
}
