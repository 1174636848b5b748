package fitworthy.advice;

import fitworthy.book.Party;
import fitworthy.quantity.Missing;
import java.util.regex.Pattern;

/** Who finds what a sheet lacks: by where it is found, and a maker by what of the sheet lacks it. */
public final class Finder {

    /** What the builder reads off the thing itself, whoever put it there. */
    private static final Pattern READ_OFF = Pattern.compile("plate|label|stamp|sidewall|workshop|fitter");

    private static final Pattern MAKERS =
            Pattern.compile("approval papers|makers?\\b|data sheet|supplier|dealer|builder");

    /** Who has the papers, and knows the route and what goes along. */
    private static final Pattern CUSTOMERS = Pattern.compile(
            "owner|customer|carries|handbook|papers|registration|service book|licence|route|log|load list|contents");

    /** What stands at the customer's, whoever measures it. */
    private static final Pattern AT_HOME = Pattern.compile("trailer\\..*|(?:cargo|occupants)\\..*\\.mass");

    private Finder() {}

    /** Whom to ask first; who measures, looks and plans is the builder, but of what the customer has at home. */
    public static Party of(Missing missing) {
        Party first = first(missing);
        return first == Party.BUILDER && AT_HOME.matcher(missing.path()).matches() ? Party.CUSTOMER : first;
    }

    private static Party first(Missing missing) {
        String first = missing.find().split(", ")[0];
        if (READ_OFF.matcher(first).find()) {
            return Party.BUILDER;
        }
        if (MAKERS.matcher(first).find() && !first.contains("handbook")) {
            return maker(first, missing.path());
        }
        if (CUSTOMERS.matcher(first).find()) {
            return Party.CUSTOMER;
        }
        // Only certificates are issued.
        return first.contains("issues") ? Party.ENGINEER : Party.BUILDER;
    }

    private static Party maker(String find, String path) {
        if (find.contains("tyre")) {
            return Party.TYRE_FITTER;
        }
        if (find.contains("dealer")) {
            return Party.DEALER;
        }
        if (path.startsWith("vehicle.")) {
            return Party.VEHICLE_MAKER;
        }
        return path.startsWith("trailer.") ? Party.TRAILER_MAKER : Party.PART_MAKER;
    }
}
