package fitworthy.book;

import fitworthy.quantity.Choice;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import fitworthy.source.NodePath;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * What a field of a sheet commonly holds, by region and date, as the pages of rules/usual have it. Its id is the key it
 * stands under: a word for the thing, such as a kind of part, and the way to the field.
 */
public record UsualFigure(
        @Field(
                        value = "what is usual",
                        needed = true,
                        example = "A bull bar of steel with its brackets, without a winch")
                String meaning,
        @Field(value = "its values", needed = true) List<Value> values) {

    /** One value. */
    public record Value(
            @Field(value = "a region of rules/book.yaml", needed = true, example = "any") String region,
            @Field(
                            value = "the first day on which it holds",
                            needed = true,
                            example = "2000-01-01",
                            within = Plausible.DAY)
                    LocalDate from,
            @Field(
                            value = "where it holds; wherever no other of the region does where left out",
                            example = "chemistry is lithium")
                    String when,
            @Field(
                            value =
                                    "a figure with its tolerance, a word of the field's or a place in words; 'unknown' where nothing is usual any more",
                            needed = true,
                            example = "60 kg +/- 20 kg")
                    String value,
            @Field(value = "of how much of which other figure the value is", example = "100 Ah of capacity") String per,
            @Field(value = "how good the evidence is", needed = true) Choice<Basis> basis,
            @Field(value = "ids of rules/sources.yaml; needed for published grades", example = "[sa-mass-rerating]")
                    List<String> sources,
            @Field(
                            value = "the day on which it was last held against what it rests on",
                            example = "2026-11-25",
                            within = Plausible.DAY)
                    LocalDate checked,
            @Field(
                            value = "the day by which it should be looked at again",
                            example = "2027-11-25",
                            within = Plausible.DAY)
                    LocalDate review,
            @Field(value = "what a reader should know of it", example = "Alloy ones weigh a third less.") String note) {

        /** Whether nothing is usual from its day on. */
        public boolean none() {
            return value.equals("unknown");
        }

        /** As the same page would hold a practice value, for whatever looks at days, grades and sources. */
        public DatedLimit.Value dated() {
            return new DatedLimit.Value(region, from, null, value, basis, sources, checked, review, "", "", "", note);
        }
    }

    /**
     * The value that is usual in the first of these regions that has one: a region, its parent, that one's.
     *
     * @param holds whether what stands under {@code when} does; such a value goes before one that says nothing there
     */
    public Optional<Value> inForce(List<String> lineage, LocalDate day, Predicate<String> holds) {
        Set<String> conditions = values.stream()
                .map(Value::when)
                .filter(when -> !when.isEmpty())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        conditions.add("");
        return conditions.stream()
                .filter(when -> when.isEmpty() || holds.test(when))
                .flatMap(when -> lineage.stream().flatMap(region -> begun(region, day, when).stream()))
                .findFirst()
                .filter(value -> !value.none());
    }

    /** The latest that has begun in a region itself. */
    public Optional<Value> begun(String region, LocalDate day, String when) {
        return values.stream()
                .filter(value -> value.region().equals(region)
                        && value.when().equals(when)
                        && !value.from().isAfter(day))
                .max(Comparator.comparing(Value::from));
    }

    /** The way to one of the values in its entry. @param index counted from zero */
    public static NodePath path(int index) {
        return DatedLimit.path(index);
    }

    /** Examples for a message that fit the field that an entry is of, whichever group of the entry is read. */
    public static Map<String, String> examples(String id) {
        UsualField of = UsualField.of(id);
        return of.schema()
                .map(field ->
                        of.kind().map(kind -> kind.examples().get(field.name())).orElse(field.example()))
                .filter(example -> !example.isEmpty())
                .map(example -> Map.of("value", example))
                .orElse(Map.of());
    }
}
