package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.schema.Field;

/** Work on the vehicle beside the fitting of parts. */
public record Job(
        @Field(value = "what to call it", needed = true, example = "Wheel alignment") String name,
        @Field(value = "what kind of work it is", needed = true, find = "the plan") Choice<Kind> kind,
        @Field("how long it takes, and when") Work work) {

    public enum Kind {
        PAINT,
        ALIGNMENT,
        LAMP_AIM,
        CALIBRATION,
        WEIGHING,
        CERTIFICATE,
        OTHER
    }
}
