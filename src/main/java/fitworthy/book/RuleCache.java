package fitworthy.book;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.kie.api.KieBase;

/**
 * Keeps compiled rules between runs, in a folder that only its owner may write. A file whose key, digest or content is not
 * as it should be counts as absent. The digest finds a cut or damaged file; against somebody who may write the owner's
 * files nothing here helps, which is why a folder that others may write is not used at all.
 */
final class RuleCache {

    /** Compiled rules and what they mention. */
    record Compiled(List<RuleText> rules, byte[] archive) {}

    /** A rule base ready for sessions, with what its rules mention. */
    record Loaded(List<RuleText> rules, KieBase base) {}

    private static final int DIGEST_BYTES = 32;

    private final Path folder;

    RuleCache(Path folder) {
        this.folder = folder;
    }

    /** The key of a set of rule files: their text, the engine, the Java level and the classes that rules see. */
    static String key(Map<String, String> texts) {
        MessageDigest digest = sha256();
        texts.forEach((file, text) -> {
            digest.update((file + "\0" + text + "\0").getBytes(StandardCharsets.UTF_8));
        });
        digest.update(String.valueOf(KieBase.class.getPackage().getImplementationVersion())
                .getBytes(StandardCharsets.UTF_8));
        digest.update((byte) Runtime.version().feature());
        for (String name : List.of("figures/Measure", "book/Practice", "book/Advised", "book/Consequence",
                "book/RuleCompiler", "book/RuleParser", "book/RuleText")) {
            try (InputStream in = RuleCache.class.getResourceAsStream("/fitworthy/" + name + ".class")) {
                digest.update(in.readAllBytes());
            } catch (IOException e) {
                throw new IllegalStateException("cannot read the program's own class " + name, e);
            }
        }
        return HexFormat.of().formatHex(digest.digest()).substring(0, 32);
    }

    /** The rule base kept under a key, or nothing where there is none that can be trusted. */
    Optional<Loaded> find(String key) {
        try {
            if (!trusted()) {
                return Optional.empty();
            }
            byte[] bytes = Files.readAllBytes(file(key));
            byte[] content = Arrays.copyOfRange(bytes, Math.min(bytes.length, DIGEST_BYTES), bytes.length);
            if (!MessageDigest.isEqual(sha256().digest(content), Arrays.copyOf(bytes, DIGEST_BYTES))) {
                return Optional.empty();
            }
            Compiled compiled = read(content);
            return Optional.of(new Loaded(compiled.rules(), RuleCompiler.load(compiled.archive())));
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    /** Keeps compiled rules; where the folder cannot be written the next run compiles again. */
    void keep(String key, Compiled compiled) {
        Path unfinished = null;
        try {
            Files.createDirectories(folder);
            if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
                Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
            }
            byte[] content = written(compiled);
            unfinished = Files.createTempFile(folder, "rules-", ".part");
            ByteArrayOutputStream whole = new ByteArrayOutputStream();
            whole.write(sha256().digest(content));
            whole.write(content);
            Files.write(unfinished, whole.toByteArray());
            Files.move(unfinished, file(key), StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            if (unfinished != null) {
                unfinished.toFile().delete();
            }
        }
    }

    private Path file(String key) {
        return folder.resolve("rules-" + key + ".bin");
    }

    private boolean trusted() throws IOException {
        if (!Files.isDirectory(folder) || !Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            return Files.isDirectory(folder);
        }
        Set<PosixFilePermission> permissions = Files.getPosixFilePermissions(folder);
        return !permissions.contains(PosixFilePermission.GROUP_WRITE)
                && !permissions.contains(PosixFilePermission.OTHERS_WRITE)
                && Files.getOwner(folder).getName().equals(System.getProperty("user.name"));
    }

    private static byte[] written(Compiled compiled) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeInt(compiled.rules().size());
            for (RuleText rule : compiled.rules()) {
                out.writeUTF(rule.id());
                out.writeUTF(rule.file());
                out.writeInt(rule.line());
                out.writeUTF(String.join(" ", rule.measures()));
                out.writeUTF(String.join(" ", rule.practice()));
                out.writeUTF(String.join(" ", rule.earlier()));
            }
            out.writeInt(compiled.archive().length);
            out.write(compiled.archive());
        }
        return bytes.toByteArray();
    }

    private static Compiled read(byte[] content) throws IOException {
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(content));
        int count = in.readInt();
        List<RuleText> rules = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            rules.add(new RuleText(in.readUTF(), in.readUTF(), in.readInt(), words(in.readUTF()), words(in.readUTF()),
                    words(in.readUTF())));
        }
        byte[] archive = new byte[in.readInt()];
        in.readFully(archive);
        return new Compiled(rules, archive);
    }

    private static Set<String> words(String joined) {
        return joined.isEmpty() ? Set.of() : new TreeSet<>(List.of(joined.split(" ")));
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
