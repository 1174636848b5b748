package fitworthy.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whom a card asks, and what it rests on, outside the country that its texts are of. */
class InRegionTest {

    private static Card card(String id, String region) throws Exception {
        return Books.shipped().inForce(Sheets.plainWith("region: " + region)).card(id);
    }

    private static List<Party> asked(String id, String region) throws Exception {
        return card(id, region).ask().stream().map(ask -> ask.party().value()).toList();
    }

    @Test
    void nobodyIsSentToAnOfficeThatIsNotThere() throws Exception {
        assertEquals(List.of(Party.BUILDER, Party.ENGINEER), asked("paperwork.certificate-unpriced", "au-vic"));
        assertEquals(List.of(Party.BUILDER, Party.LOW_VOLUME_CERTIFIER), asked("paperwork.certificate-unpriced", "nz"));
        for (String region : List.of("eu", "uk", "us", "us-ca", "us-tx")) {
            for (String id : Books.shipped().cards().keySet()) {
                assertFalse(asked(id, region).contains(Party.ENGINEER), region + " " + id);
            }
        }
    }

    @Test
    void aRuleOfLawRestsOnTextsOfItsCountryAlone() throws Exception {
        Card home = card("mass.raised-after-registration", "au-sa");
        assertEquals(List.of("sa-mass-rerating"), home.sources());
        assertTrue(home.basis().is(Basis.PUBLISHED));
        Card abroad = card("mass.raised-after-registration", "uk");
        assertEquals(List.of(), abroad.sources());
        assertTrue(abroad.basis().is(Basis.ELSEWHERE));
        // One text of two is the country's own, and the grade stays.
        Card texas = card("towing.unbraked-by-mass", "us-tx");
        assertEquals(List.of("us-ca-trailer-brakes", "us-tx-brakes"), texas.sources());
    }

    @Test
    void howThingsHoldIsAlikeEverywhere() throws Exception {
        assertEquals(
                card("towing.levelling-slack", "us").sources(),
                card("towing.levelling-slack", "au").sources());
    }
}
