package org.pullproof.session;

import java.time.LocalDateTime;

/**
 * Free words with their time.
 *
 * @param time when they were written
 * @param words the words
 */
public record Note(LocalDateTime time, String words) {}
