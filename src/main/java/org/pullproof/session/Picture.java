package org.pullproof.session;

import java.time.LocalDateTime;

/**
 * A photograph that belongs to a session; its file lies untouched in the session's folder {@code pictures/}.
 *
 * @param about what it shows
 * @param words what is to be seen, in words; may be empty
 * @param original the name its file had when it came
 * @param kept the file's name in {@code pictures/}
 * @param sha256 digest of its bytes, 64 hexadecimal digits
 * @param time when it was attached
 */
public record Picture(About about, String words, String original, String kept, String sha256, LocalDateTime time) {
    public Picture {
        words = words.strip();
        if (!sha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("A SHA-256 has 64 hexadecimal digits, was " + sha256);
        }
    }
}
