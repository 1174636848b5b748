package fitworthy.changes;

import com.fasterxml.jackson.annotation.JsonValue;
import fitworthy.source.Words;
import java.util.List;

/**
 * One thing of a book that is otherwise in another edition of it; null where something is not told of its kind.
 *
 * @param id of the value, rule, source or region; the name of a table; of a usual figure with region and day; {@code book} for its cover
 * @param about what that is, in words
 * @param region of a value
 * @param from the first day of a value
 * @param basis how a value is known
 * @param sources the texts that a value rests on
 * @param fields what is otherwise, or of something new what it says
 * @param place where it stands in the later book; where it is gone, where it stood
 */
public record BookChange(
        Kind kind,
        What what,
        String id,
        String about,
        String region,
        String from,
        String basis,
        List<String> sources,
        List<Field> fields,
        String place) {

    /** One that is not of a value of one region and day. */
    static BookChange of(Kind kind, What what, String id, String about, List<Field> fields, String place) {
        return new BookChange(kind, what, id, about, null, null, null, null, fields, place);
    }

    /** Kinds of things that a book holds, in the order in which they are told. */
    public enum Kind {
        VALUE("Practice values"),
        RULE("Rules"),
        CARD("Cards"),
        SOURCE("Sources"),
        REGION("Regions"),
        TABLE("Tables"),
        USUAL("Usual figures"),
        COVER("The book itself");

        private final String heading;

        Kind(String heading) {
            this.heading = heading;
        }

        String heading() {
            return heading;
        }

        /** It as a program reads it. */
        @JsonValue
        public String word() {
            return Words.hyphenated(name());
        }
    }

    /** What became of a thing. */
    public enum What {
        ADDED("added"),
        /** A value after which no such limit applies. */
        ENDED("ended"),
        CHANGED("changed"),
        GONE("taken out");

        private final String words;

        What(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }

        /** It as a program reads it. */
        @JsonValue
        public String word() {
            return Words.hyphenated(name());
        }
    }

    /** One field. @param before null where nothing stood there @param after null where nothing stands there now */
    public record Field(String name, String before, String after) {

        String words() {
            return name + ": " + (after == null ? "nothing" : after)
                    + (before == null ? "" : " (before: " + before + ")");
        }
    }
}
