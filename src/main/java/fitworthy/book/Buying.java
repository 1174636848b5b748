package fitworthy.book;

import fitworthy.quantity.Choice;
import fitworthy.schema.Field;
import java.util.List;

/** What a finding means for the buying of the parts that it is about. */
public record Buying(
        @Field(
                        "what settles it: another-choice of the part, an answer or approval, a correction of the sheet, less-load"
                                + " where parts are only one of the loads, other-place where they weigh in the wrong one, or work,"
                                + " for which nothing waits; where left out"
                                + " another-choice for a stop or a change, an answer for a confirm")
                Choice<Settled> settledBy,
        @Field(
                        value =
                                "kinds of the parts that it is about, tank for a tank, where its subject is not the name of one",
                        example = "[springs]")
                List<String> of,
        @Field(
                        value =
                                "what they wait for and who gives it, where an answer, a correction or another place settles it; the title where left out",
                        example = "its maker's statement that it suits this vehicle")
                String waitFor,
        @Field(
                        value =
                                "what to buy instead, where another choice settles it, with {placeholders} for figures; the first"
                                        + " sentence of the remedy where left out",
                        example = "springs of {suspension.rate-needed} or more")
                String instead,
        @Field(
                        value =
                                "kinds of other parts that bring it about, and wait until it is settled; tank for a tank",
                        example = "[tray, canopy]")
                List<String> holds) {

    /** What would settle a finding. */
    public enum Settled {
        /** Another choice of the part, or the same one ordered otherwise. */
        ANOTHER_CHOICE,
        /** An answer, a paper or a figure from somebody. */
        ANSWER,
        /** The sheet put right, where what it says of the part is doubtful; what it leaves out holds nothing up. */
        CORRECTION,
        /** Less on the vehicle, of which the part is one. */
        LESS_LOAD,
        /** Load elsewhere on the vehicle, of which the part is one. */
        OTHER_PLACE,
        /** A job, an adjustment or a further part: what is planned can be bought. */
        WORK
    }
}
