package fitworthy.book;

import fitworthy.rules.Comparison;
import fitworthy.rules.Comparison.Compared;
import fitworthy.rules.Comparison.Named;
import fitworthy.rules.Condition.Match;
import fitworthy.rules.RuleText;
import java.util.List;
import java.util.stream.Stream;

/** The comparisons of a rule, and which fact each of their sides is asked of. */
final class RuleTerms {

    /** A comparison in the pattern that it stands in. */
    record Asked(Match of, Compared comparison) {}

    private final List<Match> patterns;

    RuleTerms(RuleText rule) {
        patterns = rule.condition().patterns();
    }

    /** Every comparison, in the order of writing. */
    Stream<Asked> comparisons() {
        return patterns.stream().flatMap(match -> match.comparisons().stream()
                .flatMap(Comparison::compared)
                .map(compared -> new Asked(match, compared)));
    }

    /**
     * The pattern of the fact that a property belongs to: the last that bears its name up to there, since the parts of an
     * 'or' may give one name each.
     *
     * @param in the pattern that it stands in
     */
    Match of(Match in, Named named) {
        Match of = in;
        for (Match pattern : named.binding() == null ? List.<Match>of() : patterns) {
            of = named.binding().equals(pattern.binding()) ? pattern : of;
            if (pattern == in) {
                break;
            }
        }
        return of;
    }
}
