package fitworthy.proof;

import fitworthy.advice.Outcome.Reason;
import fitworthy.book.Book;
import fitworthy.book.Practice;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.plan.PracticeId;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.QuantityText;
import fitworthy.rules.Comparison;
import fitworthy.rules.Condition;
import fitworthy.rules.Condition.Match;
import fitworthy.rules.Facts;
import fitworthy.source.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Whether the cases would notice, were a value of the book a little other than it is: one of them has to come out
 * differently with a value a twentieth higher, and one with a value a twentieth lower. So each value has a case in
 * which its rule fires and one in which it does not, each with the figure that is compared with it close by, whatever
 * else the rule looks at.
 */
final class ValueReview {

    /** How near to a value, as a share of it, the cases on both its sides have to come. */
    private static final double NEAR = 0.05;

    /** So that a case at just that distance counts, which rounding may put either side of it. */
    private static final double AND_A_HAIR = 1 + 1e-9;

    /** Speed symbols stand so far apart that none may come nearer to a speed than the next one. */
    private static final String SYMBOL_UNIT = "km/h";

    private static final double SYMBOL_STEP = 10;

    /** From which difference on, as a share of what held before, a value is to be looked at twice. */
    private static final double FAR = 0.5;

    private final List<CaseResult> trials;
    private final List<Fault> faults;
    private final List<Fault> reminders;

    ValueReview(List<CaseResult> trials, List<Fault> faults, List<Fault> reminders) {
        this.trials = trials;
        this.faults = faults;
        this.reminders = reminders;
    }

    void look(Book book) {
        BookValue.all(book).forEach(this::value);
    }

    private void value(BookValue value) {
        if (value.value().none()) {
            none(value);
            return;
        }
        if (value.users().isEmpty()) {
            // It decides only whether a figure is asked, which the cases that ask it hold.
            return;
        }
        List<Match> comparing = comparing(value);
        if (comparing.isEmpty()) {
            figured(value);
        } else if (comparing.stream().allMatch(match -> match.key().equals(value.id()))) {
            answer(value);
        } else {
            far(value);
            double step = step(value, comparing);
            side(value, step, "above");
            if (value.number() > 0 || below(value)) {
                side(value, -step, "below");
            }
        }
    }

    /** Where no such limit applies, none of its rules has anything to say: each needs a case that shows it. */
    private void none(BookValue value) {
        List<String> unseen = value.users().stream()
                .filter(rule -> value.book().retired(rule, value.value().from()).isEmpty())
                .filter(rule -> trials(value).noneMatch(trial -> silenced(trial, rule)))
                .toList();
        if (!unseen.isEmpty()) {
            faults.add(value.tell(
                    "no case of " + where(value) + " shows that it silences " + String.join(" and ", unseen),
                    "for each a case in which it would fire with another value, with it under 'does-not-apply'; or,"
                            + " where it has to go on, a value rather than 'none'"));
        }
    }

    private static boolean silenced(CaseResult trial, String rule) {
        return trial.text().text().doesNotApply().contains(rule)
                && trial.advice().doesNotApply().stream()
                        .anyMatch(off -> off.reason() == Reason.NO_SUCH_LIMIT
                                && off.judged().id().equals(rule));
    }

    /** A value that no rule compares with makes figures: what those come to, the case says. */
    private void figured(BookValue value) {
        if (saysNo(value)) {
            faults.add(value.tell(
                    "no rule compares " + value.value().value() + " of " + where(value)
                            + " with anything, so that a no fires as a yes does",
                    "value > 0 in the rule: Practice(id == \"" + value.id() + "\", value > 0)"));
        } else if (trials(value).noneMatch(trial -> trial.advice().findings().stream()
                .anyMatch(finding -> value.users().contains(finding.judged().id())))) {
            faults.add(value.tell(
                    "no case of " + where(value) + " fires a rule whose figures are worked out with it",
                    "a case whose 'expect' gives the value or the margin that they come to"));
        }
    }

    /** A no that neither a rule compares with anything nor the figures ask for. */
    private static boolean saysNo(BookValue value) {
        return value.number() == 0
                && value.entry().unit().isEmpty()
                && Stream.of(PracticeId.values()).noneMatch(asked -> asked.id().equals(value.id()));
    }

    /** A yes or no: one or none, which rules ask for. */
    private void answer(BookValue value) {
        if (!turned(value, value.number() > 0 ? 0 : 1)) {
            faults.add(value.tell(
                    "no case of " + where(value) + " would come out otherwise, were it not "
                            + value.value().value(),
                    value.number() > 0
                            ? "a case in which the rule fires"
                            : "a case in which the rule would fire, with the rule under 'does-not-apply'"));
        }
    }

