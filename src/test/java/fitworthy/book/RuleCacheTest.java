package fitworthy.book;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fitworthy.Books;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept is used only where it is whole, fits the text of the rules and could not have been written by others. */
class RuleCacheTest {

    @TempDir
    Path home;

    private Path rules;
    private Path cache;

    /** A book of one rule, the first of the shipped mass topic, so that compiling it is quick. */
    @BeforeEach
    void oneRule() throws IOException {
        rules = home.resolve("rules");
        cache = home.resolve("cache");
        Files.createDirectories(rules.resolve("mass"));
        Files.createDirectories(rules.resolve("tables"));
        for (String file : List.of("book.yaml", "sources.yaml", "tables/load-index.csv", "tables/speed-symbol.csv",
                "tables/cable.csv", "tables/order.csv")) {
            Files.copy(Books.RULES.resolve(file), rules.resolve(file));
        }
        firstPart("mass/mass.drl", "\nrule ");
        firstPart("mass/cards.yaml", "\nmass.");
    }

    private void firstPart(String file, String nextBegins) throws IOException {
        String text = Files.readString(Books.RULES.resolve(file));
        Files.writeString(rules.resolve(file), text.substring(0, text.indexOf(nextBegins)));
    }

    @Test
    void theSecondRunDoesNotCompile() throws Exception {
        assertTrue(compiles(), "the first run compiles");
        assertFalse(compiles(), "the second finds its work");
        assertEquals(Set.of("mass.gvm-over"), load(new ArrayList<>()).rules().keySet());
    }

    @Test
    void aFlippedBitIsNotLoadedWhereverItIs() throws Exception {
        compiles();
        byte[] whole = Files.readAllBytes(kept());
        for (int at : new int[] {0, whole.length / 2, whole.length - 1}) {
            byte[] damaged = whole.clone();
            damaged[at] ^= 1;
            Files.write(kept(), damaged);
            assertTrue(compiles(), "byte " + at + " of " + whole.length);
        }
    }

    @Test
    void aFileCutShortIsNotLoaded() throws Exception {
        compiles();
        byte[] whole = Files.readAllBytes(kept());
        for (int length : new int[] {0, 5, whole.length - 1}) {
            Files.write(kept(), Arrays.copyOf(whole, length));
            assertTrue(compiles(), length + " bytes of " + whole.length);
        }
    }

    @Test
    void whatWasKeptForOtherTextIsNotLoaded() throws Exception {
        compiles();
        Path drl = rules.resolve("mass/mass.drl");
        String text = Files.readString(drl);
        Files.writeString(drl, text.replace("headroom < 0", "headroom <= 0"));
        assertTrue(compiles(), "a comparison was changed");
        Files.writeString(drl, text);
        assertFalse(compiles(), "the text is the first again, and so is what was kept for it");
    }

    @Test
    void aFolderThatOthersMayWriteIsNotTrusted() throws Exception {
        compiles();
        assumeTrue(Files.getFileStore(cache).supportsFileAttributeView("posix"));
        for (String permissions : List.of("rwxrwx---", "rwx----w-")) {
            Files.setPosixFilePermissions(cache, PosixFilePermissions.fromString(permissions));
            assertTrue(compiles(), permissions);
            assertEquals(permissions, PosixFilePermissions.toString(Files.getPosixFilePermissions(cache)),
                    "the folder is not declared safe with what others may have put there");
        }
    }

    @Test
    void aFolderThatCannotBeMadeOnlyCostsTime() throws Exception {
        Files.writeString(cache, "a file where the folder should be");
        assertTrue(compiles());
        assertTrue(compiles());
    }

    private boolean compiles() throws FaultsException {
        List<String> told = new ArrayList<>();
        load(told);
        return !told.isEmpty();
    }

    private Book load(List<String> told) throws FaultsException {
        return BookLoader.load(rules, cache, told::add);
    }

    private Path kept() throws IOException {
        try (Stream<Path> all = Files.list(cache)) {
            List<Path> files = all.sorted().toList();
            assertEquals(2, files.size(), "pages, rules and nothing unfinished: " + files);
            assertEquals("pages.bin", files.get(0).getFileName().toString());
            return files.get(1);
        }
    }

    @Test
    void damagedPagesAreReadAnew() throws Exception {
        compiles();
        Path pages = cache.resolve("pages.bin");
        byte[] whole = Files.readAllBytes(pages);
        for (int at : new int[] {0, 20, whole.length / 2, whole.length - 1}) {
            byte[] damaged = whole.clone();
            damaged[at] ^= 1;
            Files.write(pages, damaged);
            assertEquals("Loaded mass is above the GVM", load(new ArrayList<>()).cards().get("mass.gvm-over").title());
            assertArrayEquals(whole, Files.readAllBytes(pages), "kept whole again after byte " + at);
        }
        for (int length : new int[] {0, 5, whole.length - 1}) {
            Files.write(pages, Arrays.copyOf(whole, length));
            assertEquals("Loaded mass is above the GVM", load(new ArrayList<>()).cards().get("mass.gvm-over").title());
        }
    }

    @Test
    void anEditedCardShowsInTheNextRunWithItsLine() throws Exception {
        compiles();
        Path cards = rules.resolve("mass/cards.yaml");
        Files.writeString(cards, "# one line more\n" + Files.readString(cards).replace("Loaded mass is above the GVM", "Too heavy"));
        assertEquals("Too heavy", load(new ArrayList<>()).cards().get("mass.gvm-over").title());
        Files.writeString(cards, Files.readString(cards).replace("severity: stop", "severity: halt"));
        FaultsException refused = assertThrows(FaultsException.class, () -> load(new ArrayList<>()));
        assertTrue(refused.getMessage().contains("cards.yaml:4:"), refused.getMessage());
    }
}
