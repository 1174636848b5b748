package fitworthy.counter.sheets;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What was understood of a new sheet, and what was not.
 *
 * @param said what is said to each field, by its id, such as {@code vehicle} or {@code part-3}
 * @param missing fields that have to be filled in
 * @param faults what is wrong beside the fields
 * @param hints what should be said before the sheet is made, though it can be made without
 * @param tub whether it is to be asked what becomes of the vehicle's tub
 * @param brochure whether the figures of the vehicle are asked, since it does not lie on the shelf
 * @param text the sheet that would be made; absent while anything is wrong or missing
 */
public record Understood(
        Map<String, Said> said,
        List<String> missing,
        List<String> faults,
        List<String> hints,
        boolean tub,
        boolean brochure,
        Optional<String> text) {

    /** The fields before the parts at which something may be told, in the order of the page. */
    public static final List<String> FIELDS = Typed.fields("vehicle", "rated");

    /** What is said to fields in which nothing was filled, where more is to be said than that. */
    private static final Map<String, String> ASKED =
            Map.of("region", "Choose where it is registered: its laws are looked at. 'Anywhere' looks at none.");

    /**
     * What is said to a field.
     *
     * @param fault whether it was not understood
     * @param offers what lies on the shelf that may be meant
     */
    public record Said(boolean fault, String words, List<Offer> offers) {

        Said(boolean fault, String words) {
            this(fault, words, List.of());
        }

        /** The same in other words. */
        Said in(String others) {
            return new Said(fault, others, offers);
        }
    }

    /**
     * A thing of the shelf that may be meant.
     *
     * @param words its name with its mass
     * @param line as the line would read once it is taken
     */
    public record Offer(String words, String line) {}

    /** The same that says at each field that is missing so, once a person takes it to be whole. */
    Understood asked() {
        Map<String, Said> all = new LinkedHashMap<>(said);
        missing.forEach(
                field -> all.put(field, new Said(true, ASKED.getOrDefault(field, "This has to be filled in."))));
        return new Understood(all, missing, faults, hints, tub, brochure, text);
    }

    /** The field that is first to be put right, in the order of the page; empty where none is. */
    String first() {
        return Stream.concat(FIELDS.stream(), said.keySet().stream().filter(field -> !FIELDS.contains(field)))
                .filter(field -> said.containsKey(field) && said.get(field).fault())
                .findFirst()
                .orElse("");
    }

    /** What has to be filled in, in words. */
    public String stillMissing() {
        return missing.stream()
                .map(field -> field.equals("region") ? "where it is registered" : field)
                .collect(Collectors.joining(", "));
    }

    public boolean isWhole() {
        return text.isPresent();
    }
}
