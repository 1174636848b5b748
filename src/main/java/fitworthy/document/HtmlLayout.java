package fitworthy.document;

import fitworthy.document.Report.Block;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A report as one HTML file that needs nothing beside it. Every text is escaped; it is XML as well, for the PDF is made
 * of it.
 */
public final class HtmlLayout {

    /** Stands for a letter that cannot be shown. */
    static final int UNKNOWN = 0xFFFD;

    /** What stands between two tags. */
    private static final Pattern READ = Pattern.compile("(?<=>)[^<>]+(?=<)");

    private static final TemplateEngine TEMPLATES = TemplateEngine.createPrecompiled(
            null, ContentType.Html, HtmlLayout.class.getClassLoader(), "fitworthy.document.template");

    private HtmlLayout() {}

    /** For a browser, and for paper from there. */
    public static String html(Report report) {
        return html(report, resource("screen.css"));
    }

    /** @param more style beside the common one */
    static String html(Report report, String more) {
        return html("report.jte", report, more);
    }

    /** Its sections alone, as letters. */
    static String letters(Report report, String more) {
        return html("letters.jte", report, more + resource("letters.css"));
    }

    private static String html(String template, Report report, String more) {
        String html = rendered(template, Map.of("report", report, "style", resource("report.css") + more));
        int body = html.indexOf("<body>");
        return printable(html.substring(0, body) + signed(html.substring(body)));
    }

    /** Some blocks alone, for a page that has a style of its own; none of them carries any. */
    public static String blocks(List<Block> blocks) {
        return printable(signed(rendered("blocks.jte", Map.of("blocks", blocks))));
    }

    private static String rendered(String template, Map<String, Object> values) {
        StringOutput html = new StringOutput();
        TEMPLATES.render(template, values, html);
        return html.toString();
    }

    /** Markup with the signs of print in what is read of it, and in nothing else. */
    private static String signed(String html) {
        return READ.matcher(html).replaceAll(text -> Matcher.quoteReplacement(Signs.in(text.group())));
    }

    /**
     * Text without what XML cannot hold and without what turns the direction of the text after it, with the signs of
     * print.
     */
    public static String clean(String text) {
        return printable(Signs.in(text));
    }

    private static String printable(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints().forEach(letter -> {
            boolean turns = letter >= 0x202A && letter <= 0x202E || letter >= 0x2066 && letter <= 0x2069;
            boolean none = letter < ' ' && letter != '\n' && letter != '\t'
                    || letter >= 0xD800 && letter <= 0xDFFF
                    || (letter & 0xFFFE) == 0xFFFE;
            if (!turns) {
                clean.appendCodePoint(none ? UNKNOWN : letter);
            }
        });
        return clean.toString();
    }

    static String resource(String name) {
        try (InputStream in = HtmlLayout.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
