package fitworthy.book;

import fitworthy.sheet.Choice;
import fitworthy.sheet.Field;
import java.time.LocalDate;
import java.util.List;

/** The words of a rule, and what it is about. Its id is the key it stands under. */
public record Card(
        @Field(value = "the fault in a few words", needed = true, example = "Loaded mass is above the GVM") String title,
        @Field(value = "what it asks for", needed = true) Choice<Severity> severity,
        @Field(value = "the measures it is about, the one it judges first", needed = true,
                example = "[mass.loaded]") List<String> about,
        @Field(value = "what the first measure is held against: 'limit' for its own limit, or a practice value's id",
                example = "limit") String against,
        @Field(value = "which side is allowed; at-most where left out") Choice<Sense> allowed,
        @Field(value = "further practice values that its condition uses", example = "[mass.gvm-reserve]")
        List<String> practice,
        @Field(value = "what to say when it was assessed and nothing is wrong", needed = true,
                example = "Loaded mass is within the GVM") String met,
        @Field(value = "why it matters", needed = true, example = "The GVM is the maker's limit.") String why,
        @Field(value = "what to do, with {placeholders} for figures", needed = true,
                example = "Leave out at least {margin}.") String remedy,
        @Field(value = "whom to ask and what to bring", needed = true, example = "The maker, with the weighbridge ticket.")
        String ask,
        @Field(value = "how good the evidence for the rule is", needed = true) Choice<Basis> basis,
        @Field(value = "ids of rules/sources.yaml", example = "[sa-mass-rerating]") List<String> sources,
        @Field(value = "the day it came into the book", needed = true, example = "2026-11-25") LocalDate since) {

    /** Which side of a value is allowed. */
    public enum Sense { AT_MOST, AT_LEAST }

    /** The measure it judges. */
    public String judges() {
        return about.get(0);
    }

    public boolean againstLimit() {
        return against.equals("limit");
    }

    public boolean againstPractice() {
        return !against.isEmpty() && !againstLimit();
    }

    public boolean atLeast() {
        return allowed.is(Sense.AT_LEAST);
    }
}
