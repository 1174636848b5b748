package fitworthy.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.book.Book;
import fitworthy.book.Card;
import fitworthy.source.FaultsException;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** One list says what makes a certificate necessary: every card that sends its reader to get one is in it. */
class CertificateListTest {

    private static final Pattern SENDS = Pattern.compile("(?i)approv|certif|engineer|exempt");

    /** Why a card that speaks of approval asks for no certificate of the alteration. */
    private static final Map<String, String> EXCEPT = Map.ofEntries(
            Map.entry("across.camera-no-cure", "an approved camera system is a product"),
            Map.entry("across.one-engineer", "follows from the list"),
            Map.entry(
                    "body.seats-untested", "what it rests on: seats that change are in the list by body.seats-changed"),
            Map.entry("front.lamps-hidden", "approved lamps are a product"),
            Map.entry("mass.cog-high", "what builders do, no law"),
            Map.entry("mass.gvm-over", "a rating is raised once the plan says so, and that is in the list"),
            Map.entry("mass.raised-before-registration", "the builder's approval number, before registration"),
            Map.entry("mass.kit-unapproved", "an approved kit is a product"),
            Map.entry("order.certified-unweighed", "the certificate is in the plan already"),
            Map.entry("paperwork.certificate-unpriced", "follows from the list"),
            Map.entry("paperwork.done-uncertified", "of what was done earlier"),
            Map.entry("paperwork.plate-left-out", "the plate comes with the certificate"),
            Map.entry("paperwork.rating-stage-wrong", "which kind of approval, not whether"),
            Map.entry("radio.power-over", "an approved radio is a product"),
            Map.entry("suspension.lines-short", "approved hoses are a product"));

    @Test
    void whatAsksForApprovalIsInTheList() throws FaultsException {
        Book book = Books.shipped();
        Set<String> listed =
                Set.copyOf(book.rules().get("across.certificate-needed").earlier());
        Set<String> left = new TreeSet<>(EXCEPT.keySet());
        book.cards().forEach((id, card) -> {
            if (SENDS.matcher(remedies(card)).find() && !left.remove(id)) {
                assertEquals(true, listed.contains(id), id + " asks for approval: " + card.remedy());
            }
        });
        assertEquals(Set.of(), left, "exceptions that nothing needs");
    }

    private static String remedies(Card card) {
        return String.join(
                "\n",
                Stream.concat(Stream.of(card.remedy()), card.inRegion().stream().map(Card.Regional::remedy))
                        .toList());
    }
}
