package fitworthy.learn;

import java.util.ArrayList;
import java.util.List;

/**
 * What weighbridge readings tell of the masses of parts.
 *
 * @param sheets how many sheets were looked at
 * @param weighed how many of them have a reading that can be used
 * @param weighings how many readings, each of two axles, there are in all
 * @param twice sheets that are copies of another, which count once
 * @param parts the parts of the sheets that were weighed, what is told of them first
 * @param scatter squared errors of the readings in units of their variance
 * @param free how much of that chance gives on the average: readings less what was told from them
 * @param widened whether it is more than chance gives, so that all intervals were widened
 * @param unused readings that cannot be used, and why
 * @param refused sheets that cannot be used
 */
public record Learnt(
        int sheets,
        int weighed,
        int weighings,
        List<String> twice,
        List<PartMass> parts,
        double scatter,
        int free,
        boolean widened,
        List<String> unused,
        List<SheetReadings> refused) {

    /** What came out of one part. */
    public enum Verdict {
        /** Off by more than what is written and what was weighed allow together. */
        OFF,
        /** Told, and within what is written. */
        AS_WRITTEN,
        CANNOT_TELL
    }

    /** Why nothing can be told of a part. */
    public enum Reason {
        ONE_VEHICLE,
        NO_READING,
        FEW,
        TOGETHER,
        WIDE
    }

    /**
     * What is told of one part.
     *
     * @param sheets how many weighed sheets it is in
     * @param weighings in how many weighings it makes a difference
     * @param written its mass as written, in kg; the mean where sheets differ
     * @param spread how far the masses and tolerances written reach from there, in kg
     * @param guessed whether any sheet guesses it
     * @param off how much heavier it is than written, in kg; null unless the readings tell it
     * @param within half the interval of 95 % of that, in kg; null likewise
     * @param reason null where it is told
     * @param with the parts that it cannot be told from
     */
    public record PartMass(
            Part part,
            int sheets,
            int weighings,
            double written,
            double spread,
            boolean guessed,
            Verdict verdict,
            Double off,
            Double within,
            Reason reason,
            List<Part> with) {

        /** Its mass as weighed, in kg. */
        public double mass() {
            return written + off;
        }

        public boolean told() {
            return verdict != Verdict.CANNOT_TELL;
        }
    }

    public boolean oursAtFault() {
        return refused.stream().anyMatch(SheetReadings::ours);
    }

    /** Those of one verdict. */
    public List<PartMass> parts(Verdict verdict) {
        return parts.stream().filter(part -> part.verdict() == verdict).toList();
    }

    /** What a shop may put on its shelf: the masses that are told. */
    public List<PartMass> told() {
        List<PartMass> told = new ArrayList<>(parts(Verdict.OFF));
        told.addAll(parts(Verdict.AS_WRITTEN));
        return told;
    }
}
