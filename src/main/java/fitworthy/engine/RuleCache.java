package fitworthy.engine;

import fitworthy.book.Practice;
import fitworthy.figures.measure.Measure;
import fitworthy.rules.RuleParser;
import fitworthy.source.Digests;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSessionsPool;

/** Keeps compiled rules between runs. What cannot be read back whole counts as absent. */
final class RuleCache {

    /** Rules ready to run, with the key of their text. */
    record Loaded(String key, KieSessionsPool sessions) {}

    /** The classes that compiled rules were passed by, made by or run with: what is kept differs with them. */
    static final List<Class<?>> COUNTED = Stream.concat(
                    RuleParser.CLASSES.stream(),
                    Stream.of(Measure.class, Practice.class, RuleAction.class, RuleCompiler.class))
            .toList();

    /** What the files of {@link #file} are called. */
    private static final Pattern FILES = Pattern.compile("rules-[0-9a-f]{32}-[0-9]+\\.bin");
    /** Room for some eight books. An edited one has no use for what was compiled of it before. */
    static final long MOST_BYTES = 32L << 20;

    private final CacheFolder folder;

    RuleCache(CacheFolder folder) {
        this.folder = folder;
    }

    /** The key of a set of rule files: their text, the engine and the classes that rules see. */
    static String key(Map<String, String> texts) {
        MessageDigest digest = Digests.sha256();
        texts.forEach((file, text) -> CacheFolder.count(digest, inFolder(file), text));
        digest.update(String.valueOf(KieBase.class.getPackage().getImplementationVersion())
                .getBytes(StandardCharsets.UTF_8));
        CacheFolder.count(digest, COUNTED);
        return HexFormat.of().formatHex(digest.digest()).substring(0, 32);
    }

    /** The rules shipped or kept under a key, or nothing where there are none that can be trusted. */
    Optional<Loaded> find(String key) {
        return ShippedRules.find(key).flatMap(compiled -> loaded(key, compiled)).or(() -> kept(key)
                .flatMap(compiled -> loaded(key, compiled)));
    }

    private static Optional<Loaded> loaded(String key, CompiledRules compiled) {
        try {
            return Optional.of(new Loaded(key, RuleCompiler.load(compiled.files())));
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    private Optional<CompiledRules> kept(String key) {
        return folder.find(file(key)).flatMap(content -> {
            try {
                return Optional.of(CompiledRules.read(new DataInputStream(
                        new ByteArrayInputStream(content.array(), content.arrayOffset(), content.remaining()))));
            } catch (IOException | RuntimeException e) {
                return Optional.empty();
            }
        });
    }

    /** Keeps compiled rules, and takes away those that no run has used for the longest time. */
    void keep(String key, CompiledRules compiled) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            compiled.write(out);
        } catch (IOException e) {
            throw new IllegalStateException("writing to memory failed", e);
        }
        folder.keep(file(key), bytes.toByteArray());
        folder.clear(FILES, MOST_BYTES);
    }

    /** A rule file by topic folder and name, which are the same wherever the book lies. */
    private static String inFolder(String file) {
        Path path = Path.of(file);
        return path.getParent().getFileName() + "/" + path.getFileName();
    }

    private static String file(String key) {
        return "rules-" + key + "-" + Runtime.version().feature() + ".bin";
    }
}
