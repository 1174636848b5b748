package fitworthy.document;

import com.openhtmltopdf.extend.FSTextBreaker;
import com.openhtmltopdf.layout.UrlAwareLineBreakIterator;
import java.text.BreakIterator;
import java.util.Locale;

/** Where a line of a PDF may end: as in any text, but not at the slash of a short word such as N/mm or 265/70R17. */
final class LineBreaks implements FSTextBreaker {

    /** What is longer is an address, which has to be broken somewhere. */
    private static final int SHORT = 24;

    private final FSTextBreaker common = new UrlAwareLineBreakIterator(BreakIterator.getLineInstance(Locale.ROOT));
    private String text = "";

    @Override
    public void setText(String newText) {
        text = newText;
        common.setText(newText);
    }

    @Override
    public int next() {
        int end = common.next();
        while (end != BreakIterator.DONE && isAtSlash(end)) {
            end = common.next();
        }
        return end;
    }

    private boolean isAtSlash(int end) {
        if (end == 0 || end >= text.length() || text.charAt(end - 1) != '/' && text.charAt(end) != '/') {
            return false;
        }
        int from = end;
        while (from > 0 && !Character.isWhitespace(text.charAt(from - 1))) {
            from--;
        }
        int to = end;
        while (to < text.length() && !Character.isWhitespace(text.charAt(to))) {
            to++;
        }
        return from < end && end < to && to - from <= SHORT;
    }
}
