package fitworthy.learn;

import fitworthy.sheet.Fitment;

/** A part as it comes up in several sheets. */
public record Part(String name, Fitment.Kind kind) {

    /** What a part of a sheet is: the same as one of the same name and kind in another. */
    static Part of(Fitment fitment) {
        return new Part(fitment.name(), fitment.kind());
    }
}
