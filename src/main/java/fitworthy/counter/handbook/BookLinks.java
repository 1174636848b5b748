package fitworthy.counter.handbook;

import fitworthy.book.Book;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Where a link within the whole handbook leads to, now that each rule and each chapter has a page of its own. */
final class BookLinks {

    private static final Pattern WITHIN = Pattern.compile("(?<=<a href=\")#([^\"]+)(?=\")");

    private static final Pattern ID = Pattern.compile("(?<= id=\")[^\"]+(?=\")");

    private BookLinks() {}

    /** The ids that markup has. */
    static Set<String> ids(String html) {
        return ID.matcher(html).results().map(MatchResult::group).collect(Collectors.toSet());
    }

    /** Markup with the links of its pages in place of those within one. @param here the ids on this very page */
    static String to(String html, Set<String> here, Book book) {
        return WITHIN.matcher(html)
                .replaceAll(link -> Matcher.quoteReplacement(
                        here.contains(link.group(1)) ? "#" + link.group(1) : to(link.group(1), book)));
    }

    private static String to(String id, Book book) {
        if (book.cards().containsKey(id)) {
            return "/book/rules/" + id;
        }
        if (book.practice().containsKey(id)) {
            return "/book/chapters/practice#" + id;
        }
        if (id.startsWith("source-")) {
            return "/book/chapters/sources#" + id;
        }
        return id.startsWith("region-") ? "/book/chapters/confirm#" + id : "/book/chapters/" + id;
    }
}
