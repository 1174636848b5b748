package fitworthy.counter;

import fitworthy.counter.desk.OpenSheet;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * A counter on a copy of the shipped sheets. Registered in a static field it is one for all tests of a class, each of
 * which finds the sheets as they are shipped; in a field of the instance each test has one of its own.
 */
public class AtCounter implements BeforeAllCallback, BeforeEachCallback, AfterEachCallback, AfterAllCallback {

    private static final Path SHIPPED = Path.of("scenarios");

    private boolean shared;
    private Path folder;
    private Served served;

    /** The sheets that are served. */
    public Path folder() {
        return folder;
    }

    /** The address of a page, such as {@code /new}. */
    public String at(String path) {
        return served.at(path);
    }

    public HttpResponse<String> get(String path) throws Exception {
        return served.get(path);
    }

    /** What is no text. */
    public HttpResponse<byte[]> bytes(String path) throws Exception {
        return served.bytes(path);
    }

    /** A form as a page of the counter sends it. @param fields names and values in turn */
    public HttpResponse<String> post(String path, String... fields) throws Exception {
        return served.post(path, fields);
    }

    /** Makes a sheet of a diesel vehicle for one person. @param parts lines of the form, one a part */
    public void made(String sheet, String... parts) throws Exception {
        List<String> fields =
                new ArrayList<>(List.of("vehicle", "Huia 2.0", "fuel", "diesel", "people", "1", "region", "any"));
        for (String part : parts) {
            fields.addAll(List.of("part", part));
        }
        fields.addAll(List.of("do", "make", "file", sheet));
        post("/new", fields.toArray(String[]::new));
    }

    /** A sheet as it is worked on. */
    public OpenSheet sheet(String name) {
        return served.sheet(name);
    }

    /** What stands in a sheet. */
    public String text(String sheet) throws IOException {
        return Files.readString(folder.resolve(sheet));
    }

    /** Opens what the tests need; what is open is closed where it fails halfway. */
    protected void open() throws Exception {
        folder = Files.createTempDirectory("counter");
        served = Served.copyIn(folder);
    }

    /** The address that lets in. */
    protected String address() {
        return served.address();
    }

    protected void close() throws Exception {
        if (served != null) {
            served.close();
        }
        if (folder != null) {
            for (Path each : all(folder)) {
                Files.delete(each);
            }
        }
    }

    @Override
    public void beforeAll(ExtensionContext context) throws Exception {
        shared = true;
        open();
    }

    @Override
    public void beforeEach(ExtensionContext context) throws Exception {
        if (shared) {
            putBack();
        } else {
            open();
        }
    }

    @Override
    public void afterEach(ExtensionContext context) throws Exception {
        if (!shared) {
            close();
        }
    }

    @Override
    public void afterAll(ExtensionContext context) throws Exception {
        close();
    }

    /** All of a folder and itself, what lies in another after that. */
    private static List<Path> all(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.sorted(Comparator.reverseOrder()).toList();
        }
    }

    /** The steps that are kept of a sheet stay: the counter has them open. */
    private void putBack() throws IOException {
        for (Path file : all(folder)) {
            Path shipped = SHIPPED.resolve(folder.relativize(file).toString());
            boolean ours = file.toString().contains(".fitworthy") || Files.isDirectory(file);
            if (!ours && !Files.exists(shipped)) {
                Files.delete(file);
            } else if (!ours && Files.mismatch(shipped, file) >= 0) {
                Files.copy(shipped, file, StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }
}
