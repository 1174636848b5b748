package fitworthy.engine;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The shipped rules, compiled when the program is built and kept among its own classes: there the virtual machine's
 * archive holds them too. They are used where the rule files still have the text that they were compiled from. Beside
 * them is kept which book it was that passed its contract then.
 */
final class ShippedRules {

    static final String INDEX = "fitworthy/compiled/shipped.bin";
    static final String PASSED = "fitworthy/compiled/passed.txt";

    private ShippedRules() {}

    /**
     * Whether it was this book that passed its contract when the program was built. That tells something of a packaged
     * program alone: in a folder of classes some may be newer than the note.
     *
     * @param hash the digest of every file of the book
     */
    static boolean passed(String hash) {
        return passed(hash, ShippedRules.class.getPackage().getImplementationVersion(), shipped(PASSED));
    }

    /**
     * The same.
     *
     * @param version that of a packaged program, otherwise null
     * @param note the hash of the book that passed, null where there is none
     */
    static boolean passed(String hash, String version, InputStream note) {
        try (note) {
            return version != null
                    && note != null
                    && hash.equals(new String(note.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            return false;
        }
    }

    /** What was compiled under a key, its classes left where they are; nothing where the rules have changed since. */
    static Optional<CompiledRules> find(String key) {
        return find(key, shipped(INDEX));
    }

    /** The same. @param index the key and what was compiled under it, null where there is none */
    static Optional<CompiledRules> find(String key, InputStream index) {
        try (index) {
            if (index == null) {
                return Optional.empty();
            }
            DataInputStream data = new DataInputStream(index);
            return data.readUTF().equals(key) ? Optional.of(CompiledRules.read(data)) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static InputStream shipped(String name) {
        return ShippedRules.class.getResourceAsStream("/" + name);
    }
}
