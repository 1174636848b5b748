package fitworthy.effect;

import fitworthy.book.Book;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The rules that two books call by different ids.
 *
 * @param ids the id in one of them, with the present one, which stands in the other
 */
record Renaming(Map<String, String> ids) {

    static Renaming of(Book before, Book after) {
        Map<String, String> ids = new TreeMap<>();
        add(before, after, ids);
        add(after, before, ids);
        return new Renaming(ids);
    }

    /**
     * A rule that has its former id in one book, unless the present one means something else there, or several of that
     * book's rules became one.
     */
    private static void add(Book book, Book other, Map<String, String> ids) {
        Map<String, List<String>> formers = new TreeMap<>();
        other.formerIds().all().forEach((former, present) -> {
            if (book.cards().containsKey(former) && other.cards().containsKey(present)) {
                formers.computeIfAbsent(present, id -> new ArrayList<>()).add(former);
            }
        });
        formers.forEach((present, former) -> {
            if (former.size() == 1 && !book.cards().containsKey(present)) {
                ids.put(former.get(0), present);
            }
        });
    }

    String present(String id) {
        return ids.getOrDefault(id, id);
    }

    /** What a book calls a rule. @param present its present id */
    String in(Book book, String present) {
        return ids.keySet().stream()
                .filter(former ->
                        ids.get(former).equals(present) && book.cards().containsKey(former))
                .findFirst()
                .orElse(present);
    }
}
