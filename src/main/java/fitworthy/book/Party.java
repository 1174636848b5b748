package fitworthy.book;

import java.util.Set;
import java.util.stream.Stream;

/** Who may be asked. A closed list, so that all that one of them is asked can be put together. */
public enum Party {
    CUSTOMER("the customer"),
    BUILDER("the builder"),
    /** Who makes or sells a part. */
    PART_MAKER("the maker or supplier"),
    VEHICLE_MAKER("the maker of the vehicle"),
    TRAILER_MAKER("the maker of the trailer"),
    /** Who sells the vehicle. */
    DEALER("the dealer"),
    ENGINEER("the certifying engineer"),
    /** Who certifies light vehicles that are altered, in New Zealand. */
    LOW_VOLUME_CERTIFIER("the low volume vehicle certifier"),
    AUTHORITY("the registering authority"),
    /** Who says what may come out of an exhaust, where that is another than who registers. */
    EMISSION_AUTHORITY("the authority for vehicle emissions"),
    INSURER("the insurer"),
    AUTO_ELECTRICIAN("the auto electrician"),
    /** Who may do mains wiring. */
    MAINS_ELECTRICIAN("the licensed electrician"),
    /** Who tests mains wiring in the United Kingdom, which licenses nobody for it. */
    TESTING_ELECTRICIAN("the electrician who tests mains wiring"),
    TYRE_FITTER("the tyre fitter"),
    GASFITTER("the licensed gasfitter"),
    /** Who may do gas work in the United Kingdom. */
    GAS_ENGINEER("the registered gas engineer"),
    WEIGHBRIDGE("the weighbridge"),
    /** Who licenses firearms. */
    POLICE("the police who license firearms"),
    RADIO_AUTHORITY("the authority that licenses radios"),
    /** Who keeps a road, a park, a ferry or a car park. */
    ROUTE("whoever keeps the road, park, ferry or car park");

    /** Who lets an altered vehicle on the road; what a card that asks one of them says is that place's law. */
    public static final Set<Party> CERTIFYING = Set.of(ENGINEER, LOW_VOLUME_CERTIFIER, AUTHORITY);

    /** Who says what a law, a standard or a licence asks. */
    private static final Set<Party> BY_RULES = Set.of(
            ENGINEER,
            LOW_VOLUME_CERTIFIER,
            AUTHORITY,
            EMISSION_AUTHORITY,
            MAINS_ELECTRICIAN,
            TESTING_ELECTRICIAN,
            GASFITTER,
            GAS_ENGINEER,
            POLICE,
            RADIO_AUTHORITY);

    private final String words;

    Party(String words) {
        this.words = words;
    }

    /** Who is asked what a book does not hold of the rules of a place: the first of these who goes by them, else who registers. */
    static Party ofRules(Stream<Party> asked) {
        return asked.filter(BY_RULES::contains).findFirst().orElse(AUTHORITY);
    }

    /** As a sentence names it. */
    public String words() {
        return words;
    }

    /** The same of one thing, such as the maker of a bar. @param of words for the thing; empty for the usual words */
    public String words(String of) {
        return of.isEmpty() ? words : this == PART_MAKER ? "the maker of " + of : words + " (" + of + ")";
    }
}
