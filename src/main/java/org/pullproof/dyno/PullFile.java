package org.pullproof.dyno;

/**
 * The file a pull came from, kept untouched in the session.
 *
 * @param original the name it had when it came
 * @param kept its name in the session's folder {@code pulls/}
 * @param sha256 digest of its bytes, 64 hexadecimal digits
 */
public record PullFile(String original, String kept, String sha256) {
    public PullFile {
        if (!sha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("A SHA-256 has 64 hexadecimal digits, was " + sha256);
        }
    }
}
