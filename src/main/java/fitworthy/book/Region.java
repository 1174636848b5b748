package fitworthy.book;

import fitworthy.quantity.Choice;
import fitworthy.schema.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A region. Its id is the key it stands under. */
public record Region(
        @Field(value = "its name", needed = true, example = "New South Wales") String name,
        @Field(value = "what else people call it", example = "[Great Britain]") List<String> also,
        @Field(value = "the region whose values hold where this one records none", example = "au") String parent,
        @Field(
                        value =
                                "what those who measure otherwise there need to convert what is printed; the parent's where"
                                        + " left out",
                        example = "1 mile is 1.61 km.")
                String units,
        @Field(
                        value = "what plates there call the ratings that are printed; the parent's where left out",
                        example = "The GVM is the GVWR on the plate.")
                String terms,
        @Field(
                        value =
                                "what is left to the law of places below it that the book does not have; the parent's where left"
                                        + " out",
                        example = "Each member state says how fast a trailer may be towed.")
                String leftOpen,
        @Field("who is asked there in place of one whom the region does not have; the parent's where left out")
                List<Instead> askedInstead) {

    /** Who is asked in place of another. */
    public record Instead(
            @Field(value = "who is not there", needed = true) Choice<Party> of,
            @Field(value = "who is asked", needed = true) Choice<Party> ask) {}

    /** Who is asked in place of somebody, by the nearest of these regions that names one. */
    static Party asked(Map<String, Region> regions, List<String> lineage, Party wanted) {
        return lineage.stream()
                .flatMap(region -> regions.get(region).askedInstead().stream())
                .filter(instead -> instead.of().is(wanted))
                .findFirst()
                .map(instead -> instead.ask().value())
                .orElse(wanted);
    }

    static List<String> lineage(Map<String, Region> regions, String region) {
        List<String> lineage = new ArrayList<>();
        for (String each = region;
                each != null && !each.isEmpty();
                each = regions.get(each).parent()) {
            lineage.add(each);
        }
        return lineage;
    }
}
