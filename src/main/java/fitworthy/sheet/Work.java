package fitworthy.sheet;

import fitworthy.quantity.Figure;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import java.time.LocalDate;
import java.util.List;

/** How long the workshop works at something, and when. */
public record Work(
        @Field(
                        value = "working days it takes; half a day is 0.5, and 0 what only has to be aboard",
                        find = "the workshop",
                        example = "1.5",
                        within = Plausible.WORKING_DAYS)
                Figure days,
        @Field(
                        value =
                                "names of the parts, tanks and jobs that must be done before, beside those that usually are",
                        example = "[Alloy tray]")
                List<String> after,
        @Field(
                        value =
                                "the day its beginning is booked for; asked of work of more than a day that has to wait",
                        example = "2026-12-14",
                        within = Plausible.DAY)
                LocalDate booked) {}
