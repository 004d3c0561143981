package org.pullproof.dyno;

/** The table holds no pull that can be read; the message is a sentence that says what would be right. */
public final class UnreadablePullException extends Exception {
    private static final long serialVersionUID = 1L;

    private final int line;

    /**
     * @param line where in the file, from 1; 0 if it concerns the whole
     */
    UnreadablePullException(int line, String sentence) {
        super(sentence);
        this.line = line;
    }

    /** Where in the file, for people: "line 12", or empty. */
    public String place() {
        return line > 0 ? "line " + line : "";
    }

    /** Its message: always there. */
    public String sentence() {
        return String.valueOf(getMessage());
    }
}
