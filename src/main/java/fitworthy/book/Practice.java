package fitworthy.book;

import fitworthy.rules.PracticeFact;
import java.util.Optional;

/**
 * A practice value as it holds in one region on one day. Rule files match on {@code id} and compare with {@code value}.
 *
 * @param id {@code topic.what}
 * @param value in the unit used inside
 * @param unit the unit it is printed in
 * @param meaning what it is
 * @param entry where it comes from
 * @param house where a shop set it, what it stands in place of
 */
public record Practice(
        String id, double value, String unit, String meaning, DatedLimit.Value entry, Optional<House.Use> house)
        implements PracticeFact {}
