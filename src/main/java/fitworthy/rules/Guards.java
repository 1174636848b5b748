package fitworthy.rules;

import fitworthy.figures.measure.Measure;
import fitworthy.rules.Comparison.Compared;
import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Comparison.Operator;
import fitworthy.rules.Condition.Match;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What of a rule's condition only says whether its question arises. The judgement is what a rule says of the measure it
 * judges, by a word or by a number that is held against another; all the rest are guards: what it asks of other
 * measures, of practice values alone and of earlier advice. A comparison that comes true as the judged figure gets
 * better is a guard too, since it leaves what is worse to another rule.
 */
public final class Guards {

    /** On which side the judged figure gets worse. */
    public enum Worse {
        HIGHER,
        LOWER,
        /** The rule holds it against nothing that it says. */
        UNTOLD
    }

    private final String judged;
    private final Worse worse;
    private final Condition whole;
    private final Condition guards;
    private final boolean always;
    private final boolean never;
    /** Those of what is said of the judged figure, as {@link #better(Comparison)} tells them. */
    private final Set<Integer> ways;

    private Guards(Condition condition, String judged, Worse worse) {
        this.judged = judged;
        this.worse = worse;
        this.whole = condition;
        this.guards = without(condition);
        this.always = always(guards);
        this.never = addsToAdvice(condition);
        this.ways = condition.patterns().stream()
                .filter(this::judges)
                .flatMap(match -> match.comparisons().stream())
                .flatMap(Guards::parts)
                .map(this::better)
                .collect(Collectors.toSet());
    }

    /** @param judged the name of the measure that the rule judges */
    public static Guards of(Condition condition, String judged, Worse worse) {
        return new Guards(condition, judged, worse);
    }

    /**
     * Whether the question of the rule arises. Of a rule that adds to earlier advice it does so only where it fires:
     * elsewhere that advice is not given, or stands alone, and there is nothing to call in order.
     *
     * @param facts with every measure that the rule looks at, all of them known
     * @param measure the judged one
     */
    public boolean hold(Facts facts, Measure measure) {
        return !never && (always || facts.meet(guards, measure));
    }

    /**
     * Whether the question of the rule may arise, whatever that is which is not known: what lacks then decides nothing. Of
     * a rule that adds to earlier advice, whether it may fire.
     *
     * @param facts with every measure that the rule looks at
     * @param measure the judged one
     */
    public boolean mayHold(Facts facts, Measure measure) {
        return facts.couldMeet(never ? whole : guards, measure);
    }

    /** Whether the rule may fire on the word of a measure that it judges, whatever else is so. */
    public boolean mayFireOn(Measure measure) {
        Facts alone = new Facts(List.of(measure));
        return !measure.isKnown()
                || whole.parts().stream()
                        .filter(part -> part instanceof Match match && judges(match))
                        .map(Match.class::cast)
                        .map(match -> new Match(
                                match.binding(),
                                match.fact(),
                                match.key(),
                                match.comparisons().stream()
                                        .flatMap(Guards::parts)
                                        .filter(comparison -> comparison
                                                .named()
                                                .allMatch(property -> property.binding() == null
                                                        && property.property() == Property.WORD))
                                        .toList()))
                        .allMatch(words -> alone.meet(words, measure));
    }

    /** Whether something that the rule says of the judged figure comes true as it gets worse. */
    public boolean fireAsItGetsWorse() {
        return ways.contains(-1);
    }

    /** Whether something that the rule says of the judged figure comes true as it gets better: the worse is another's. */
    public boolean fireAsItGetsBetter() {
        return ways.contains(1);
    }

    /** Not where each way for it to fire has both advice and the judged measure: these are judged together. */
    private boolean addsToAdvice(Condition condition) {
        if (condition instanceof Condition.Any any) {
            return any.parts().stream().allMatch(this::addsToAdvice)
                    && any.patterns().stream().noneMatch(this::judges);
        }
        return condition instanceof Match match
                ? match.fact() == Fact.ADVISED
                : !(condition instanceof Condition.None)
                        && condition.parts().stream().anyMatch(this::addsToAdvice);
    }

    private Condition without(Condition condition) {
        if (condition instanceof Condition.All all) {
            return new Condition.All(all.parts().stream().map(this::without).toList());
        }
        if (condition instanceof Condition.Any any) {
            return new Condition.Any(any.parts().stream().map(this::without).toList());
        }
        // Inside 'not' and 'exists' any measure of the name is meant, not the judged one alone.
        return condition instanceof Match match && judges(match)
                ? new Match(
                        match.binding(),
                        match.fact(),
                        match.key(),
                        match.comparisons().stream()
                                .flatMap(Guards::parts)
                                .filter(this::guards)
                                .toList())
                : condition;
    }

    private boolean judges(Match match) {
        return match.fact() == Fact.MEASURE && match.key().equals(judged);
    }

    private static Stream<Comparison> parts(Comparison comparison) {
        return comparison instanceof Comparison.Both both
                ? both.parts().stream().flatMap(Guards::parts)
                : Stream.of(comparison);
    }

    private boolean guards(Comparison comparison) {
        return comparison
                        .named()
                        .noneMatch(property -> property.binding() == null
                                && (property.kind() == Property.Kind.NUMBER || property.property() == Property.WORD))
                || better(comparison) > 0;
    }

    /** 1 where it comes true as the judged figure gets better, -1 where as it gets worse, 0 where that is open. */
    private int better(Comparison comparison) {
        if (comparison instanceof Comparison.Not not) {
            return -better(not.part());
        }
        if (comparison instanceof Comparison.Both || comparison instanceof Comparison.Either) {
            List<Comparison> parts = comparison instanceof Comparison.Both both
                    ? both.parts()
                    : ((Comparison.Either) comparison).parts();
            List<Integer> ways = parts.stream().map(this::better).distinct().toList();
            return ways.size() == 1 ? ways.get(0) : 0;
        }
        if (comparison instanceof Compared compared && compared.operator().orders()) {
            int grows = Integer.signum(better(compared.left()) - better(compared.right()));
            return compared.operator() == Operator.ABOVE || compared.operator() == Operator.AT_LEAST ? grows : -grows;
        }
        return 0;
    }

    /** 1 for what is larger where the judged figure is better, -1 for what is smaller. */
    private int better(Comparison.Term term) {
        if (worse == Worse.UNTOLD || !(term instanceof Named named) || named.binding() != null) {
            return 0;
        }
        int left = worse == Worse.HIGHER ? 1 : -1;
        return switch (named.property()) {
            case HEADROOM, SPARE, LIMIT -> left;
            case VALUE, EXCESS -> -left;
            default -> 0;
        };
    }

    /** Whether guards say no more than that every fact is known, as it is; where they ask for advice none of it counts. */
    private static boolean always(Condition condition) {
        if (condition instanceof Condition.All all) {
            return all.parts().stream().allMatch(Guards::always);
        }
        return condition instanceof Match match && match.comparisons().stream().allMatch(Guards::saysKnown);
    }

    /** The only yes or no of a fact is whether it is known. */
    private static boolean saysKnown(Comparison comparison) {
        return comparison instanceof Comparison.Holds || comparison instanceof Comparison.Asked;
    }
}
