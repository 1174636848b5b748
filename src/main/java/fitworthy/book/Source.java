package fitworthy.book;

import fitworthy.quantity.Choice;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;
import java.time.LocalDate;
import java.util.Locale;

/** A text that cards and practice values cite. Its id is the key it stands under. */
public record Source(
        @Field(
                        value = "its title and publisher",
                        needed = true,
                        example = "Light vehicle mass re-rating, South Australia")
                String title,
        @Field(
                        value =
                                "what kind of text it is that was seen; a quotation is what quotes it, a copy what was copied",
                        needed = true)
                Choice<Kind> kind,
        @Field(
                        value =
                                "which edition of it was seen, or the day of its wording; of a law or a standard it is needed",
                        example = "as amended to 1 July 2026")
                String edition,
        @Field(value = "where it can be read; left out for a text cited from memory", example = "https://example.org")
                String link,
        @Field(value = "what was seen of it", needed = true, example = "read in full") String seen,
        @Field(value = "the day on which it was last seen", example = "2026-11-25", within = Plausible.DAY)
                LocalDate checked,
        @Field(
                        value =
                                "the day by which it should be looked at again, where that is not the usual time after it was"
                                        + " checked",
                        example = "2027-11-25",
                        within = Plausible.DAY)
                LocalDate review) {

    /** What kind of text it is, in which edition and when it was read, and what was seen of it. */
    public String account() {
        return kind.value().name().toLowerCase(Locale.ROOT)
                + ", " + (edition.isEmpty() ? "undated" : edition)
                + (checked == null ? "" : ", read on " + checked)
                + ": " + seen;
    }

    /** Whether it is of a kind that is amended, and does not say as of when it was read. */
    boolean lacksEdition() {
        return edition.isEmpty() && kind.known() && kind.value().isAmended();
    }

    /** Kinds of text, those first that can bear out a value called published. */
    public enum Kind {
        /** An act, a regulation or a rule with the force of law. */
        LAW,
        STANDARD,
        /** What an authority says of the law, or how it inspects. */
        GUIDANCE,
        /** What the maker of a vehicle, part or tool says of it. */
        MAKER,
        /** A textbook, or a test that was written up. */
        TEXTBOOK,
        /** A shop, a trade body, a club or a training. */
        TRADE,
        /** A magazine, a newspaper, an encyclopedia or a page of somebody's own. */
        PRESS,
        FORUM;

        private boolean isAmended() {
            return this == LAW || this == STANDARD;
        }

        /** Whether it comes from a legislator, a standards body or an authority. */
        public boolean isOfficial() {
            return compareTo(GUIDANCE) <= 0;
        }

        /** Whether it speaks for itself, and does not merely tell what another text says. */
        boolean bearsOut() {
            return compareTo(TEXTBOOK) <= 0;
        }
    }
}
