package fitworthy.book;

import fitworthy.rules.RuleText;
import fitworthy.schema.Bound;
import fitworthy.source.Located;
import java.nio.file.Path;
import java.util.Map;

/** The pieces of a book before they are one, those that nothing is wrong with. Maps are by id. */
public record BookParts(
        Path folder,
        Map<String, Region> regions,
        Map<String, Card> cards,
        Map<String, RuleText> rules,
        Map<String, DatedLimit> practice,
        Map<String, Source> sources,
        Map<String, Bound<UsualFigure>> usual,
        Map<String, Located> places,
        Unread unread) {

    boolean lackRegion(String id) {
        return !regions.containsKey(id) && !unread.mayBeIn(cover());
    }

    boolean lackCard(String id) {
        return !cards.containsKey(id) && !unread.mayBeIn(page(id, "cards.yaml"), id);
    }

    boolean lackRule(String id) {
        return !rules.containsKey(id) && !unread.mayBeIn(page(id, topic(id) + ".drl"));
    }

    boolean lackPractice(String id) {
        return !practice.containsKey(id) && !unread.mayBeIn(page(id, "practice.yaml"), id);
    }

    boolean lackSource(String id) {
        return !sources.containsKey(id) && !unread.mayBeIn(folder.resolve("sources.yaml"), id);
    }

    Path cover() {
        return folder.resolve("book.yaml");
    }

    private Path page(String id, String file) {
        return folder.resolve(topic(id)).resolve(file);
    }

    /** Of an id that need not be one. */
    private static String topic(String id) {
        return id.split("\\.", 2)[0];
    }
}
