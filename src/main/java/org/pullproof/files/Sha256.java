package org.pullproof.files;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4) as 64 hexadecimal digits. */
final class Sha256 {
    private static final int BUFFER = 1 << 16;

    private Sha256() {}

    static String of(byte[] bytes) {
        return hex(digest().digest(bytes));
    }

    /** Of bytes that are never all held. */
    static String of(FileBytes bytes) throws IOException {
        MessageDigest digest = digest();
        byte[] buffer = new byte[BUFFER];
        try (InputStream in = bytes.open()) {
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                digest.update(buffer, 0, read);
            }
        }
        return hex(digest.digest());
    }

    private static String hex(byte[] digest) {
        return HexFormat.of().formatHex(digest);
    }

    private static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java has SHA-256", impossible);
        }
    }
}
