package fitworthy.engine;

import fitworthy.book.Book;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The shipped rules, compiled when the program is built and kept among its own classes: there the virtual machine's
 * archive holds them too. They are used where the rule files still have the text that they were compiled from. Beside
 * them is kept which book it was that passed its contract then.
 */
public final class ShippedRules {

    private static final String INDEX = "fitworthy/compiled/shipped.bin";
    private static final String PASSED = "fitworthy/compiled/passed.txt";

    private ShippedRules() {}

    /**
     * Part of the build: compiles a rule book and checks its contract.
     *
     * @param args the rules folder, the folder of the program's classes, and one for what is kept between runs
     * @throws FaultsException where the rule book is wrong
     */
    public static void main(String[] args) throws IOException, FaultsException {
        List<Fault> faults = new ArrayList<>();
        Map<String, String> texts = BookLoader.texts(Path.of(args[0]), faults);
        BookLoader.parsed(texts, faults);
        if (faults.isEmpty()) {
            write(RuleCache.key(texts), new RuleCache.Compiled(RuleCompiler.compile(texts, faults)), Path.of(args[1]));
        }
        if (!faults.isEmpty()) {
            throw new FaultsException(faults);
        }
        Book book = BookLoader.load(Path.of(args[0]), Path.of(args[2]), sentence -> {});
        Files.writeString(Path.of(args[1]).resolve(PASSED), book.hash());
    }

    private static void write(String key, RuleCache.Compiled compiled, Path classes) throws IOException {
        Map<String, byte[]> rest = new TreeMap<>();
        for (Map.Entry<String, byte[]> file : compiled.files().entrySet()) {
            if (file.getKey().endsWith(".class")) {
                Path path = classes.resolve(file.getKey());
                Files.createDirectories(path.getParent());
                Files.write(path, file.getValue());
            } else {
                rest.put(file.getKey(), file.getValue());
            }
        }
        try (DataOutputStream out = new DataOutputStream(Files.newOutputStream(classes.resolve(INDEX)))) {
            out.writeUTF(key);
            new RuleCache.Compiled(rest).write(out);
        }
    }

    /**
     * Whether it was this book that passed its contract when the program was built. That tells something of a packaged
     * program alone: in a folder of classes some may be newer than the note.
     *
     * @param hash the digest of every file of the book
     */
    static boolean passed(String hash) {
        if (ShippedRules.class.getPackage().getImplementationVersion() == null) {
            return false;
        }
        try (InputStream in = ShippedRules.class.getResourceAsStream("/" + PASSED)) {
            return in != null && hash.equals(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            return false;
        }
    }

    /** What was compiled under a key, its classes left where they are; nothing where the rules have changed since. */
    static Optional<RuleCache.Compiled> find(String key) {
        try (InputStream in = ShippedRules.class.getResourceAsStream("/" + INDEX)) {
            if (in == null) {
                return Optional.empty();
            }
            DataInputStream data = new DataInputStream(in);
            return data.readUTF().equals(key) ? Optional.of(RuleCache.Compiled.read(data)) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
