package fitworthy.printout.json;

import fitworthy.book.Practice;
import fitworthy.printout.words.Wording;
import fitworthy.source.Words;
import java.util.List;

/** A practice value as programs read it. @param house null where the book set it */
record JsonPractice(
        String id,
        String value,
        String region,
        String from,
        String basis,
        List<String> sources,
        String note,
        HouseValue house) {

    static JsonPractice of(Practice practice) {
        return new JsonPractice(
                practice.id(),
                Wording.value(practice),
                practice.entry().region(),
                practice.entry().from().toString(),
                Words.hyphenated(practice.entry().basis().value().name()),
                practice.entry().sources(),
                practice.entry().note(),
                practice.house().map(HouseValue::of).orElse(null));
    }

    /** What a house set. @param inPlaceOf the book's value, or {@code none} or {@code not-recorded} */
    record HouseValue(boolean looser, String reason, String name, Object inPlaceOf) {
        static HouseValue of(Practice.HouseValue use) {
            return new HouseValue(
                    use.looser(),
                    use.set().reason(),
                    use.set().name(),
                    use.recorded() instanceof Practice.Lookup.Found recorded
                            ? JsonPractice.of(recorded.practice())
                            : use.recorded() instanceof Practice.Lookup.NoneApplies ? "none" : "not-recorded");
        }
    }
}
