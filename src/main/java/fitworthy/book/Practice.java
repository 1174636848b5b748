package fitworthy.book;

import fitworthy.quantity.Figure;
import fitworthy.quantity.QuantityText;
import fitworthy.rules.PracticeFact;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A practice value as it holds in one region on one day. Rule files match on {@code id} and compare with {@code value}.
 *
 * @param id {@code topic.what}
 * @param value in the unit used inside
 * @param unit the unit it is printed in
 * @param meaning what it is
 * @param entry where it comes from
 * @param house where the house set it, what it stands in place of
 */
public record Practice(
        String id, double value, String unit, String meaning, DatedLimit.Value entry, Optional<HouseValue> house)
        implements PracticeFact {

    /** To as many digits as the figures it is compared with, so that 100 km/h are not above 100 km/h. */
    public Practice {
        value = Figure.rounded(value);
    }

    /** What looking one up comes to: the value, that none applies there, that nothing is recorded, or that it has ended. */
    public sealed interface Lookup {
        record Found(Practice practice) implements Lookup {}

        record NoneApplies() implements Lookup {}

        record NotRecorded() implements Lookup {}

        /** That it hangs on the day of first registration, which is not known. */
        record RegistrationAsked() implements Lookup {}

        /** @param day from which on it is asked for no more */
        record Ended(LocalDate day) implements Lookup {}
    }

    /**
     * A value of the house's in use.
     *
     * @param set what the house says
     * @param recorded what the book says
     * @param looser whether it lets more through than the book, or may do so
     */
    public record HouseValue(House.Value set, Lookup recorded, boolean looser) {

        /** What it stands in place of, in a sentence. */
        public String inPlaceOf() {
            if (recorded instanceof Lookup.Found found) {
                DatedLimit.Value entry = found.practice().entry();
                return "In place of "
                        + QuantityText.shown(
                                found.practice().value(), found.practice().unit()) + ", " + entry.region() + " from "
                        + entry.since() + ", " + entry.basis().value().words() + ".";
            }
            return recorded instanceof Lookup.NoneApplies
                    ? "The book says that no such limit applies here."
                    : recorded instanceof Lookup.RegistrationAsked
                            ? "The book's hangs on the day of first registration, which is not known."
                            : "The book records nothing here.";
        }
    }
}
