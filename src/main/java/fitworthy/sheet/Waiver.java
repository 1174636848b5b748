package fitworthy.sheet;

import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import java.time.LocalDate;

/** A finding that a person stands for although it remains. It stays on every printout. */
public record Waiver(
        @Field(value = "the id of the rule, as printed under its finding", needed = true, example = "mass.ball-lever")
                String rule,
        @Field(
                        value =
                                "what it is about, as named in the advice; everything where left out, but needed for a stop",
                        example = "rear axle")
                String subject,
        @Field(
                        value =
                                "the loading; all of them where left out, but needed for a stop that depends on the loading",
                        example = "towing")
                String in,
        @Field(
                        value = "why it may stand",
                        needed = true,
                        printed = true,
                        example = "The owner has a load-levelling hitch.")
                String reason,
        @Field(
                        value = "the role of the person who stands for it",
                        needed = true,
                        printed = true,
                        example = "workshop manager")
                String by,
        @Field(value = "the last day on which it counts", needed = true, example = "2027-02-26", within = Plausible.DAY)
                LocalDate until) {}
