package fitworthy.book;

import fitworthy.quantity.Choice;
import fitworthy.schema.Field;
import java.util.List;
import java.util.stream.Collectors;

/** Whom to ask, what, and what to bring. All texts may have placeholders. */
public record Ask(
        @Field(value = "whom to ask", needed = true) Choice<Party> party,
        @Field(value = "of what, where the party alone does not tell: a maker of what", example = "the winch")
                String of,
        @Field(value = "what to ask", example = "whether the points on the rails take its pull") String what,
        @Field(value = "what to bring or send", example = "the vehicle's loaded mass") String bring) {

    /** The same asked of another. */
    Ask of(Party other) {
        return new Ask(Choice.of(other), of, what, bring);
    }

    /** The questions of a card in a paragraph, a sentence for each. */
    public static String words(List<Ask> asks) {
        return asks.stream().map(Ask::words).collect(Collectors.joining(" "));
    }

    /** In a sentence: whom, what, and what to bring. */
    public String words() {
        String whom = party.value().words(of);
        return Character.toUpperCase(whom.charAt(0))
                + whom.substring(1)
                + (what.isEmpty() ? "" : ": " + what)
                + (bring.isEmpty() ? "" : "; bring " + bring)
                + ".";
    }
}
