package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.MadeSheet;
import fitworthy.Sheets;
import fitworthy.advice.Outcome.Finding;
import fitworthy.advice.remedy.Doing;
import fitworthy.advice.remedy.ElectricalRemedies;
import fitworthy.advice.remedy.RemedyTable;
import fitworthy.book.House;
import fitworthy.book.Severity;
import fitworthy.engine.RuleEngine;
import fitworthy.figures.electrical.ElectricalMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.printout.words.Wording;
import fitworthy.proof.Cases;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Mark;
import fitworthy.quantity.Missing;
import fitworthy.quantity.QuantityText;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.Trees;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import net.jqwik.api.RandomGenerator;
import net.jqwik.api.sessions.JqwikSession;
import org.junit.jupiter.api.Test;

/**
 * A remedy that names a figure, or the field for what something stands in, is done as it is printed, and the sheet judged anew: its finding is gone, no other of the
 * same rule and none as severe against the same measure has come, and nothing is above a limit of mass that was not.
 * With {@code -Dremedies=all} on every sheet of the cases, the scenarios and five hundred made ones; else on two cases of
 * each rule and a few made sheets.
 */
class RemedyDoneTest {

    private static final boolean ALL = System.getProperty("remedies", "").equals("all");
    private static final int CASES_A_RULE = ALL ? Integer.MAX_VALUE : 2;
    private static final int MADE = ALL ? 500 : 25;

    /** A sheet with the house's values it is judged by. */
    private record Told(String name, Node.Mapping tree, Sheet sheet, House house) {
        Advice advice() throws FaultsException {
            return Adviser.advise(Books.engine().with(house), sheet);
        }
    }

    @Test
    void whatARemedyTellsToWriteCanBeDoneOrSaysWhyNot() throws FaultsException {
        Set<String> named = Books.shipped().cards().entrySet().stream()
                .filter(card -> tellsWhatToWrite(card.getValue().remedy())
                        || card.getValue().inRegion().stream().anyMatch(own -> tellsWhatToWrite(own.remedy())))
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> known = new TreeSet<>(RemedyTable.doings().keySet());
        known.addAll(RemedyTable.onlyTold().keySet());
        assertEquals(named, known);
        assertEquals(
                named.size(),
                RemedyTable.doings().size() + RemedyTable.onlyTold().size());
    }

    private static boolean tellsWhatToWrite(String remedy) {
        return remedy.replace("{subject}", "").replace("{case}", "").contains("{") || remedy.contains("under 'in'");
    }

    @Test
    void aRemedyDoneAsPrintedClearsItsFinding() throws FaultsException {
        Set<String> done = new TreeSet<>();
        List<String> problems = new ArrayList<>();
        Map<String, Integer> tried = new HashMap<>();
        for (Cases.Case each : Books.cases()) {
            Set<String> ids = new LinkedHashSet<>();
            each.text().expect().stream()
                    .map(Cases.Expected::id)
                    .filter(id -> ALL || tried.merge(id, 1, Integer::sum) <= CASES_A_RULE)
                    .forEach(ids::add);
            ids.retainAll(RemedyTable.doings().keySet());
            if (ALL || !ids.isEmpty()) {
                judge(new Told(each.toString(), each.tree(), each.sheet(), each.house()), ids, done, problems);
            }
        }
        for (String each : List.of("touring", "overloaded", "weekender")) {
            Node.Mapping tree = Sheets.scenario(each);
            judge(new Told(each, tree, Sheets.read(tree), House.NONE), Set.of(), done, problems);
        }
        for (MadeSheet each : made()) {
            judge(new Told(each.toString(), each.tree(), each.sheet(), House.NONE), Set.of(), done, problems);
        }
        assertTrue(problems.isEmpty(), () -> problems.size() + " of them\n" + String.join("\n", problems));
        assertEquals(RemedyTable.doings().keySet().stream().collect(Collectors.toCollection(TreeSet::new)), done);
    }

    /** Whatever finding of a circuit it stands in, and whatever else is wrong with its cable and its fuse. */
    @Test
    void oneCableAndFuseSettleAllThatIsWrongWithACircuit() throws FaultsException {
        List<String> problems = new ArrayList<>();
        int several = 0;
        for (Cases.Case each : Books.cases()) {
            if (each.text().expect().stream()
                    .noneMatch(expected -> expected.id().startsWith("electrical."))) {
                continue;
            }
            Told told = new Told(each.toString(), each.tree(), each.sheet(), each.house());
            Advice before = told.advice();
            for (Finding finding : before.findings()) {
                if (!isOfCableAndFuse(finding)) {
                    continue;
                }
                String circuit = Circuit.named(finding.judged().subject());
                several += suitedOf(circuit, before).size() > 1 ? 1 : 0;
                for (Node.Mapping way :
                        ElectricalRemedies.SUITED.ways(told.tree(), told.sheet(), finding, Wording.remedy(finding))) {
                    Advice after = Adviser.advise(Books.engine().with(told.house()), Sheets.read(way));
                    suitedOf(circuit, after)
                            .forEach(left -> problems.add(finding.key() + " in " + each + ": " + Wording.order(finding)
                                    + " leaves " + left.key() + ", " + Wording.order(left)));
                }
            }
        }
        assertEquals(List.of(), problems);
        assertTrue(several > 20, "only " + several + " beside others of their circuit");
    }

