package fitworthy;

import fitworthy.book.Book;
import fitworthy.book.BookLoader;
import fitworthy.source.FaultsException;
import java.nio.file.Path;

/** The shipped rule book, loaded once for all tests. */
public final class Books {

    public static final Path RULES = Path.of("rules");
    public static final Path CACHE = Path.of("target", "rule-cache");

    private static Book shipped;

    private Books() {}

    public static synchronized Book shipped() throws FaultsException {
        if (shipped == null) {
            shipped = BookLoader.load(RULES, CACHE, sentence -> { });
        }
        return shipped;
    }
}
