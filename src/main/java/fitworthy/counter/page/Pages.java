package fitworthy.counter.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** Makes pages, and parts of pages, of templates in {@code src/main/jte/counter}. Every text in them is escaped. */
public final class Pages {

    private static final TemplateEngine TEMPLATES = TemplateEngine.createPrecompiled(
            null, ContentType.Html, Pages.class.getClassLoader(), "fitworthy.counter.template");

    private Pages() {}

    /** @param template such as {@code sheet/page.jte} @param values by the names of its parameters */
    public static String html(String template, Map<String, Object> values) {
        StringOutput html = new StringOutput();
        TEMPLATES.render(template, values, html);
        return html.toString();
    }
}
