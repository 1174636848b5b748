package fitworthy.figures;

import fitworthy.quantity.Dimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleBinaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Does the sums of a working again from nothing but its printed lines, as a reader with a calculator would. */
final class WorkedOut {

    private static final Pattern INPUT = Pattern.compile(
            ", ([A-Za-z ]+) = (?:about |usual )?(-?[0-9.]+|not known|without bound)(?: " + "([^\\s,]+))?");
    private static final Pattern PART =
            Pattern.compile("(?:= |\\) \\+ )(?:about |usual )?(-?[0-9.]+|not known)(?: (\\S+))? \\(");

    /**
     * A result with the name it has in the line, in the unit of the figures it is put into; no number where one is not
     * known.
     */
    record Result(String name, double value) {}

    private final Map<String, Double> inputs =
            new TreeMap<>(Comparator.comparing(String::length).reversed().thenComparing(Comparator.naturalOrder()));
    private String text;
    private int at;

    private WorkedOut() {}

    /** What the formulas and sums among the lines come to. Tables and look-ups are passed over. */
    static List<Result> results(List<String> lines) {
        List<Result> results = new ArrayList<>();
        for (String line : lines) {
            if (line.matches("[A-Za-z ]+ = .*") && !line.contains("front = mass x") && !line.contains("of the sums")) {
                results.add(new WorkedOut().result(line));
            }
        }
        return results;
    }

    /** Every figure put into a formula, by name; of one that is not known no number. */
    static Map<String, Double> inputs(List<String> lines) {
        Map<String, Double> inputs = new HashMap<>();
        lines.forEach(line -> INPUT.matcher(line)
                .results()
                .forEach(input -> inputs.put(input.group(1), number(input.group(2), input.group(3)))));
        return inputs;
    }

    private static double number(String digits, String unit) {
        return switch (digits) {
            case "not known" -> Double.NaN;
            case "without bound" -> Double.POSITIVE_INFINITY;
            default -> Double.parseDouble(digits) * ("%".equals(unit) ? Dimension.size("%") : 1);
        };
    }

    private Result result(String line) {
        String name = line.substring(0, line.indexOf(" = "));
        if (line.matches("[A-Za-z ]+ = (about |usual )?(-?[0-9.]+|not known)( \\S+)? \\(.*\\)")) {
            double sum = PART.matcher(line)
                    .results()
                    .mapToDouble(part -> number(part.group(1), part.group(2)))
                    .sum();
            return new Result(name, sum);
        }
        Matcher matcher = INPUT.matcher(line);
        int end = matcher.find(name.length() + 3) ? matcher.start() : line.length();
        inputs.putAll(inputs(List.of(line)));
        inputs.put("pi", Math.PI);
        text = line.substring(name.length() + 3, end);
        double value = sum();
        if (at != text.length()) {
            throw new IllegalStateException("cannot go on at " + at + " of " + text);
        }
        return new Result(name, value);
    }

    private double sum() {
        double value = product();
        while (true) {
            if (taken(" + ")) {
                value += product();
            } else if (taken(" - ")) {
                value -= product();
            } else {
                return value;
            }
        }
    }

    private double product() {
        double value = power();
        while (true) {
            if (taken(" x ")) {
                value *= power();
            } else if (taken(" / ")) {
                value /= power();
            } else {
                return value;
            }
        }
    }

    private double power() {
        double base = atom();
        return taken("^") ? Math.pow(base, atom()) : base;
    }

    private double atom() {
        if (taken("(")) {
            return closed(sum(), ")");
        }
        if (taken("|")) {
            return Math.abs(closed(sum(), "|"));
        }
        if (Character.isDigit(text.charAt(at))) {
            Matcher number = Pattern.compile("[0-9.]+").matcher(text);
            number.find(at);
            at = number.end();
            return Double.parseDouble(number.group());
        }
        for (Map.Entry<String, Double> input : inputs.entrySet()) {
            if (text.startsWith(input.getKey(), at)
                    && !letterAt(at + input.getKey().length())) {
                at += input.getKey().length();
                return input.getValue();
            }
        }
        return function();
    }

    private double function() {
        if (text.indexOf('(', at) < 0) {
            throw new IllegalStateException("none of " + inputs.keySet() + " at " + at + " of " + text);
        }
        String name = text.substring(at, text.indexOf('(', at));
        at += name.length() + 1;
        double first = sum();
        double value =
                switch (name) {
                    case "sqrt" -> Math.sqrt(first);
                    case "log" -> Math.log10(first);
                    case "sin" -> Math.sin(Math.toRadians(first));
                    case "cos" -> Math.cos(Math.toRadians(first));
                    case "tan" -> Math.tan(Math.toRadians(first));
                    case "atan" -> Math.toDegrees(Math.atan(first));
                    case "asin" -> Math.toDegrees(Math.asin(first));
                    case "min" -> others(first, Math::min);
                    case "max" -> others(first, Math::max);
                    default ->
                        throw new IllegalStateException("no function or figure is called " + name + " in " + text);
                };
        return closed(value, ")");
    }

    /** Of one figure alone nobody writes the least or the most. */
    private double others(double first, DoubleBinaryOperator chosen) {
        closed(0, ", ");
        double value = chosen.applyAsDouble(first, sum());
        while (taken(", ")) {
            value = chosen.applyAsDouble(value, sum());
        }
        return value;
    }

    private double closed(double value, String by) {
        if (!taken(by)) {
            throw new IllegalStateException(by + " is missing at " + at + " of " + text);
        }
        return value;
    }

    private boolean letterAt(int index) {
        return index < text.length() && Character.isLetter(text.charAt(index));
    }

    private boolean taken(String sign) {
        boolean here = text.startsWith(sign, at);
        at += here ? sign.length() : 0;
        return here;
    }
}