    private void side(BookValue value, double step, String side) {
        if (!turned(value, value.number() + step * AND_A_HAIR)) {
            String shown = QuantityText.shown(value.number() + step, unit(value));
            faults.add(value.tell(
                    "no case of " + where(value) + " comes within " + apart(value, step) + " " + side + " "
                            + value.value().value(),
                    "a case in which the figure is between "
                            + (step < 0
                                    ? shown + " and " + value.value().value()
                                    : value.value().value() + " and " + shown)
                            + " and nothing else keeps the rule from firing"));
        }
    }

    /** The unit in which a value is written, which need not be that in which it is printed. */
    private static String unit(BookValue value) {
        String[] written = value.value().value().split(" ", 2);
        return written.length < 2 ? value.entry().unit() : written[1];
    }

    private static String apart(BookValue value, double step) {
        return Math.abs(step) == NEAR * value.number()
                ? "5 %"
                : QuantityText.shown(Math.abs(step), value.entry().unit());
    }

    private static String where(BookValue value) {
        return value.value().region() + " from " + value.value().from();
    }

    /** How far from it a case may be: what is counted comes no nearer than one, and of nothing there is no share. */
    private static double step(BookValue value, List<Match> comparing) {
        String unit = value.entry().unit();
        boolean counted = unit.isEmpty()
                && comparing.stream()
                        .map(match -> Measures.kinds().get(match.key()))
                        .filter(Objects::nonNull)
                        .allMatch(kind -> kind.unit().isEmpty() && kind.decimals() == 0);
        if (unit.equals(SYMBOL_UNIT)) {
            return SYMBOL_STEP * Dimension.size(unit);
        }
        return counted || value.number() == 0 || below(value) ? Dimension.size(unit) : NEAR * value.number();
    }

    /** Whether there is less than nothing of it, as of a temperature. */
    private static boolean below(BookValue value) {
        return Dimension.ofUnit(value.entry().unit()) == Dimension.TEMPERATURE;
    }

    /** Whether a rule fires in a case and would not, or the other way about, were the value another. */
    private boolean turned(BookValue value, double other) {
        return trials(value).anyMatch(trial -> value.users().stream()
                .filter(id -> Book.topic(id).equals(trial.text().topic()))
                .anyMatch(id -> turned(trial, value, id, other)));
    }

    private static boolean turned(CaseResult trial, BookValue value, String rule, double other) {
        if (value.book().retired(rule, trial.text().sheet().asOf()).isPresent()) {
            return false;
        }
        Condition condition = value.book().condition(rule);
        String judged = value.book().cards().get(rule).judges();
        return trial.advice().facts().values().stream().anyMatch(facts -> {
            Facts as = new Facts(facts);
            Facts moved = new Facts(facts.stream()
                    .map(fact -> fact instanceof Practice one && one.id().equals(value.id()) ? with(one, other) : fact)
                    .toList());
            return facts.stream()
                    .filter(Measure.class::isInstance)
                    .map(Measure.class::cast)
                    .filter(measure -> measure.getName().equals(judged))
                    .anyMatch(measure -> as.meet(condition, measure) != moved.meet(condition, measure));
        });
    }

    private static Practice with(Practice practice, double value) {
        return new Practice(
                practice.id(), value, practice.unit(), practice.meaning(), practice.entry(), practice.house());
    }

    private Stream<CaseResult> trials(BookValue value) {
        return trials.stream()
                .filter(trial -> value.users().stream()
                        .anyMatch(id -> Book.topic(id).equals(trial.text().topic())))
                .filter(value::holdsIn);
    }

    /** The patterns of rules in which a value is compared. */
    private static List<Match> comparing(BookValue value) {
        List<Match> comparing = new ArrayList<>();
        for (String rule : value.users()) {
            List<Match> patterns = value.book().rules().get(rule).condition().patterns();
            List<String> names = patterns.stream()
                    .filter(match -> match.key().equals(value.id()) && match.binding() != null)
                    .map(Match::binding)
                    .toList();
            patterns.stream()
                    .filter(match -> match.key().equals(value.id())
                            ? !match.comparisons().isEmpty()
                            : match.comparisons().stream()
                                    .flatMap(Comparison::named)
                                    .anyMatch(named -> names.contains(named.binding())))
                    .forEach(comparing::add);
        }
        return comparing;
    }

    /** A value more than half away from what held before is often a slip of the pen; a note that names that is none. */
    private void far(BookValue value) {
        value.before()
                .filter(old -> !old.none())
                .filter(old -> isFar(value.number(), value.entry().number(old.value())))
                .filter(old -> !value.value().note().contains(old.value()))
                .ifPresent(old -> reminders.add(value.tell(
                        old.value() + " of " + old.region() + " became "
                                + value.value().value() + " of " + where(value) + ", which is more than half away",
                        "the value as its source has it; where it is right, a 'note' that names " + old.value())));
    }

    /** Whether a value is that far from what held before it. */
    static boolean isFar(double value, double before) {
        return Math.abs(value - before) > FAR * Math.abs(before);
    }
}
