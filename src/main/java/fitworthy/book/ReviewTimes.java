package fitworthy.book;

import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.schema.Field;
import fitworthy.source.Fault;
import fitworthy.source.Located;
import fitworthy.source.NodePath;
import fitworthy.source.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How long what was checked stands until it is to be looked at again, by how well it is known. The keeper of a book sets
 * them; a book may state none.
 */
public record ReviewTimes(
        @Field(value = "for values read in a published text", in = Dimension.TIME, needed = true, example = "730 days")
                Figure published,
        @Field(
                        value = "for values that follow by arithmetic",
                        in = Dimension.TIME,
                        needed = true,
                        example = "1825 days")
                Figure calculation,
        @Field(
                        value = "for values read in a page that quotes the text",
                        in = Dimension.TIME,
                        needed = true,
                        example = "365 days")
                Figure publishedSecondhand,
        @Field(value = "for common practice", in = Dimension.TIME, needed = true, example = "1095 days")
                Figure commonPractice,
        @Field(value = "for values from memory", in = Dimension.TIME, needed = true, example = "180 days")
                Figure memory,
        @Field(value = "for the text of a source itself", in = Dimension.TIME, needed = true, example = "365 days")
                Figure source) {

    private static final double HOURS_A_DAY = Dimension.size("days");

    /** A hundred years: a time that no keeper means. */
    private static final double MOST_DAYS = 36_500;

    /** Days until a value of a grade is to be looked at again, where the book states them. */
    public Optional<Long> days(Basis basis) {
        return Optional.ofNullable(times().get(Words.hyphenated(basis.name()))).flatMap(ReviewTimes::days);
    }

    /** The same of a source. */
    public Optional<Long> daysOfSource() {
        return days(source);
    }

    private static Optional<Long> days(Figure time) {
        return time.known() ? Optional.of(Math.round(time.value() / HOURS_A_DAY)) : Optional.empty();
    }

    private Map<String, Figure> times() {
        return Map.of(
                "published", published,
                "calculation", calculation,
                "published-secondhand", publishedSecondhand,
                "common-practice", commonPractice,
                "memory", memory,
                "source", source);
    }

    /** Tells what is no such time. @param places of the page that they stand on @param group where in it */
    public void check(Located places, NodePath group, List<Fault> faults) {
        new TreeMap<>(times()).forEach((name, time) -> {
            if (time.known() && (time.value() < HOURS_A_DAY || time.value() > MOST_DAYS * HOURS_A_DAY)) {
                NodePath path = group.to(name);
                faults.add(new Fault(
                        places.place(path),
                        path.toString(),
                        "is no time from one look to the next, which is a day to a hundred years",
                        name + ": 365 days"));
            }
        });
    }
}
