package fitworthy.source;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Digests by which a text is known again. */
public final class Digests {

    private Digests() {}

    public static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** The digest of some texts, one after the other, in 32 hexadecimal digits. */
    public static String of(String... texts) {
        MessageDigest digest = sha256();
        for (String text : texts) {
            digest.update((text + "\0").getBytes(StandardCharsets.UTF_8));
        }
        return HexFormat.of().formatHex(digest.digest()).substring(0, 32);
    }
}
