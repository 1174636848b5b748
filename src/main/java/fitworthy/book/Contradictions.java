package fitworthy.book;

import fitworthy.figures.measure.MeasureKind;
import fitworthy.rules.Comparison;
import fitworthy.rules.Comparison.Compared;
import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Comparison.Operator;
import fitworthy.rules.Comparison.Term;
import fitworthy.rules.Comparison.Text;
import fitworthy.rules.Comparison.Truth;
import fitworthy.rules.Condition.Match;
import fitworthy.rules.Fact;
import fitworthy.rules.Property;
import fitworthy.rules.RuleText;
import fitworthy.source.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds patterns that nothing ever matches, since what they ask for excludes each other. */
final class Contradictions {

    private static final String ZERO = new Comparison.Zero().toString();

    private final RuleTerms terms;
    private final Map<String, MeasureKind> kinds;
    private final Match match;

    private Contradictions(RuleTerms terms, Map<String, MeasureKind> kinds, Match match) {
        this.terms = terms;
        this.kinds = kinds;
        this.match = match;
    }

    /** What the patterns of a rule ask for in vain, at most one fault a pattern. */
    static List<Fault> faults(RuleText rule, Map<String, MeasureKind> kinds) {
        RuleTerms terms = new RuleTerms(rule);
        return rule.condition().patterns().stream()
                .flatMap(match -> new Contradictions(terms, kinds, match).inPattern().stream())
                .map(problem -> new Fault(
                        rule.place(), rule.id(), problem, "one of them, or both with || between them: either may hold"))
                .toList();
    }

    /** A comparison and whether it is to hold. */
    private record Asked(Comparison comparison, boolean is) {

        /** What it is made of; nothing where it has no parts. */
        List<Asked> parts() {
            List<Comparison> parts = comparison instanceof Comparison.Both both
                    ? both.parts()
                    : comparison instanceof Comparison.Either either ? either.parts() : List.of();
            return parts.stream().map(part -> new Asked(part, is)).toList();
        }

        /** Whether one of its parts is enough. */
        boolean ofAny() {
            return comparison instanceof Comparison.Either && is || comparison instanceof Comparison.Both && !is;
        }

        @Override
        public String toString() {
            return (is ? comparison : new Comparison.Not(comparison)).toString();
        }
    }

    private Optional<String> inPattern() {
        Named key = new Named(null, Property.key(match.fact()));
        return problem(
                List.of(new Claim.Says(key + " == \"" + match.key() + "\"", name(key), match.key(), true)),
                match.comparisons().stream()
                        .map(comparison -> new Asked(comparison, true))
                        .toList());
    }

    /** Why nothing matches what is asked and claimed so far, or one way in which it may. */
    private Optional<String> problem(List<Claim> before, List<Asked> asked) {
        List<Claim> claims = new ArrayList<>(before);
        List<Asked> ways = new ArrayList<>();
        asked.forEach(one -> claim(one, claims, ways));
        return clash(claims).or(() -> ways.stream()
                .flatMap(any -> any.parts().stream())
                .flatMap(way -> problem(claims, List.of(way)).stream())
                .findFirst());
    }

    /** @param ways gets what may hold in more than one way */
    private void claim(Asked asked, List<Claim> claims, List<Asked> ways) {
        if (asked.ofAny()) {
            ways.add(asked);
        } else if (asked.comparison() instanceof Comparison.Not not) {
            claim(new Asked(not.part(), !asked.is()), claims, ways);
        } else if (asked.comparison() instanceof Comparison.Holds holds) {
            claims.add(new Claim.Is(asked.toString(), name(holds.property()), asked.is()));
        } else if (asked.comparison() instanceof Compared compared) {
            compared.named().forEach(named -> claims.addAll(always(asked.toString(), named)));
            claims.add(compared(asked.toString(), compared, asked.is()));
        } else {
            asked.parts().forEach(part -> claim(part, claims, ways));
        }
    }

    /** What holds of every property that is compared: its measure is known, and not below zero where it never is. */
    private List<Claim> always(String written, Named named) {
        MeasureKind kind = named.property().fact() == Fact.MEASURE
                ? kinds.get(terms.of(match, named).key())
                : null;
        if (kind == null || named.property() != Property.WORD && named.kind() != Property.Kind.NUMBER) {
            return List.of();
        }
        List<Claim> always = new ArrayList<>();
        always.add(new Claim.Is(written, name(new Named(named.binding(), Property.KNOWN)), true));
        if (named.property() == Property.TOLERANCE || named.property() == Property.VALUE && !kind.isSigned()) {
            String reason = named.property().word() + " of " + kind.name() + " is never below zero";
            always.add(Claim.Order.of(reason, name(named), Operator.AT_LEAST, ZERO, true));
        }
        return always;
    }

    private Claim compared(String written, Compared compared, boolean is) {
        boolean turned = !(compared.left() instanceof Named);
        Term left = turned ? compared.right() : compared.left();
        Term right = turned ? compared.left() : compared.right();
        boolean same = is == (compared.operator() == Operator.EQUAL);
        if (right instanceof Text text) {
            return new Claim.Says(written, name(left), text.text(), same);
        }
        return right instanceof Truth truth
                ? new Claim.Is(written, name(left), truth.is() == same)
                : order(written, compared, is);
    }

    /** Headroom or excess above or below zero says which of limit and value is the larger one. */
    private Claim order(String written, Compared compared, boolean is) {
        String left = name(compared.left());
        String right = name(compared.right());
        if (right.equals(ZERO) && compared.left() instanceof Named named) {
            String value = name(new Named(named.binding(), Property.VALUE));
            String limit = name(new Named(named.binding(), Property.LIMIT));
            boolean headroom = named.property() == Property.HEADROOM;
            if (headroom || named.property() == Property.EXCESS) {
                left = headroom ? limit : value;
                right = headroom ? value : limit;
            }
        }
        return Claim.Order.of(written, left, compared.operator(), right, is);
    }

    /** One name for one property of one fact, however the pattern calls it. */
    private String name(Term term) {
        if (!(term instanceof Named named)) {
            return term.toString();
        }
        Match of = terms.of(match, named);
        String fact = of.fact() == Fact.PRACTICE ? of.key() : of == match ? "" : named.binding();
        return fact + "." + named.property().word();
    }

    private Optional<String> clash(List<Claim> claims) {
        for (int i = 0; i < claims.size(); i++) {
            for (Claim other : claims.subList(i + 1, claims.size())) {
                if (claims.get(i).excludes(other)) {
                    return Optional.of("nothing ever matches '" + claims.get(i).written() + "' together with '"
                            + other.written() + "'");
                }
            }
        }
        return wordless(claims);
    }

    /** Where every word that the measure may say is ruled out. */
    private Optional<String> wordless(List<Claim> claims) {
        MeasureKind kind = match.fact() == Fact.MEASURE ? kinds.get(match.key()) : null;
        if (kind == null || !kind.saysNothingElse()) {
            return Optional.empty();
        }
        String word = name(new Named(null, Property.WORD));
        Set<String> out = claims.stream()
                .filter(Claim.Says.class::isInstance)
                .map(Claim.Says.class::cast)
                .filter(says -> says.of().equals(word) && !says.is())
                .map(Claim.Says::text)
                .collect(Collectors.toSet());
        return out.containsAll(kind.words())
                ? Optional.of("rules out every word that " + kind.name() + " may say")
                : Optional.empty();
    }
}
