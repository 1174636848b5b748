package fitworthy.shelf;

import java.util.List;
import java.util.Optional;

/** The places in words that a wish may end with, as the rule book knows them. */
public interface WishPlaces {

    /** The place that a wish ends with, as it is written. */
    Optional<String> ending(String wish);

    /** Every way to say the same place; nothing where it is measured. */
    List<String> ways(String place);
}
