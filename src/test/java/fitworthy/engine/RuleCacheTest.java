package fitworthy.engine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fitworthy.Books;
import fitworthy.book.Book;
import fitworthy.book.Practice;
import fitworthy.figures.measure.Measure;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is kept is used only where it is whole, fits the text of the rules and could not have been written by others.
 */
class RuleCacheTest {

    @TempDir
    Path home;

    private Path rules;
    private Path cache;

    @BeforeEach
    void oneRule() throws IOException {
        rules = home.resolve("rules");
        cache = home.resolve("cache");
        BooksOfOneRule.write(rules);
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
            assertEquals(
                    permissions,
                    PosixFilePermissions.toString(Files.getPosixFilePermissions(cache)),
                    "the folder is not declared safe with what others may have put there");
        }
    }

    @Test
    void aFolderThatCannotBeMadeOnlyCostsTime() throws Exception {
        Files.writeString(cache, "a file where the folder should be");
        assertTrue(compiles());
        assertTrue(compiles());
    }

    /** A class left out would let rules be used that it no longer passes or makes so. */
    @Test
    void theKeyCountsEveryClassThatRulesAreReadBySeenThroughOrMadeBy() throws IOException {
        Set<String> wanted = new TreeSet<>(List.of(
                Measure.class.getName(),
                Practice.class.getName(),
                RuleAction.class.getName(),
                RuleCompiler.class.getName()));
        try (Stream<Path> all = Files.list(Path.of("src/main/java/fitworthy/rules"))) {
            all.forEach(each -> wanted.add(
                    "fitworthy.rules." + each.getFileName().toString().replace(".java", "")));
        }
        assertEquals(
                wanted, RuleCache.COUNTED.stream().map(Class::getName).collect(Collectors.toCollection(TreeSet::new)));
    }

    private boolean compiles() throws FaultsException {
        List<String> told = new ArrayList<>();
        load(told);
        return !told.isEmpty();
    }

    private Book load(List<String> told) throws FaultsException {
        return BookLoader.load(rules, cache, told::add).book();
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
            assertEquals(
                    "Loaded mass is above the GVM",
                    load(new ArrayList<>()).cards().get("mass.gvm-over").title());
            assertArrayEquals(whole, Files.readAllBytes(pages), "kept whole again after byte " + at);
        }
        for (int length : new int[] {0, 5, whole.length - 1}) {
            Files.write(pages, Arrays.copyOf(whole, length));
            assertEquals(
                    "Loaded mass is above the GVM",
                    load(new ArrayList<>()).cards().get("mass.gvm-over").title());
        }
    }

    @Test
    void anEditedCardShowsInTheNextRunWithItsLine() throws Exception {
        compiles();
        Path cards = rules.resolve("mass/cards.yaml");
        Files.writeString(
                cards,
                "# one line more\n" + Files.readString(cards).replace("Loaded mass is above the GVM", "Too heavy"));
        assertEquals(
                "Too heavy",
                load(new ArrayList<>()).cards().get("mass.gvm-over").title());
        Files.writeString(cards, Files.readString(cards).replace("severity: stop", "severity: halt"));
        FaultsException refused = assertThrows(FaultsException.class, () -> load(new ArrayList<>()));
        assertTrue(refused.getMessage().contains("cards.yaml:4:"), refused.getMessage());
    }

    @Test
    void nobodyElseMayReadOrWriteWhatIsKept() throws Exception {
        compiles();
        assumeTrue(Files.getFileStore(cache).supportsFileAttributeView("posix"));
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(cache)));
        try (Stream<Path> all = Files.list(cache)) {
            for (Path each : all.toList()) {
                assertEquals(
                        "rw-------",
                        PosixFilePermissions.toString(Files.getPosixFilePermissions(each)),
                        each.toString());
            }
        }
    }

    /** A link in a file's place would lead what is kept somewhere else. */
    @Test
    void aLinkIsReplacedAndNotFollowed() throws Exception {
        compiles();
        Path elsewhere = Files.write(home.resolve("elsewhere"), new byte[] {1, 2, 3});
        Path kept = kept();
        Files.delete(kept);
        Files.createSymbolicLink(kept, elsewhere);
        assertTrue(compiles(), "what the link leads to is not rules");
        assertArrayEquals(new byte[] {1, 2, 3}, Files.readAllBytes(elsewhere));
        assertFalse(Files.isSymbolicLink(kept));
        assertFalse(compiles());
    }

    /** A clock that was set back, or a disk that came from elsewhere: whether a file fits is read off its content. */
    @Test
    void datesDoNotMatter() throws Exception {
        compiles();
        for (long days : new long[] {4000, -4000}) {
            try (Stream<Path> all = Files.walk(home)) {
                for (Path each : all.toList()) {
                    Files.setLastModifiedTime(each, FileTime.from(Instant.now().plus(Duration.ofDays(days))));
                }
            }
            assertFalse(compiles());
        }
        Path drl = rules.resolve("mass/mass.drl");
        FileTime date = Files.getLastModifiedTime(drl);
        Files.writeString(drl, Files.readString(drl).replace("headroom < 0", "headroom <= 0"));
        Files.setLastModifiedTime(drl, date);
        assertTrue(compiles(), "the text has changed, whatever its date says");
    }

    @Test
    void whatAKilledRunLeftIsTakenAwayADayLater() throws Exception {
        compiles();
        String kept = kept().getFileName().toString();
        Files.delete(kept());
        Path others = Files.write(cache.resolve("film.part"), new byte[] {1});
        Path old = Files.write(cache.resolve("." + kept + ".1a2b.part"), new byte[] {1});
        Path young = Files.write(cache.resolve("." + kept + ".3c4d.part"), new byte[] {1});
        for (Path each : List.of(old, others)) {
            Files.setLastModifiedTime(each, FileTime.from(Instant.now().minus(Duration.ofHours(25))));
        }
        assertTrue(compiles());
        assertFalse(Files.exists(old));
        assertTrue(Files.exists(others), "whatever else somebody keeps in this folder is not ours to take away");
        assertTrue(Files.exists(young), "another run may be writing it");
        assertFalse(compiles());
    }

    /** Each edit of a rule leaves what was compiled of it before, some 4 MB for the shipped book. */
    @Test
    void whatNoBookUsesAnyMoreMakesRoom() throws Exception {
        compiles();
        Path mine = kept();
        Path last = filler("0".repeat(32), 1);
        Path before = filler("1".repeat(32), 2);
        Path toCome = filler("2".repeat(32), -3);
        Path others = Files.write(cache.resolve("rules-of-the-house.bin"), new byte[20 << 20]);
        Files.setLastModifiedTime(others, FileTime.from(Instant.now().minus(Duration.ofDays(400))));
        Path linked = Files.write(home.resolve("linked"), new byte[20 << 20]);
        Files.createSymbolicLink(cache.resolve("rules-" + "3".repeat(32) + "-17.bin"), linked);
        Files.setLastModifiedTime(mine, FileTime.from(Instant.now().minus(Duration.ofDays(300))));
        assertFalse(compiles(), "this notes that it is used");
        Path drl = rules.resolve("mass/mass.drl");
        Files.writeString(drl, Files.readString(drl).replace("headroom < 0", "headroom <= 0"));
        assertTrue(compiles(), "and this makes room");
        assertTrue(Files.exists(mine) && Files.exists(last), "20 MiB and a little are within 32 MiB");
        assertFalse(Files.exists(before) || Files.exists(toCome), "the others were not used for longer");
        assertTrue(Files.exists(others) && Files.exists(linked), "nothing else is taken away");
    }

    private Path filler(String key, int days) throws IOException {
        Path file = Files.write(cache.resolve("rules-" + key + "-17.bin"), new byte[20 << 20]);
        return Files.setLastModifiedTime(file, FileTime.from(Instant.now().minus(Duration.ofDays(days))));
    }

    /** Programs of their own, begun together on an empty folder: each ends well, and what they leave is whole. */
    @Test
    void severalProgramsAtOnceDoNotSpoilIt() throws Exception {
        List<Process> processes = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            ProcessBuilder builder = new ProcessBuilder(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-cp",
                    System.getProperty("java.class.path"),
                    "fitworthy.cli.Main",
                    "check",
                    Books.RULES.resolve("plain-sheet.yaml").toString());
            builder.environment().put("FITWORTHY_CACHE", cache.toString());
            builder.environment().put("FITWORTHY_RULES", rules.toString());
            processes.add(builder.redirectErrorStream(true)
                    .redirectOutput(home.resolve("told" + i).toFile())
                    .start());
        }
        for (int i = 0; i < processes.size(); i++) {
            assertTrue(processes.get(i).waitFor(3, TimeUnit.MINUTES));
            String told = Files.readString(home.resolve("told" + i));
            assertEquals(0, processes.get(i).exitValue(), told);
            assertTrue(told.contains("No fault found in what was checked."), told);
        }
        assertFalse(compiles());
        assertTrue(Files.size(kept()) > 1000);
    }
}
