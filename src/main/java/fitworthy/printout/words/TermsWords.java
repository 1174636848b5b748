package fitworthy.printout.words;

import fitworthy.figures.room.RoomMeasures;
import fitworthy.quantity.Figure;
import fitworthy.search.Terms;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** What a change saves and loses, each with its sign: mass, range, water, money and time. Different things are not added up. */
public final class TermsWords {

    /** Half a kilogram is told, less is not. */
    private static final double LEAST_MASS = 0.5;

    private static final String NOT_KNOWN = "not known";
    /** What stands for a figure where there is none. */
    static final String NONE = "-";

    private final Terms before;
    private final Terms after;
    private final List<String> words = new ArrayList<>();

    private TermsWords(Terms before, Terms after) {
        this.before = before;
        this.after = after;
    }

    /** What becomes another than before. */
    public static List<String> changed(Terms before, Terms after) {
        TermsWords terms = new TermsWords(before, after);
        terms.masses();
        terms.travel(false);
        terms.money().ifPresent(terms.words::add);
        if (before.leadTime() != after.leadTime()) {
            terms.words.add(terms.leadTime());
        }
        return terms.words;
    }

    /** The same, with range, water, price and lead time where they stay as they are. */
    public static List<String> all(Terms before, Terms after) {
        TermsWords terms = new TermsWords(before, after);
        terms.masses();
        terms.travel(true);
        terms.words.add("parts " + terms.sums()
                + terms.money().map(added -> " (" + added + ")").orElse(""));
        terms.words.add(before.leadTime() == 0 && after.leadTime() == 0 ? "lead time " + NOT_KNOWN : terms.leadTime());
        return terms.words;
    }

    private String sums() {
        if (after.price().isEmpty()) {
            return before.price().isEmpty()
                    ? NOT_KNOWN
                    : "0 " + before.price().keySet().iterator().next();
        }
        return price(after);
    }

    private String leadTime() {
        return "lead time " + change(days(before), days(after)) + " days"
                + (after.leadTimesUnknown() == 0 ? "" : " (" + after.leadTimesUnknown() + " not known)");
    }

    private static String days(Terms terms) {
        return Digits.number(terms.leadTime(), "days", 0);
    }

    private void masses() {
        before.vehicle().keySet().stream()
                .filter(after.vehicle()::containsKey)
                .map(loading -> after.vehicle().get(loading) - before.vehicle().get(loading))
                .reduce((one, other) -> Math.abs(other) > Math.abs(one) ? other : one)
                .ifPresent(difference -> mass("vehicle", difference));
        if (before.trailer().isPresent() && after.trailer().isPresent()) {
            mass("trailer", after.trailer().get() - before.trailer().get());
        }
    }

    private void mass(String what, double difference) {
        if (Math.abs(difference) >= LEAST_MASS) {
            words.add(what + " " + signed(BigDecimal.valueOf(Math.round(difference))) + " kg");
        }
    }

    private void travel(boolean all) {
        row("range", "km", 0, before.range(), after.range(), all);
        row("water", "days", 1, before.water(), after.water(), all);
    }

    /** The loading that loses most of it; where none loses any, the one that wins most, else the one that has least. */
    private void row(
            String what,
            String unit,
            int decimals,
            Map<String, Double> before,
            Map<String, Double> after,
            boolean all) {
        Optional<String> told = before.keySet().stream()
                .filter(after::containsKey)
                .min((one, other) -> {
                    int share = Double.compare(
                            Figure.rounded(share(one, before, after)), Figure.rounded(share(other, before, after)));
                    return share != 0 ? share : Double.compare(before.get(one), before.get(other));
                });
        if (told.isEmpty()) {
            if (all || !before.isEmpty()) {
                words.add(what + " " + NOT_KNOWN);
            }
            return;
        }
        String loading = told.filter(name -> share(name, before, after) < 1)
                .orElseGet(() -> most(before, after).orElse(told.get()));
        String from = number(before.get(loading), unit, decimals);
        String to = number(after.get(loading), unit, decimals);
        if (all || !from.equals(to)) {
            words.add(what + " " + change(from, to) + " " + unit + (before.size() > 1 ? " (" + loading + ")" : ""));
        }
    }

    /** A distance as 'check' tells it, to the safe side. */
    private static String number(double value, String unit, int decimals) {
        double told = unit.equals(RoomMeasures.RANGE.unit()) ? RoomMeasures.RANGE.printed(value, -1) : value;
        return Digits.number(told, unit, decimals);
    }

    private static Optional<String> most(Map<String, Double> before, Map<String, Double> after) {
        return before.keySet().stream()
                .filter(after::containsKey)
                .filter(name -> share(name, before, after) > 1)
                .max((one, other) -> Double.compare(share(one, before, after), share(other, before, after)));
    }

    private static double share(String loading, Map<String, Double> before, Map<String, Double> after) {
        return before.get(loading) > 0 ? after.get(loading) / before.get(loading) : 1;
    }

    private Optional<String> money() {
        Map<String, BigDecimal> added = new TreeMap<>(after.price());
        before.price().forEach((currency, sum) -> added.merge(currency, sum.negate(), BigDecimal::add));
        List<String> sums = added.entrySet().stream()
                .filter(entry -> entry.getValue().signum() != 0)
                .map(entry -> signed(entry.getValue()) + " " + entry.getKey())
                .toList();
        return sums.isEmpty() ? Optional.empty() : Optional.of(String.join(", ", sums));
    }

    private static String signed(BigDecimal number) {
        return (number.signum() > 0 ? "+" : "") + number.toPlainString();
    }

    private static String change(String from, String to) {
        return from.equals(to) ? to : from + " -> " + to;
    }

    /** What everything planned costs, whole units of each currency. */
    public static String price(Terms terms) {
        List<String> sums = new ArrayList<>();
        terms.price().forEach((currency, sum) -> sums.add(sum.toBigInteger() + " " + currency));
        return sums.isEmpty() ? "-" : String.join("+", sums);
    }

    /** The longest lead time that is given. */
    public static String leadTime(Terms terms) {
        return terms.leadTime() == 0 ? "-" : days(terms) + " days";
    }

    /** The range in the loading that has least. */
    public static String range(Terms terms) {
        return least(terms.range(), "km", 0);
    }

    /** How long the water lasts in the loading that has least. */
    public static String water(Terms terms) {
        return least(terms.water(), "days", 1);
    }

    private static String least(Map<String, Double> byLoading, String unit, int decimals) {
        return byLoading.values().stream()
                .min(Double::compare)
                .map(value -> number(value, unit, decimals) + " " + unit)
                .orElse(NONE);
    }

    /** What of some names is not among others, as the end of a list. */
    public static Optional<String> without(String word, Set<String> names, Set<String> others, String said) {
        Set<String> gone = new TreeSet<>(names);
        gone.removeAll(others);
        gone.removeIf(name -> said.contains("'" + name + "'"));
        return gone.isEmpty() ? Optional.empty() : Optional.of(word + " " + "'" + String.join("', '", gone) + "'");
    }
}
