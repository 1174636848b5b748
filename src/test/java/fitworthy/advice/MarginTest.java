package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.source.FaultsException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The plain wagon weighs 2520 kg with its 60 kg of luggage. */
class MarginTest {

    private static List<Margin> margins(String changes) throws FaultsException {
        return Margin.all(Adviser.advise(Books.engine(), Sheets.plainWith(changes)));
    }

    private static List<String> limits(List<Margin> margins) {
        return margins.stream().map(Margin::limit).toList();
    }

    /** Not what tyres carry, nor what is held against a practice value or does not depend on the loading. */
    @Test
    void massLimitsOfALoadingAreTold() throws FaultsException {
        List<Margin> margins = margins("title: plain");
        assertEquals(List.of("front axle: axle limit", "rear axle: axle limit", "vehicle: GVM"), limits(margins));
        assertEquals("mass.loaded", margins.get(2).kind().name());
        assertEquals(480, margins.get(2).least(), 1e-6);
    }

    /** By 20 kg the front axle is heavier than its parts: a finding of this loading, but the tolerance is no rating. */
    @Test
    void aWeighingThatDisagreesIsNotAmongThem() throws FaultsException {
        String weighed =
                "cases: [{name: weighed, weighed: {front-axle: 1349 kg +/- 5 kg, rear-axle: 1191 kg +/- 5 kg}}]";
        assertEquals(
                List.of("front axle: axle limit", "rear axle: axle limit", "vehicle: GVM"), limits(margins(weighed)));
    }

    /** The axle limits together are less than the raised GVM: a finding, but of no loading. */
    @Test
    void whatDoesNotDependOnTheLoadingIsNotAmongThem() throws FaultsException {
        String weak = "fitments: [{name: Kit, kind: rating-upgrade, mass: 0 kg, gvm: 3300 kg}]";
        assertEquals(
                1,
                Adviser.advise(Books.engine(), Sheets.plainWith(weak)).findings().stream()
                        .filter(finding -> finding.judged().id().equals("mass.raised-gvm-axles"))
                        .count());
        assertEquals(3, limits(margins(weak)).size());
    }

    /** 20 kg over with the luggage, 40 kg within without it; an axle without a limit is left out. */
    @Test
    void findingsAndWhatIsMetStandInOneRow() throws FaultsException {
        List<Margin> margins = margins(
                "vehicle: {ratings: {gvm: 2500 kg, rear-axle: }}\ncases: [{name: empty, carrying: []}, {name: full}]");
        assertEquals(List.of("front axle: axle limit", "vehicle: GVM"), limits(margins));
        Map<String, Double> left = margins.get(1).left();
        assertEquals(2, left.size());
        assertEquals(-20, left.get("full"), 1e-6);
        assertEquals(40, left.get("empty"), 1e-6);
        assertEquals(-20, margins.get(1).least(), 1e-6);
    }
}
