package fitworthy.rules;

import fitworthy.book.Book;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which way a practice value has to move for its rules to fire sooner, read off their comparisons. */
public enum Stricter {
    HIGHER,
    LOWER,
    /** No rule compares it, or two rules pull in different ways. */
    UNTOLD;

    private static final Pattern COMPARISON =
            Pattern.compile("(\"[^\"]*\"|\\$?[\\w.]+)\\s*(==|!=|<=|>=|<|>)\\s*(\"[^\"]*\"|\\$?[\\w.]+)");
    private static final Pattern NEGATION = Pattern.compile("!(?!=)");

    /** Which way is stricter for a practice value of a book. */
    public static Stricter of(Book book, String practice) {
        Set<Stricter> found = EnumSet.noneOf(Stricter.class);
        book.rules().values().stream()
                .filter(rule -> rule.practice().contains(practice))
                .forEach(rule -> {
                    Condition condition = book.condition(rule.id());
                    Set<String> names = new HashSet<>();
                    names(condition, practice, names);
                    condition(condition, practice, names, true, found);
                });
        return found.size() == 1 ? found.iterator().next() : UNTOLD;
    }

    /** The names under which a rule compares the value. */
    private static void names(Condition condition, String practice, Set<String> names) {
        if (condition instanceof Condition.Match match) {
            if (means(match, practice) && match.binding() != null) {
                names.add(match.binding() + ".value");
            }
        } else {
            Condition.parts(condition).forEach(each -> names(each, practice, names));
        }
    }

    private static boolean means(Condition.Match match, String practice) {
        return match.fact().equals("Practice") && match.key().equals(practice);
    }

    private static void condition(
            Condition condition, String practice, Set<String> names, boolean fires, Set<Stricter> found) {
        if (condition instanceof Condition.Match match) {
            Set<String> here = new HashSet<>(names);
            if (means(match, practice)) {
                here.add("value");
            }
            match.comparisons().forEach(each -> comparison(each, here, fires, found));
        }
        boolean inside = fires ^ condition instanceof Condition.None;
        Condition.parts(condition).forEach(each -> condition(each, practice, names, inside, found));
    }

    private static void comparison(String text, Set<String> names, boolean fires, Set<Stricter> found) {
        boolean negated = NEGATION.matcher(text).find();
        Matcher matcher = COMPARISON.matcher(text);
        while (matcher.find()) {
            boolean left = names.contains(matcher.group(1));
            boolean right = names.contains(matcher.group(3));
            if (left || right) {
                char operator = matcher.group(2).charAt(0);
                boolean plain = operator != '=' && operator != '!' && left != right && !negated;
                // Raising the larger side of a comparison makes it come true.
                boolean raised = left == (operator == '>');
                found.add(!plain ? UNTOLD : raised == fires ? HIGHER : LOWER);
            }
        }
    }
}
