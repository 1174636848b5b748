package fitworthy.book;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.QuantityText;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A practice value by region and date, as practice.yaml holds it. Its id is the key it stands under. */
public record DatedLimit(
        @Field(value = "the unit it is printed in", example = "kg") String unit,
        @Field(value = "what it is", needed = true, example = "Greatest GVM of a light vehicle") String meaning,
        @Field(value = "its values", needed = true) List<Value> values,
        @Field(
                        value =
                                "the first day on which it and the rules that compare with it are asked for no more, anywhere",
                        example = "2027-03-01",
                        within = Plausible.DAY)
                LocalDate ends,
        @Field(value = "what it was called before", example = "[mass.gvm-margin]") List<String> formerly) {

    /** One value. */
    public record Value(
            @Field(value = "a region of rules/book.yaml", needed = true, example = "au") String region,
            @Field(
                            value = "the first day on which it holds",
                            needed = true,
                            example = "2014-07-01",
                            within = Plausible.DAY)
                    LocalDate from,
            @Field(
                            value = "where it holds for some vehicles alone, those first registered from this day on",
                            example = "2010-01-26",
                            within = Plausible.REGISTRATION)
                    LocalDate registeredFrom,
            @Field(
                            value = "the value with its unit, or 'none' where no such limit applies any more",
                            needed = true,
                            example = "4500 kg")
                    String value,
            @Field(value = "how good the evidence is", needed = true) Choice<Basis> basis,
            @Field(value = "ids of rules/sources.yaml; needed for published grades", example = "[sa-mass-rerating]")
                    List<String> sources,
            @Field(
                            value =
                                    "the day on which it was last held against what it rests on; where left out the oldest of its"
                                            + " sources'",
                            example = "2026-11-25",
                            within = Plausible.DAY)
                    LocalDate checked,
            @Field(
                            value =
                                    "the day by which it should be looked at again, where that is not the usual time of its grade"
                                            + " after it was checked",
                            example = "2027-11-25",
                            within = Plausible.DAY)
                    LocalDate review,
            @Field(value = "where in its first source it stands", example = "regulation 33(4)(d)") String clause,
            @Field(
                            value = "what is said there, word for word and with the figure, in at most 25 words",
                            example = "shall not project more than 25 cm beyond the overall width")
                    String quote,
            @Field(
                            value =
                                    "the number that the quote holds, without its unit, where the value is another that follows from it",
                            example = "3000")
                    String quoted,
            @Field(value = "what a reader should know of it", example = "Older texts say 15 mm.") String note) {

        public boolean none() {
            return value.equals("none");
        }

        /** Since when it holds, and for which vehicles. */
        public String since() {
            return from + (registeredFrom == null ? "" : " for vehicles first registered from " + registeredFrom);
        }

        /** Whether it is for vehicles first registered on a day. */
        private boolean isFor(LocalDate registered) {
            return registeredFrom == null || !registeredFrom.isAfter(registered);
        }

        /** Its clause and what it says, to be said after how it is known; nothing where neither is recorded. */
        public String passage() {
            return quote.isEmpty() ? "" : "; " + clause + ": \"" + quote + "\"";
        }
    }

    /** Examples for a message that fit the unit of an entry; none for a group within it. */
    public static Map<String, String> examples(Node.Mapping group) {
        if (group.get("values") == null) {
            return Map.of();
        }
        String unit = group.get("unit") instanceof Node.Scalar written ? written.text() : "";
        return Optional.ofNullable(Dimension.ofUnit(unit))
                .map(dimension -> Map.of("value", dimension.example()))
                .orElse(Map.of());
    }

    /** One of the values in the unit used inside. @param value as it is written, checked before */
    public double number(String value) {
        try {
            return QuantityText.parse(value, Dimension.ofUnit(unit)).value();
        } catch (QuantityText.Unreadable e) {
            throw new IllegalStateException("a value of " + meaning + " was checked but is unreadable", e);
        }
    }

    /** The latest that has begun in a region itself, for whatever vehicle. */
    public Optional<Value> begun(String region, LocalDate day) {
        return begun(region, day, LocalDate.MAX);
    }

    /** The same for a vehicle first registered on a day; of two that begin together the one for newer vehicles. */
    private Optional<Value> begun(String region, LocalDate day, LocalDate registered) {
        return values.stream()
                .filter(value -> value.region().equals(region) && !value.from().isAfter(day) && value.isFor(registered))
                .max(Comparator.comparing(Value::from)
                        .thenComparing(Value::registeredFrom, Comparator.nullsFirst(Comparator.naturalOrder())));
    }

    /** The same of the first of these regions that has one: a region, its parent, that one's. */
    public Optional<Value> inForce(List<String> lineage, LocalDate day) {
        return inForce(lineage, day, LocalDate.MAX);
    }

    /** The same for a vehicle first registered on a day. */
    public Optional<Value> inForce(List<String> lineage, LocalDate day, LocalDate registered) {
        return lineage.stream()
                .flatMap(region -> begun(region, day, registered).stream())
                .findFirst();
    }

    /** Whether the day of first registration decides which value holds. */
    boolean asksRegistration(List<String> lineage, LocalDate day) {
        return !inForce(lineage, day, LocalDate.MIN).equals(inForce(lineage, day, LocalDate.MAX));
    }

    /** The way to one of the values in its entry. @param index counted from zero */
    public static NodePath path(int index) {
        return NodePath.of("values").to(index + 1);
    }
}
