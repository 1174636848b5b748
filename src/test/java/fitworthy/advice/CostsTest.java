package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Costs.Group;
import fitworthy.sheet.Prices;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Sums of prices, worked by hand. */
class CostsTest {

    private static final String PLACE = "mass: 10 kg, at: {x: 2000 mm, y: 0 mm, z: 700 mm}";

    private static Costs costs(String yaml) throws FaultsException {
        return Costs.of(Adviser.advise(Books.engine(), Sheets.plainWith(yaml)));
    }

    private static String parts(String... fitments) {
        StringBuilder yaml = new StringBuilder("fitments:\n");
        for (String fitment : fitments) {
            yaml.append("  - {").append(fitment).append(", ").append(PLACE).append("}\n");
        }
        return yaml.toString();
    }

    @Test
    void pricesAddUpByGroupAndWhatHasNoneIsNamed() throws FaultsException {
        Costs costs = costs(parts(
                "name: Box, kind: locker, price: 100.50 AUD",
                "name: Rack, kind: roof-rack, price: 200.25 AUD",
                "name: Oddment, kind: other"));
        assertEquals(
                Map.of("AUD", new BigDecimal("300.75")),
                costs.groups().get(Group.BODY_AND_LOAD).sums());
        assertEquals(List.of("Oddment"), costs.groups().get(Group.OTHER).unpriced());
        assertEquals(Map.of("AUD", new BigDecimal("300.75")), costs.total().sums());
        assertEquals(List.of("Oddment"), costs.total().unpriced());
    }

    @Test
    void currenciesAreNotAdded() throws FaultsException {
        Costs costs = costs(
                parts("name: Box, kind: locker, price: 100.00 AUD", "name: Rack, kind: locker, price: 40.00 NZD"));
        assertEquals(
                Map.of("AUD", new BigDecimal("100.00"), "NZD", new BigDecimal("40.00")),
                costs.total().sums());
    }

    @Test
    void whatIsDoneIsPaidFor() throws FaultsException {
        assertTrue(costs(parts("name: Box, kind: locker, price: 100.00 AUD, done: yes"))
                .isEmpty());
        assertTrue(costs(parts("name: Box, kind: locker, done: yes")).isEmpty());
    }

    @Test
    void aCertificateThatIsNeededAndNotInThePriceIsNamed() throws FaultsException {
        String kit =
                "region: au-sa\nfitments: [{name: Kit, kind: rating-upgrade, mass: 0 kg, gvm: 3200 kg, price: 90.00 AUD}]\n";
        assertEquals(List.of("Certificate for ratings"), costs(kit).total().unpriced());
        String paid = kit + "papers: {certificates: [{name: Plate, covers: ratings, price: 10.00 AUD}]}\n";
        assertEquals(List.of(), costs(paid).total().unpriced());
        assertEquals(
                Map.of("AUD", new BigDecimal("100.00")), costs(paid).total().sums());
        String unpriced = kit + "papers: {certificates: [{name: Plate, covers: ratings}]}\n";
        assertEquals(List.of("Plate"), costs(unpriced).total().unpriced());
    }

    @Test
    void theWorkIsNotCountedAsNothing() throws FaultsException {
        Costs known = costs(parts("name: Box, kind: locker, work: {days: 0.5}")
                + "jobs: [{name: Aim, kind: lamp-aim, work: {days: 1}}]\n");
        assertEquals(1.5, known.work().value(), 1e-9);
        assertFalse(costs(parts("name: Box, kind: locker")).work().known());
    }

    /** Three scenarios: with the certificates the sum of all prices, and the parts alone as they are compared elsewhere. */
    @Test
    void thePartsAddUpAsElsewhere() throws FaultsException {
        for (String scenario : List.of("touring", "weekender", "overloaded")) {
            Sheet sheet = Sheets.read(Sheets.scenario(scenario));
            Costs costs = Costs.of(Adviser.advise(Books.engine(), sheet));
            BigDecimal certificates = sheet.papers().certificates().stream()
                    .filter(paper -> paper.price() != null)
                    .map(paper -> paper.price().amount())
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            assertEquals(
                    Prices.of(sheet).get("AUD").add(certificates),
                    costs.total().sums().get("AUD"));
        }
    }
}
