package fitworthy.printout.words;

import fitworthy.search.Change;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** What the trip asks of parts that a changed plan does without, where no rule says that they are missing. */
public final class LostWords {

    private static final Set<Fitment.Kind> AGAINST_DUST = Set.of(Fitment.Kind.SNORKEL, Fitment.Kind.PRE_CLEANER);
    private static final Set<Fitment.Kind> AGAINST_WATER = Set.of(Fitment.Kind.SNORKEL, Fitment.Kind.BREATHER_KIT);

    private LostWords() {}

    /** A line for each such part. @param planned the sheet without the changes */
    public static List<String> of(Sheet planned, List<Change> changes) {
        List<String> gone = changes.stream()
                .filter(Change.Drop.class::isInstance)
                .map(Change.Drop.class::cast)
                .flatMap(drop -> Stream.concat(Stream.of(drop.fitment()), drop.contents().stream()))
                .toList();
        return planned.planned().fitments().stream()
                .filter(part -> gone.contains(part.name()))
                .map(part -> asked(part.kind(), planned.trip()))
                .filter(asked -> !asked.isEmpty())
                .map(asked -> "lost for " + String.join(" and ", asked))
                .distinct()
                .toList();
    }

    private static List<String> asked(Fitment.Kind kind, Sheet.Trip trip) {
        List<String> asked = new ArrayList<>();
        if (AGAINST_DUST.contains(kind) && trip.dust().known() && !trip.dust().is(Sheet.Dust.NONE)) {
            asked.add(Words.hyphenated(trip.dust().value().name()) + " dust");
        }
        if (AGAINST_WATER.contains(kind) && trip.waterDepth().value() > 0) {
            asked.add(Math.round(trip.waterDepth().value() * 1000) + " mm of water");
        }
        return asked;
    }
}
