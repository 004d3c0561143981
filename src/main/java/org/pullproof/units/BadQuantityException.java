package org.pullproof.units;

/** What was typed is not the quantity asked for; the message is a sentence that says what would be right. */
public final class BadQuantityException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public BadQuantityException(String sentence) {
        super(sentence);
    }
}
