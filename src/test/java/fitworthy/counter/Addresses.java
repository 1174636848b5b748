package fitworthy.counter;

import java.net.http.HttpResponse;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The addresses that the pages of a counter lead to, whatever views there are. */
final class Addresses {

    private static final Pattern LINK = Pattern.compile("(?:href|hx-get|action|hx-post|src)=\"(/[^\"#]*)");

    private Addresses() {}

    /** Those that a page names. */
    static Set<String> in(String html) {
        Set<String> found = new TreeSet<>();
        Matcher links = LINK.matcher(html);
        while (links.find()) {
            found.add(links.group(1).replace("&amp;", "&"));
        }
        return found;
    }

    /** Everything that is got by following links of the wanted kind from a page on; what cannot be got is left out. */
    static Map<String, HttpResponse<String>> from(Served served, String first, int most, Predicate<String> wanted)
            throws Exception {
        Map<String, HttpResponse<String>> got = new LinkedHashMap<>();
        Deque<String> open = new ArrayDeque<>(Set.of(first));
        Set<String> seen = new TreeSet<>(open);
        while (!open.isEmpty() && got.size() < most) {
            String address = open.remove();
            HttpResponse<String> answer = served.get(address);
            if (answer.statusCode() != 405) {
                got.put(address, answer);
            }
            in(answer.body()).stream().filter(wanted).filter(seen::add).forEach(open::add);
        }
        return got;
    }
}
