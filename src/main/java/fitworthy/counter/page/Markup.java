package fitworthy.counter.page;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;

/**
 * A text of a template in its elements, as a browser has them, so that of the next one only what differs has to be sent.
 * Every element is closed in it, but for those that hold nothing.
 */
public final class Markup {

    private static final Set<String> HOLD_NOTHING = Set.of("input", "br", "hr", "img", "wbr");

    private final String html;
    private final int begin;
    /** Where what it holds begins and ends; both its end where it is no element, or holds nothing. */
    private int inner;

    private int innerEnd;
    private int end;
    /** Elements, and what is written between them. */
    private List<Markup> parts = List.of();

    private Markup(String html, int begin, int end) {
        this.html = html;
        this.begin = begin;
        this.inner = end;
        this.innerEnd = end;
        this.end = end;
    }

    public static Markup of(String html) {
        Markup all = new Markup(html, 0, html.length());
        all.inner = 0;
        all.parts = new ArrayList<>();
        Deque<Markup> open = new ArrayDeque<>(List.of(all));
        int at = 0;
        while (at < html.length()) {
            int tag = html.indexOf('<', at);
            if (tag != at) {
                int to = tag < 0 ? html.length() : tag;
                open.peek().parts.add(new Markup(html, at, to));
                at = to;
            } else {
                at = tagEnd(html, tag);
                if (html.charAt(tag + 1) == '/') {
                    Markup closed = open.pop();
                    closed.innerEnd = tag;
                    closed.end = at;
                } else {
                    Markup element = new Markup(html, tag, at);
                    open.peek().parts.add(element);
                    if (html.charAt(at - 2) != '/' && !HOLD_NOTHING.contains(element.name())) {
                        element.parts = new ArrayList<>();
                        open.push(element);
                    }
                }
            }
        }
        return all;
    }

    /** Behind the tag: a sign for its end may stand in a value. */
    private static int tagEnd(String html, int tag) {
        boolean quoted = false;
        int at = tag;
        while (quoted || html.charAt(at) != '>') {
            quoted ^= html.charAt(at) == '"';
            at++;
        }
        return at + 1;
    }

    private String name() {
        int to = begin + 1;
        while (Character.isLetterOrDigit(html.charAt(to))) {
            to++;
        }
        return html.substring(begin + 1, to);
    }

    /**
     * What it holds, where a page shows another text already: of an element that holds parts as they stood before, those are
     * left out, and a template says first where all came from. It says how many nodes the element had, then of each it
     * has now, in order, {@code 3-9} for the old ones from the fourth to the ninth, {@code 4} where what is sent goes
     * into the fifth, {@code +} where that is new, and {@code _} for a space.
     */
    public String since(Markup before) {
        String whole = html.substring(inner, innerEnd);
        int[] from = origins(before);
        StringBuilder said = new StringBuilder().append(before.parts.size());
        StringBuilder sent = new StringBuilder();
        for (int i = 0; i < from.length; i++) {
            Markup part = parts.get(i);
            int old = from[i];
            if (old >= 0 && part.stays(before.parts.get(old))) {
                int end = old + 1;
                while (i + 1 < from.length
                        && from[i + 1] == end
                        && parts.get(i + 1).stays(before.parts.get(end))) {
                    i++;
                    end++;
                }
                said.append(' ').append(old).append('-').append(end);
            } else if (part.isElement()) {
                said.append(' ').append(old < 0 ? "+" : String.valueOf(old));
                sent.append(html, part.begin, part.inner)
                        .append(old < 0 ? html.substring(part.inner, part.innerEnd) : part.since(before.parts.get(old)))
                        .append(html, part.innerEnd, part.end);
            } else if (part.isBlank()) {
                said.append(" _");
            } else {
                // Two texts that are sent without what stands between them would be one.
                return whole;
            }
        }
        String less = "<template data-from=\"" + said + "\"></template>" + sent;
        return less.length() < whole.length() ? less : whole;
    }

    /** Of each part which of the old ones it was; -1 where it is new. */
    private int[] origins(Markup before) {
        List<Markup> olds = before.parts;
        int[] from = new int[parts.size()];
        int next = 0;
        int gap = 0;
        for (int i = 0; i <= parts.size(); i++) {
            int same = i == parts.size() ? olds.size() : same(i, olds, next);
            if (same >= 0) {
                pair(gap, i, olds.subList(0, same), next, from);
                if (i < parts.size()) {
                    from[i] = same;
                }
                next = same + 1;
                gap = i + 1;
            }
        }
        return from;
    }

    /** Where a part stood before, from a place on; -1 where nowhere, or where it rather came to stand before what stood there. */
    private int same(int i, List<Markup> olds, int next) {
        if (parts.get(i).isBlank()) {
            return -1;
        }
        int same = parts.get(i).in(olds, next);
        int first = next;
        while (first < same && olds.get(first).isBlank()) {
            first++;
        }
        int passed = first < same ? olds.get(first).in(parts, i + 1) : -1;
        return passed >= 0 && passed - i <= same - next ? -1 : same;
    }

    /** Those between two that stayed are in order the same things in other words. */
    private void pair(int begin, int end, List<Markup> olds, int next, int[] from) {
        int old = next;
        for (int i = begin; i < end; i++) {
            boolean blank = parts.get(i).isBlank();
            while (!blank && old < olds.size() && olds.get(old).isBlank()) {
                old++;
            }
            from[i] = old < olds.size() && parts.get(i).isOfTheSame(olds.get(old)) ? old : -1;
            old += !blank || from[i] >= 0 ? 1 : 0;
        }
    }

    private int in(List<Markup> others, int next) {
        for (int i = next; i < others.size(); i++) {
            if (isSame(others.get(i))) {
                return i;
            }
        }
        return -1;
    }

    private boolean stays(Markup old) {
        return isBlank() || isSame(old);
    }

    private boolean isBlank() {
        for (int at = begin; at < end; at++) {
            if (!Character.isWhitespace(html.charAt(at))) {
                return false;
            }
        }
        return true;
    }

    private boolean isElement() {
        return html.charAt(begin) == '<';
    }

    private boolean isSame(Markup other) {
        return end - begin == other.end - other.begin
                && html.regionMatches(begin, other.html, other.begin, end - begin);
    }

    /** Whether it is the same element, perhaps with other attributes, or a space too; another id is another thing. */
    private boolean isOfTheSame(Markup other) {
        return isElement()
                ? other.isElement() && name().equals(other.name()) && id().equals(other.id())
                : isBlank() && other.isBlank();
    }

    private String id() {
        String mark = " id=\"";
        int at = html.indexOf(mark, begin);
        return at < 0 || at >= inner ? "" : html.substring(at, html.indexOf('"', at + mark.length()));
    }
}
