package fitworthy.source;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Small helpers for words in messages. */
public final class Words {

    private static final String COMMA = ", ";

    private static final Pattern UNSEEN = Pattern.compile("[\\p{Cc}\\u202A-\\u202E\\u2066-\\u2069]+");
    private static final Pattern HUMP = Pattern.compile("(?<=[a-z0-9])(?=[A-Z])");

    /** A capital that begins a sentence, and no abbreviation. */
    private static final Pattern CAPITAL = Pattern.compile("[A-Z](?![A-Z0-9])");

    private static final int MOST_SUGGESTIONS = 3;

    private Words() {}

    /**
     * The text without what a terminal would obey: control characters, and marks that turn the order of what follows.
     */
    public static String seen(String text) {
        return UNSEEN.matcher(text).replaceAll(" ");
    }

    /** The first few names of a list, and how many more there are. */
    public static String few(List<String> names, int most) {
        return few(names, most, COMMA);
    }

    /** The same of longer texts. @param between what parts one from the next */
    public static String few(List<String> texts, int most, String between) {
        return texts.size() <= most
                ? String.join(between, texts)
                : String.join(between, texts.subList(0, most)) + (between.equals(COMMA) ? " and " : between + "and ")
                        + (texts.size() - most) + " more";
    }

    /** The text on one line, cut where it is longer than {@code most} characters. */
    public static String shortened(String text, int most) {
        String oneLine = seen(text);
        return oneLine.length() <= most ? oneLine : oneLine.substring(0, most - 3) + "...";
    }

    /** {@code FRONT_AXLE} or {@code frontAxle} as {@code front-axle}. */
    public static String hyphenated(String javaName) {
        if (javaName.equals(javaName.toUpperCase(Locale.ROOT))) {
            return javaName.toLowerCase(Locale.ROOT).replace('_', '-');
        }
        return HUMP.matcher(javaName).replaceAll("-").toLowerCase(Locale.ROOT);
    }

    /**
     * The candidate that takes the fewest edits to reach (a letter more, less or other, or two swapped), or null where
     * none is near.
     */
    public static String nearest(String word, Collection<String> candidates) {
        String best = null;
        int bestDistance = Math.min(word.length(), Math.max(2, word.length() / 2));
        for (String candidate : candidates) {
            int distance = distance(word.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
            if (distance < bestDistance) {
                bestDistance = distance;
                best = candidate;
            }
        }
        return best;
    }

    /** The first candidate that is one edit away; null where none is. */
    public static String oneSlip(String word, Collection<String> candidates) {
        return candidates.stream()
                .filter(candidate ->
                        Math.abs(candidate.length() - word.length()) <= 1 && distance(word, candidate) == 1)
                .findFirst()
                .orElse(null);
    }

    /** " (did you mean X?)", or nothing where no candidate is near. */
    public static String suggestion(String word, Collection<String> candidates) {
        String near = nearest(word, candidates);
        return near == null ? "" : " (did you mean '" + near + "'?)";
    }

    /**
     * The same with several candidates where the nearest is not very near, or one has the whole word in it: those too that
     * share a word with it, as {@code front-pressure} does with {@code pressure} and {@code roof tent} with {@code tent}.
     */
    public static String suggestions(String word, Collection<String> candidates) {
        String near = nearest(word, candidates);
        Set<String> words = new HashSet<>(List.of(word.toLowerCase(Locale.ROOT).split("[-_ ]+")));
        boolean within = words.size() == 1
                && candidates.stream().anyMatch(candidate -> List.of(candidate.split("[-_ ]+"))
                        .containsAll(words));
        if (!within && near != null && distance(word.toLowerCase(Locale.ROOT), near.toLowerCase(Locale.ROOT)) <= 2) {
            return suggestion(word, candidates);
        }
        List<String> all = Stream.concat(
                        candidates.stream().filter(candidate -> Stream.of(candidate.split("[-_ ]+"))
                                .anyMatch(part -> part.length() > 2 && words.contains(part))),
                        Stream.ofNullable(near))
                .distinct()
                .limit(MOST_SUGGESTIONS)
                .map(candidate -> "'" + candidate + "'")
                .toList();
        return all.isEmpty() ? "" : " (did you mean " + String.join(" or ", all) + "?)";
    }

    private static int distance(String a, String b) {
        if (Math.abs(a.length() - b.length()) > 20) {
            return Integer.MAX_VALUE;
        }
        int[][] edits = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    edits[i][j] = i + j;
                    continue;
                }
                boolean same = a.charAt(i - 1) == b.charAt(j - 1);
                edits[i][j] =
                        Math.min(edits[i - 1][j - 1] + (same ? 0 : 1), Math.min(edits[i - 1][j], edits[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    edits[i][j] = Math.min(edits[i][j], edits[i - 2][j - 2] + 1);
                }
            }
        }
        return edits[a.length()][b.length()];
    }

    /** The same beginning with a capital. @param text not empty */
    public static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** A text as part of a sentence, not beginning with a capital unless its first word is written in them. */
    public static String small(String text) {
        return CAPITAL.matcher(text).lookingAt()
                ? text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1)
                : text;
    }

    /**
     * Where the first character stands that no person types, or -1. It could make a terminal do what it was not told.
     */
    public static int controlCharacter(String text) {
        for (int i = 0; i < text.length(); i++) {
            char each = text.charAt(i);
            if (Character.isISOControl(each) && each != '\n' && each != '\r' && each != '\t') {
                return i;
            }
        }
        return -1;
    }
}
