package fitworthy.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.measure.MeasureKind.Scope;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.source.FaultsException;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What is asked of the plan and what of a loading, as each kind of measure declares it. */
class MeasuresTest {

    private static final MeasureKind PLAN = MeasureKind.number("mass.some", "kg", 0, "some mass");

    @Test
    void whatIsMadeInAnotherScopeThanItsKindDeclaresIsRefused() {
        List<Measure> ofPlan = List.of(Measure.of(PLAN, "vehicle", Figure.of(1)));
        List<Measure> ofLoading = List.of(Measure.of(PLAN.byLoading(), "vehicle", Figure.of(1)));
        assertEquals(ofPlan, Measures.checked(ofPlan, Scope.PLAN));
        assertEquals(ofLoading, Measures.checked(ofLoading, Scope.LOADING));
        assertEquals(
                "mass.some is declared to be of plan scope and made in loading scope",
                assertThrows(IllegalStateException.class, () -> Measures.checked(ofPlan, Scope.LOADING))
                        .getMessage());
        assertThrows(IllegalStateException.class, () -> Measures.checked(ofLoading, Scope.PLAN));
    }

    @Test
    void thoseOfALoadingCarryItsName() throws FaultsException {
        Plan plan = new Plan(
                Sheets.plainWith("cases: [{name: one}, {name: two}]"),
                Books.shipped().tables(),
                id -> Figure.ZERO);
        assertEquals(Set.of(""), cases(Measures.of(plan)));
        assertEquals(Set.of("two"), cases(Measures.of(Loading.all(plan).get(1))));
    }

    private static Set<String> cases(List<Measure> measures) {
        return measures.stream().map(Measure::getLoadCase).collect(Collectors.toSet());
    }
}
