package fitworthy.source;

import java.util.Collection;
import java.util.Locale;

/** Small helpers for words in messages. */
public final class Words {

    private Words() {}

    public static String shortened(String text, int most) {
        String oneLine = text.replaceAll("\\p{Cntrl}+", " ");
        return oneLine.length() <= most ? oneLine : oneLine.substring(0, most - 3) + "...";
    }

    /** {@code FRONT_AXLE} or {@code frontAxle} as {@code front-axle}. */
    public static String hyphenated(String javaName) {
        if (javaName.equals(javaName.toUpperCase(Locale.ROOT))) {
            return javaName.toLowerCase(Locale.ROOT).replace('_', '-');
        }
        return javaName.replaceAll("(?<=[a-z0-9])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
    }

    /** The candidate that takes the fewest single-letter edits to reach, or null where none is near. */
    public static String nearest(String word, Collection<String> candidates) {
        String best = null;
        int bestDistance = Math.max(2, word.length() / 2);
        for (String candidate : candidates) {
            int distance = distance(word.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
            if (distance < bestDistance) {
                bestDistance = distance;
                best = candidate;
            }
        }
        return best;
    }

    /** " (did you mean X?)", or nothing where no candidate is near. */
    public static String suggestion(String word, Collection<String> candidates) {
        String near = nearest(word, candidates);
        return near == null ? "" : " (did you mean '" + near + "'?)";
    }

    private static int distance(String a, String b) {
        if (Math.abs(a.length() - b.length()) > 20) {
            return Integer.MAX_VALUE;
        }
        int[] previous = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            previous[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] current = new int[b.length() + 1];
            current[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int swap = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                current[j] = Math.min(swap, Math.min(previous[j], current[j - 1]) + 1);
            }
            previous = current;
        }
        return previous[b.length()];
    }
}
