package fitworthy.engine;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the build noted is believed of the very book and the very rules alone. What a whole program does is in ShippedRulesTest. */
class ShippedNotesTest {

    /** It fails wherever it is read. */
    private static final InputStream UNREADABLE = new InputStream() {
        @Override
        public int read() throws IOException {
            throw new IOException("unreadable");
        }
    };

    private static InputStream note(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void onlyTheBookOfTheNoteHasPassedAndOnlyInAPackagedProgram() {
        assertEquals(true, ShippedRules.passed("0123", "1", note("0123")));
        assertEquals(false, ShippedRules.passed("0124", "1", note("0123")));
        assertEquals(false, ShippedRules.passed("0123", null, note("0123")));
        assertEquals(false, ShippedRules.passed("0123", "1", null));
        assertEquals(false, ShippedRules.passed("", "1", UNREADABLE));
        assertEquals(false, ShippedRules.passed("no digest"));
    }

    @Test
    void onlyWhatWasCompiledUnderTheKeyIsFound() throws IOException {
        byte[] model = {1, 2, 3};
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeUTF("key");
            new CompiledRules(Map.of("model", model, "empty", new byte[0])).write(out);
        }
        byte[] whole = bytes.toByteArray();
        Map<String, byte[]> files = ShippedRules.find("key", new ByteArrayInputStream(whole))
                .orElseThrow()
                .files();
        assertEquals(2, files.size());
        assertArrayEquals(model, files.get("model"));
        assertArrayEquals(new byte[0], files.get("empty"));
        assertEquals(Optional.empty(), ShippedRules.find("another", new ByteArrayInputStream(whole)));
        assertEquals(
                Optional.empty(),
                ShippedRules.find("key", new ByteArrayInputStream(Arrays.copyOf(whole, whole.length - 1))));
        assertEquals(Optional.empty(), ShippedRules.find("key", null));
        assertEquals(Optional.empty(), ShippedRules.find("key", UNREADABLE));
        assertEquals(Optional.empty(), ShippedRules.find("no key"));
    }
}
