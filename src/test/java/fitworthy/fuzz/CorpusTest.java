package fitworthy.fuzz;

import static org.junit.jupiter.api.Assertions.assertFalse;

import fitworthy.engine.BookFuzz;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.Timeout;

/**
 * Inputs that the fuzzer found worth keeping: those that once came to harm, and those that reach far into the readers.
 */
class CorpusTest {

    private static final Path CORPUS = Path.of("src", "test", "resources", "corpus");

    private interface Reader {
        void read(byte[] data) throws Exception;
    }

    private static Stream<DynamicTest> each(String folder, Reader reader) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(CORPUS.resolve(folder))) {
            files = all.sorted().toList();
        }
        assertFalse(files.isEmpty());
        return files.stream()
                .map(file -> DynamicTest.dynamicTest(
                        file.getFileName().toString(), () -> reader.read(Files.readAllBytes(file))));
    }

    @TestFactory
    @Timeout(value = 5, unit = TimeUnit.MINUTES)
    Stream<DynamicTest> asASheet() throws IOException {
        return each("sheet", SheetFuzz::advised);
    }

    @TestFactory
    @Timeout(value = 5, unit = TimeUnit.MINUTES)
    Stream<DynamicTest> asAShelf() throws IOException {
        return each("shelf", ShelfFuzz::taken);
    }

    @TestFactory
    @Timeout(value = 5, unit = TimeUnit.MINUTES)
    Stream<DynamicTest> asAHouseFile() throws IOException {
        return each("house", HouseFuzz::advised);
    }

    @TestFactory
    @Timeout(value = 5, unit = TimeUnit.MINUTES)
    Stream<DynamicTest> asAFileOfTheBook() throws IOException {
        return each("book", BookFuzz::loaded);
    }
}
