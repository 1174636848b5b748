package fitworthy.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.rules.Comparison.Compared;
import fitworthy.rules.Comparison.Holds;
import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Comparison.Operator;
import fitworthy.rules.Comparison.Term;
import fitworthy.rules.Condition.All;
import fitworthy.rules.Condition.Any;
import fitworthy.rules.Condition.Match;
import fitworthy.rules.Property.Kind;
import fitworthy.source.Fault;
import fitworthy.source.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Provide;
import org.drools.drl.ast.descr.AndDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.ConditionalElementDescr;
import org.drools.drl.ast.descr.ExistsDescr;
import org.drools.drl.ast.descr.NotDescr;
import org.drools.drl.ast.descr.OrDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsParserException;

/** What must hold of every rule that is passed, tried on made ones. */
class MadeRulesTest {

    /** The facts that the made conditions may compare with. */
    private static final List<Condition> BOUND = List.of(
            new Match("$a", Fact.MEASURE, "mass.axle", List.of()),
            new Match("$p", Fact.PRACTICE, "mass.gvm-reserve", List.of()));

    @Provide
    Arbitrary<RuleText> rules() {
        return conditions(3, true)
                .map(made -> new RuleText(
                        "mass.gvm-over",
                        new Place("a/a.drl", 1, 0),
                        new All(Stream.concat(BOUND.stream(), Stream.of(made)).toList()),
                        List.of("$a", "$p")))
                .filter(rule -> rule.condition().alternatives(50) <= 50
                        && rule.condition().joined().size() <= 8
                        && rule.condition().patterns().stream()
                                .flatMap(each -> each.comparisons().stream())
                                .allMatch(each -> each.toString().length() <= 300));
    }

    private static Arbitrary<Condition> conditions(int depth, boolean advised) {
        Arbitrary<Condition> pattern = Arbitraries.of(Fact.values())
                .filter(fact -> advised || fact != Fact.ADVISED)
                .flatMap(fact -> comparisons(fact, 2)
                        .list()
                        .ofMaxSize(2)
                        .map(all ->
                                new Match(null, fact, fact == Fact.MEASURE ? "mass.loaded" : "mass.gvm-reserve", all)));
        if (depth == 0) {
            return pattern;
        }
        Arbitrary<Condition> part = conditions(depth - 1, advised);
        return Arbitraries.oneOf(
                pattern,
                part.list().ofMinSize(2).ofMaxSize(3).map(All::new),
                part.list().ofMinSize(2).ofMaxSize(3).map(Any::new),
                part.map(Condition.Some::new),
                conditions(depth - 1, false)
                        .filter(inside -> inside.patterns().stream().noneMatch(Known::compares))
                        .map(Condition.None::new));
    }

    private static Arbitrary<Comparison> comparisons(Fact fact, int depth) {
        Arbitrary<Named> named = Arbitraries.of(inReach(fact));
        Arbitrary<Comparison> compared = Combinators.combine(
                        named,
                        named,
                        Arbitraries.of(Operator.values()),
                        Arbitraries.integers().between(0, 2))
                .as((left, other, operator, way) -> {
                    Term right = way > 0 && other.kind() == left.kind() ? other : literal(left.kind());
                    Operator fit = left.kind() == Kind.NUMBER || !operator.orders() ? operator : Operator.UNEQUAL;
                    return way == 2 ? new Compared(right, fit, left) : new Compared(left, fit, right);
                });
        Arbitrary<Comparison> holds = Arbitraries.of(new Holds(new Named("$a", Property.KNOWN)));
        if (depth == 0) {
            return Arbitraries.oneOf(compared, holds);
        }
        Arbitrary<Comparison> part = comparisons(fact, depth - 1);
        return Arbitraries.oneOf(
                compared,
                holds,
                part.map(Comparison.Not::new),
                part.list().ofMinSize(2).ofMaxSize(3).map(Comparison.Both::new),
                part.list().ofMinSize(2).ofMaxSize(3).map(Comparison.Either::new));
    }

    /** What a pattern over a fact may name. */
    private static List<Named> inReach(Fact fact) {
        List<Named> inReach = new ArrayList<>();
        for (Property each : Property.values()) {
            if (each.fact() == fact) {
                inReach.add(new Named(null, each));
            }
            if (each.fact() != Fact.ADVISED) {
                inReach.add(new Named(each.fact() == Fact.MEASURE ? "$a" : "$p", each));
            }
        }
        return inReach;
    }

    private static Term literal(Kind kind) {
        return switch (kind) {
            case TEXT -> new Comparison.Text("front axle");
            case NUMBER -> new Comparison.Zero();
            case TRUTH -> new Comparison.Truth(true);
        };
    }

    private static RuleText read(RuleText rule) {
        List<Fault> faults = new ArrayList<>();
        List<RuleText> read = RuleParser.parse("a/a.drl", rule.toString(), Set.of("mass.axle", "mass.loaded"), faults);
        assertEquals(List.of(), faults, rule::toString);
        return read.get(0);
    }

    /** The seed is fixed, so that a build tries the same rules each time. */
    @net.jqwik.api.Property(tries = 500, seed = "20270101")
    void whatIsPrintedIsReadAgainAsTheSame(@ForAll("rules") RuleText rule) {
        assertEquals(rule, read(rule));
    }

    /** What is passed is compiled by the engine, which reads it by a parser of its own. */
    @net.jqwik.api.Property(tries = 200, seed = "20270101")
    void theEngineReadsTheSame(@ForAll("rules") RuleText rule) throws DroolsParserException {
        DrlParser parser = new DrlParser();
        BaseDescr condition =
                parser.parse(false, rule.toString()).getRules().get(0).getLhs();
        assertFalse(parser.hasErrors(), rule::toString);
        assertEquals(shape(read(rule).condition()), shape(condition));
    }

    /** A condition with brackets around whatever is joined; what is joined by the same word is one list. */
    private static String shape(Condition condition) {
        if (condition instanceof Match match) {
            return match.toString();
        }
        String word = condition.getClass().getSimpleName();
        return shape(word, condition.parts().stream().map(MadeRulesTest::shape).toList());
    }

    private static String shape(BaseDescr element) {
        if (element instanceof PatternDescr pattern) {
            return (pattern.getIdentifier() == null ? "" : pattern.getIdentifier() + " : ")
                    + pattern.getObjectType() + "("
                    + pattern.getDescrs().stream()
                            .map(each -> each.toString().strip())
                            .collect(Collectors.joining(", "))
                    + ")";
        }
        String word = element instanceof AndDescr
                ? "All"
                : element instanceof OrDescr
                        ? "Any"
                        : element instanceof NotDescr ? "None" : element instanceof ExistsDescr ? "Some" : "other";
        return shape(
                word,
                ((ConditionalElementDescr) element)
                        .getDescrs().stream()
                                .map(each -> shape((BaseDescr) each))
                                .toList());
    }

    private static String shape(String word, List<String> parts) {
        List<String> flat = parts.stream()
                .flatMap(each -> each.startsWith(word + "[") && !word.equals("None") && !word.equals("Some")
                        ? Arrays.stream(each.substring(word.length() + 1, each.length() - 1)
                                .split("; "))
                        : Stream.of(each))
                .toList();
        boolean alone = flat.size() == 1 && (word.equals("All") || word.equals("Any"));
        return alone ? flat.get(0) : word + "[" + String.join("; ", flat) + "]";
    }
}
