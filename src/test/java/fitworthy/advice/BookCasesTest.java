package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.advice.Cases.Case;
import fitworthy.advice.Cases.Expected;
import fitworthy.advice.Outcome.Comparison;
import fitworthy.advice.Outcome.Finding;
import fitworthy.figures.MeasureKind;
import fitworthy.figures.Measures;
import fitworthy.printout.Wording;
import fitworthy.source.FaultsException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Runs every case of the shipped rule book as a test of its own, and checks that they reach every rule. */
class BookCasesTest {

    /** How near to a limit, as a share of it, the cases on both its sides have to come. */
    private static final double NEAR = 0.05;

    @TestFactory
    Stream<DynamicTest> everyCaseGivesTheAdviceItNames() throws FaultsException {
        return Cases.read(Books.RULES, Books.shipped()).stream()
                .map(each -> DynamicTest.dynamicTest(each.toString(), () -> run(each)));
    }

    private static void run(Case each) throws FaultsException {
        Advice advice = Adviser.advise(Books.shipped(), each.sheet());
        List<Finding> open = new ArrayList<>(advice.findings().stream()
                .filter(finding -> finding.judged().id().startsWith(each.topic() + ".")).toList());
        List<String> problems = new ArrayList<>();
        for (Expected expected : each.text().expect()) {
            Optional<Finding> match = open.stream().filter(finding -> matches(expected, finding)).findFirst();
            match.ifPresentOrElse(open::remove, () -> problems.add("expected " + expected));
        }
        open.forEach(finding -> problems.add("not expected: " + shown(finding)));
        each.text().notAssessed().forEach(wanted -> {
            if (advice.notAssessed().stream().noneMatch(got -> got.judged().id().equals(wanted.id())
                    && got.missing().stream().anyMatch(missing -> missing.path().equals(wanted.field())))) {
                problems.add("expected not assessed: " + wanted);
            }
        });
        each.text().met().forEach(id -> {
            if (advice.met().stream().noneMatch(met -> met.judged().id().equals(id))) {
                problems.add("expected to be met: " + id);
            }
        });
        assertTrue(problems.isEmpty(), () -> each.place() + "\n  " + String.join("\n  ", problems));
    }

    private static boolean matches(Expected expected, Finding finding) {
        return expected.id().equals(finding.judged().id())
                && (expected.subject().isEmpty() || expected.subject().equals(finding.judged().subject()))
                && (expected.in().isEmpty() || expected.in().equals(finding.judged().loadCase()))
                && figure(expected.value(), finding.comparison().map(Comparison::value)
                        .orElse(finding.judged().measure().getValue()), finding)
                && figure(expected.limit(), finding.comparison().map(Comparison::limit).orElse(0.0), finding)
                && figure(expected.margin(), finding.comparison().map(Comparison::margin).orElse(0.0), finding);
    }

    private static boolean figure(String expected, double got, Finding finding) {
        return expected.isEmpty() || expected.equals(Wording.quantity(got, finding.judged().measure().kind()));
    }

    private static String shown(Finding finding) {
        return finding.judged().id() + " [" + finding.judged().subject() + ", " + finding.judged().loadCase() + "] "
                + finding.comparison().map(each -> Wording.comparison(finding.judged(), each))
                        .orElse(Wording.value(finding.judged().measure()));
    }

    @Test
    void everyRuleFiresInACaseAndIsMetInAnotherNearItsLimit() throws FaultsException {
        List<Advice> all = new ArrayList<>();
        for (Case each : Cases.read(Books.RULES, Books.shipped())) {
            all.add(Adviser.advise(Books.shipped(), each.sheet()));
        }
        Set<String> problems = new TreeSet<>();
        Books.shipped().cards().forEach((id, card) -> {
            List<Finding> fired = all.stream().flatMap(each -> each.findings().stream())
                    .filter(each -> each.judged().id().equals(id)).toList();
            List<Outcome.Met> met = all.stream().flatMap(each -> each.met().stream())
                    .filter(each -> each.judged().id().equals(id)).toList();
            if (fired.isEmpty()) {
                problems.add(id + ": no case fires it");
            } else if (met.isEmpty() && !card.against().isEmpty()) {
                problems.add(id + ": no case meets it");
            } else if (fired.stream().allMatch(each -> each.comparison().filter(got -> got.margin() < 0).isPresent())) {
                MeasureKind kind = Measures.kinds().get(card.judges());
                near(kind, fired.stream().map(each -> each.comparison().orElseThrow())).ifPresent(gap ->
                        problems.add(id + ": the nearest case beyond its limit is " + gap + " away"));
                near(kind, met.stream().map(each -> each.comparison().orElseThrow())).ifPresent(gap ->
                        problems.add(id + ": the nearest case within its limit is " + gap + " away"));
            }
        });
        assertEquals(Set.of(), problems, () -> String.join("\n", problems));
    }

    /** The gap to the limit where it is too wide for a case at the threshold; what is counted comes no nearer than one. */
    private static Optional<String> near(MeasureKind kind, Stream<Comparison> comparisons) {
        boolean counted = kind.unit().isEmpty() && kind.decimals() == 0;
        double gap = comparisons.mapToDouble(each -> counted && Math.abs(each.margin()) <= 1 ? 0
                : Math.abs(each.margin()) / Math.max(Math.abs(each.limit()), 1e-9)).min().orElse(1);
        return gap <= NEAR ? Optional.empty() : Optional.of(Math.round(gap * 100) + " %");
    }
}
