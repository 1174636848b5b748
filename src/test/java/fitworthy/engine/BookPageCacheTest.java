package fitworthy.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import fitworthy.source.Fault;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A page is found again as it was read, or not at all. */
class BookPageCacheTest {

    /** A value of every sort: a number, a word, one in quotes, a list, a group, nothing, and one with a fault. */
    private static final String TEXT =
            "a: 3\nb: grün\nc: \"3\"\nd:\n  - x\n  - {e: 1, f: y}\n  - []\ng:\nh: {}\ni: !!binary aGk=\n";

    @TempDir
    private Path home;

    private CacheFolder folder;

    @BeforeEach
    void folder() {
        folder = new CacheFolder(home.resolve("cache"));
    }

    private static Node.Mapping page(String file) {
        List<Fault> faults = new ArrayList<>();
        Node.Mapping page = NodeReader.read(file, TEXT, faults);
        return page.with("blank", new Node.Blank(page.place(), false))
                .with("faulted", new Node.Blank(page.place(), true));
    }

    private BookPageCache anew() {
        return new BookPageCache(folder);
    }

    @Test
    void aPageIsFoundAsItWasReadUnderTheNameItIsAskedBy() {
        BookPageCache cache = anew();
        cache.add("one", page("a/a.yaml"));
        assertNull(cache.find("a/a.yaml", "one"), "it was just read");
        cache.keep();
        assertEquals(page("a/a.yaml"), anew().find("a/a.yaml", "one"));
        assertEquals(page("b/a.yaml"), anew().find("b/a.yaml", "one"), "the book lies elsewhere");
        assertNull(anew().find("a/a.yaml", "two"));
    }

    @Test
    void onlyWhatIsStillUsedIsKept() {
        BookPageCache cache = anew();
        cache.add("one", page("a"));
        cache.add("two", page("a"));
        cache.keep();
        BookPageCache second = anew();
        assertNotNull(second.find("a", "two"));
        second.keep();
        assertNotNull(anew().find("a", "one"), "nothing was new, and nothing written");
        second.add("three", page("a"));
        second.keep();
        assertNull(anew().find("a", "one"));
        assertEquals(page("a"), anew().find("a", "two"));
        assertEquals(page("a"), anew().find("a", "three"));
    }

    /** The checksum is right here: it is the content that nobody would have written so. */
    @Test
    void ofAFileThatDoesNotHoldWhatItSaysNoPageIsUsed() {
        BookPageCache cache = anew();
        cache.add("one", page("a"));
        cache.add("two", page("a"));
        cache.keep();
        ByteBuffer kept = folder.find("pages.bin").orElseThrow();
        byte[] whole = new byte[kept.remaining()];
        kept.get(whole);
        for (int length : new int[] {0, 3, 40, 80, whole.length / 2, whole.length - 1}) {
            folder.keep("pages.bin", Arrays.copyOf(whole, length));
            assertNull(anew().find("a", "one"), () -> length + " of " + whole.length);
            assertNull(anew().find("a", "two"));
        }
        for (int wrong : new int[] {-1, Integer.MIN_VALUE, Integer.MAX_VALUE}) {
            folder.keep(
                    "pages.bin",
                    ByteBuffer.allocate(whole.length)
                            .put(whole)
                            .putInt(0, wrong)
                            .array());
            assertNull(anew().find("a", "one"), () -> "a length of " + wrong);
        }
        folder.keep("pages.bin", whole);
        assertNotNull(anew().find("a", "one"));
        // The first byte of the reader's digest, behind its length: another reader's work.
        whole[Integer.BYTES] ^= 1;
        folder.keep("pages.bin", whole);
        assertNull(anew().find("a", "one"));
    }
}
