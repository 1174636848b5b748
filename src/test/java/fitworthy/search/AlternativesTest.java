package fitworthy.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Options whose choices bring nothing, so that only their order counts. */
class AlternativesTest {

    private final List<Integer> told = new ArrayList<>();

    private static String option(String name, String taken, int choices) {
        return "  - {name: " + name + (taken.isEmpty() ? "" : ", take: " + taken) + ", choices: ["
                + IntStream.rangeClosed(1, choices)
                        .mapToObj(i -> "{name: " + name + i + "}")
                        .collect(Collectors.joining(", "))
                + "]}\n";
    }

    private Alternatives<Advice> of(String options, List<String> varied, BooleanSupplier stop) throws FaultsException {
        Node.Mapping tree = Sheets.treeWith("options:\n" + options);
        return Alternatives.of(Books.engine(), tree, Sheets.read(tree), varied, advice -> advice, stop, told::add);
    }

    private static List<String> choices(Alternatives<Advice> alternatives) {
        return alternatives.plans().stream()
                .map(plan -> plan.choices().stream().map(Change.Choose::choice).collect(Collectors.joining(" ")))
                .toList();
    }

    /** As written first; then the last option goes on fastest, each round from what is taken. */
    @Test
    void combinationsAreCountedFromThePlanAsWritten() throws FaultsException {
        Alternatives<Advice> all = of(option("a", "a2", 2) + option("b", "b2", 3), List.of("a", "b"), () -> false);
        assertEquals(List.of("a2 b2", "a2 b3", "a2 b1", "a1 b2", "a1 b3", "a1 b1"), choices(all));
        assertEquals(6, all.all());
        assertEquals(List.of(6), told);
    }

    @Test
    void whatIsNotVariedStaysAsWritten() throws FaultsException {
        Alternatives<Advice> some = of(option("a", "a2", 2) + option("b", "b2", 3), List.of("a"), () -> false);
        assertEquals(List.of("a2", "a1"), choices(some));
        assertEquals(
                List.of("b2", "b2"),
                some.plans().stream()
                        .map(plan ->
                                plan.kept().sheet().options().get(1).taken().name())
                        .toList());
    }

    @Test
    void theAdviceIsThatOfTheCombination() throws FaultsException {
        Alternatives<Advice> all = of(option("a", "", 2), List.of("a"), () -> false);
        assertEquals(
                List.of("a1", "a2"),
                all.plans().stream()
                        .map(plan ->
                                plan.kept().sheet().options().get(0).taken().name())
                        .toList());
    }

    /** Told to give up at once it still has the plan as written, and says how many there would be. */
    @Test
    void thePlanAsWrittenIsAlwaysThere() throws FaultsException {
        Alternatives<Advice> one = of(option("a", "", 9) + option("b", "", 9), List.of("a", "b"), () -> true);
        assertEquals(List.of("a1 b1"), choices(one));
        assertEquals(81, one.all());
        assertEquals(List.of(), told);
    }

    /** What is run when time is up leaves no gap in the table. */
    @Test
    void theTableEndsWhereTheFirstIsMissing() throws FaultsException {
        AtomicInteger asked = new AtomicInteger();
        Alternatives<Advice> some = of(option("a", "", 30), List.of("a"), () -> asked.incrementAndGet() > 12);
        List<String> names = choices(some);
        assertEquals(
                IntStream.rangeClosed(1, names.size()).mapToObj(i -> "a" + i).toList(), names);
        assertEquals(30, some.all());
        assertEquals(names.size(), told.get(told.size() - 1));
    }

    /** 20 options of 10 choices have more combinations than a number can hold. */
    @Test
    void aNumberThatNoNumberHoldsIsTheLargest() throws FaultsException {
        List<String> names = IntStream.range(0, 20).mapToObj(i -> "o" + i + "x").toList();
        String options = names.stream().map(name -> option(name, "", 10)).collect(Collectors.joining());
        assertEquals(Long.MAX_VALUE, of(options, names, () -> true).all());
    }

    /** Of a sheet of coordinates alone the others are not read anew, but of one with places in words. */
    @Test
    void eachSheetIsTheOneThatItsTreeIsReadInto() throws FaultsException {
        String trays = "fitments:\n"
                + "  - {name: Short, kind: tray, mass: 90 kg, at: {x: 3000 mm}, front: 2100 mm, length: 1800 mm}\n"
                + "  - {name: Long, kind: tray, mass: 120 kg, at: {x: 3000 mm}, front: 2100 mm, length: 2000 mm}\n"
                + "options:\n"
                + "  - {name: Tray, take: long, choices: [{name: short, parts: [Short]}, {name: long, parts: [Long]}]}\n"
                + "  - {name: Nothing, choices: [{name: a}, {name: b}]}\n";
        for (String place : List.of("{x: 3000 mm}", "in the tray")) {
            Node.Mapping tree = Sheets.treeWith(trays + "cargo:\n  - {name: Box, mass: 20 kg, at: " + place + "}\n");
            Alternatives<Sheet> all = Alternatives.of(
                    Books.engine(),
                    tree,
                    Sheets.read(tree),
                    List.of("Tray", "Nothing"),
                    Advice::sheet,
                    () -> false,
                    told::add);
            assertEquals(4, all.plans().size());
            for (Alternatives.Alternative<Sheet> plan : all.plans()) {
                Node.Mapping chosen = tree;
                for (Change.Choose choice : plan.choices()) {
                    chosen = choice.applied(chosen, plan.kept());
                }
                assertEquals(Sheets.read(chosen), plan.kept());
            }
            assertEquals(
                    place.startsWith("{") ? 1 : 2,
                    all.plans().stream()
                            .map(plan -> plan.kept().cargo())
                            .distinct()
                            .count());
        }
    }
}
