package fitworthy.book;

import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import java.time.LocalDate;

/** A text that cards and practice values cite. Its id is the key it stands under. */
public record Source(
        @Field(
                        value = "its title and publisher",
                        needed = true,
                        example = "Light vehicle mass re-rating, South Australia")
                String title,
        @Field(value = "where it can be read; left out for a text cited from memory", example = "https://example.org")
                String link,
        @Field(value = "what was seen of it", needed = true, example = "read in full") String seen,
        @Field(value = "the day on which it was last seen", example = "2026-11-25", within = Plausible.DAY)
                LocalDate checked,
        @Field(
                        value =
                                "the day by which it should be looked at again, where that is not the usual time after it was"
                                        + " checked",
                        example = "2027-11-25",
                        within = Plausible.DAY)
                LocalDate review) {}