    private static List<Finding> suitedOf(String circuit, Advice advice) {
        return advice.findings().stream()
                .filter(finding -> isOfCableAndFuse(finding))
                .filter(finding -> Circuit.named(finding.judged().subject()).equals(circuit))
                .toList();
    }

    private static boolean isOfCableAndFuse(Finding finding) {
        return finding.judged().card().about().contains(ElectricalMeasures.CABLE_AND_FUSE);
    }

    private static List<MadeSheet> made() {
        List<MadeSheet> made = new ArrayList<>();
        JqwikSession.run(() -> {
            RandomGenerator<MadeSheet> sheets = MadeSheet.any().generator(1000);
            Random random = new Random(20261128);
            for (int i = 0; i < MADE; i++) {
                made.add(sheets.next(random).value());
            }
        });
        return made;
    }

    /** @param ids the rules whose remedies are done; all where empty */
    private static void judge(Told told, Set<String> ids, Set<String> done, List<String> problems)
            throws FaultsException {
        Advice before = told.advice();
        for (Finding finding : before.findings()) {
            String id = finding.judged().id();
            if (!(ids.isEmpty() || ids.contains(id))) {
                continue;
            }
            for (Doing doing : RemedyTable.doings().getOrDefault(id, List.of())) {
                List<Node.Mapping> ways = doing.ways(told.tree(), told.sheet(), finding, Wording.remedy(finding));
                if (ways.isEmpty()) {
                    continue;
                }
                List<String> wrong = new ArrayList<>();
                for (Node.Mapping way : ways) {
                    String faults = wrong(told.house(), before, finding, way);
                    if (faults.isEmpty()) {
                        wrong.clear();
                        break;
                    }
                    wrong.add(faults);
                }
                done.add(id);
                if (!wrong.isEmpty()) {
                    problems.add(finding.key() + " in " + told.name() + "\n   " + Wording.remedy(finding) + "\n   "
                            + wrong.stream().distinct().collect(Collectors.joining("; ")));
                }
            }
        }
    }

    /** One that is lighter than the planned one can be is another, of which nobody says how light it can be. */
    private static Node.Mapping otherTrailer(Node.Mapping tree) {
        NodePath lightest = NodePath.of("trailer", "lightest");
        NodePath mass = NodePath.of("trailer", "mass");
        return mass.in(tree) instanceof Node.Scalar now
                        && lightest.in(tree) instanceof Node.Scalar least
                        && kilograms(now) < kilograms(least)
                ? Trees.without(tree, lightest)
                : tree;
    }

    private static double kilograms(Node.Scalar text) {
        try {
            return QuantityText.parse(Mark.read(text.text()).text(), Dimension.MASS)
                    .value();
        } catch (QuantityText.Unreadable e) {
            return Double.NaN;
        }
    }

    private static String wrong(House house, Advice before, Finding finding, Node.Mapping changed)
            throws FaultsException {
        RuleEngine engine = Books.engine().with(house);
        Advice after;
        try {
            after = Adviser.advise(engine, Sheets.read(otherTrailer(changed)));
        } catch (FaultsException e) {
            return "makes no sheet: " + e.getMessage();
        }
        List<String> wrong = new ArrayList<>();
        Set<Outcome.Key> old = new HashSet<>();
        before.findings().forEach(found -> old.add(found.key()));
        Predicate<Finding> knownAsBad = now -> before.findings().stream()
                .anyMatch(was -> was.judged()
                                .measure()
                                .getName()
                                .equals(now.judged().measure().getName())
                        && was.judged().subject().equals(now.judged().subject())
                        && was.judged().loadCase().equals(now.judged().loadCase())
                        && !was.key().equals(finding.key())
                        && severity(was).compareTo(severity(now)) <= 0);
        // Of what is at least so much over nothing can be said once the known part is within the limit.
        boolean known = !finding.judged().measure().isAtLeast()
                && finding.evidence().stream().noneMatch(Measure::isAtLeast);
        if (known
                && after.notAssessed().stream()
                        .filter(open -> open.key().equals(finding.key()))
                        .anyMatch(open -> !asked(before).containsAll(open.missing()))) {
            wrong.add("cannot be assessed any more, for want of what nobody was asked for");
        }
        for (Finding now : after.findings()) {
            if (now.key().equals(finding.key())) {
                wrong.add("is still there: " + now.comparison());
            } else if (!old.contains(now.key())
                    && !knownAsBad.test(now)
                    && (now.judged().id().equals(finding.judged().id())
                            || ofItsKind(now, finding)
                            || isOverMass(now))) {
                wrong.add("brings " + now.key() + " " + now.comparison());
            }
        }
        return String.join(", ", wrong);
    }

    private static Set<Missing> asked(Advice advice) {
        return advice.notAssessed().stream()
                .flatMap(open -> open.missing().stream())
                .collect(Collectors.toSet());
    }

    private static boolean ofItsKind(Finding now, Finding finding) {
        return now.judged()
                        .measure()
                        .getName()
                        .equals(finding.judged().measure().getName())
                && severity(now).compareTo(severity(finding)) <= 0;
    }

    private static boolean isOverMass(Finding now) {
        return severity(now) == Severity.STOP && now.judged().id().matches("mass\\..*|(tyres|towing)\\..*-over");
    }

    private static Severity severity(Finding finding) {
        return finding.judged().card().severity().value();
    }
}
