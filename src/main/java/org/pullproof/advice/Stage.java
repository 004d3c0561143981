package org.pullproof.advice;

/** A stage of the job; each has its sheet. */
public enum Stage {
    CAR("Car", "What is it, and what may be done to it?"),
    HEALTH("Health", "Is this engine sound?"),
    TUNE_UP("Tune-up", "Is it in tune, and may it be started?"),
    DYNO_DAY("Dyno day", "What does it make, and may the next pull start?"),
    CHANGES("Changes", "Which adjustment really made power?"),
    WORTH_IT("Worth it", "Is this engine worth more money?");

    private final String words;
    private final String question;

    Stage(String words, String question) {
        this.words = words;
        this.question = question;
    }

    public String words() {
        return words;
    }

    /** The question its sheet answers. */
    public String question() {
        return question;
    }
}
