package fitworthy.book;

import fitworthy.schema.Field;

/** What stands on the cover of a rule book. */
public record TitlePage(
        @Field(value = "its name", needed = true, example = "Open Road") String name,
        @Field(value = "its edition", needed = true, example = "2026.11") String edition,
        @Field(value = "the caution printed with every piece of advice", needed = true, example = "Advice only.")
                String caution,
        @Field("after how long values and sources are looked at again, counted from the day they were checked")
                ReviewTimes review) {}
