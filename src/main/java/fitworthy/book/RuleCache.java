package fitworthy.book;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.zip.CRC32;
import org.kie.api.KieBase;

/**
 * Keeps compiled rules between runs, in a folder that only its owner may write. A file whose key, checksum or content is
 * not as it should be counts as absent. The checksum finds a cut or damaged file; against somebody who may write the
 * owner's files nothing here helps, which is why a folder that others may write is not used at all.
 */
final class RuleCache {

    /** Compiled rules and what they mention. */
    record Compiled(List<RuleText> rules, Map<String, byte[]> files) {}

    /** A rule base ready for sessions, with what its rules mention and the key of their text. */
    record Loaded(String key, List<RuleText> rules, KieBase base) {}

    private static final int CHECKSUM_BYTES = Long.BYTES;

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
            DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
            if (in.readLong() != checksum(bytes, CHECKSUM_BYTES)) {
                return Optional.empty();
            }
            Compiled compiled = read(in);
            return Optional.of(new Loaded(key, compiled.rules(), RuleCompiler.load(compiled.files())));
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    /** Keeps compiled rules; where the folder cannot be written or trusted the next run compiles again. */
    void keep(String key, Compiled compiled) {
        Path unfinished = null;
        try {
            if (!Files.exists(folder)) {
                makeFolder();
            }
            if (!trusted()) {
                return;
            }
            byte[] content = written(compiled);
            unfinished = Files.createTempFile(folder, "rules-", ".part");
            Files.write(unfinished, ByteBuffer.allocate(CHECKSUM_BYTES + content.length)
                    .putLong(checksum(content, 0)).put(content).array());
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

    private void makeFolder() throws IOException {
        Path parent = Files.createDirectories(folder.toAbsolutePath().getParent());
        if (hasPermissions(parent)) {
            Files.createDirectory(folder,
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
        } else {
            Files.createDirectory(folder);
        }
    }

    private static boolean hasPermissions(Path folder) throws IOException {
        return Files.getFileStore(folder).supportsFileAttributeView("posix");
    }

    /** Whether only its owner may write to the folder. One that others could write to may hold anything ever after. */
    private boolean trusted() throws IOException {
        if (!Files.isDirectory(folder) || !hasPermissions(folder)) {
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
            out.writeInt(compiled.files().size());
            for (Map.Entry<String, byte[]> file : compiled.files().entrySet()) {
                out.writeUTF(file.getKey());
                out.writeInt(file.getValue().length);
                out.write(file.getValue());
            }
        }
        return bytes.toByteArray();
    }

    private static Compiled read(DataInputStream in) throws IOException {
        int count = in.readInt();
        List<RuleText> rules = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            rules.add(new RuleText(in.readUTF(), in.readUTF(), in.readInt(), words(in.readUTF()), words(in.readUTF()),
                    words(in.readUTF())));
        }
        Map<String, byte[]> files = new TreeMap<>();
        for (int left = in.readInt(); left > 0; left--) {
            String name = in.readUTF();
            byte[] bytes = new byte[in.readInt()];
            in.readFully(bytes);
            files.put(name, bytes);
        }
        return new Compiled(rules, files);
    }

    private static Set<String> words(String joined) {
        return joined.isEmpty() ? Set.of() : new TreeSet<>(List.of(joined.split(" ")));
    }

    private static long checksum(byte[] bytes, int from) {
        CRC32 checksum = new CRC32();
        checksum.update(bytes, from, bytes.length - from);
        return checksum.getValue();
    }

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
