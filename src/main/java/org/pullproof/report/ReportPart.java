package org.pullproof.report;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A part of the report that can be wanted alone. Cautions, methods and standards go with every part. */
public enum ReportPart {
    SUMMARY("summary", "The answers, and what to do next"),
    HEALTH("health", "Health sheet"),
    TUNE_UP("tune-up", "Tune-up as done"),
    DYNO("dyno", "Dyno days with their air and flags"),
    CHANGES("changes", "Changes with their intervals"),
    MONEY("money", "Money and the decision"),
    CAR("car", "The car and its engine"),
    PICTURES("pictures", "Photographs"),
    READINGS("readings", "Raw readings and files");

    private final String key;
    private final String words;

    ReportPart(String key, String words) {
        this.key = key;
        this.words = words;
    }

    /** Its name on the command line. */
    public String key() {
        return key;
    }

    public String words() {
        return words;
    }

    /** The whole job. */
    public static Set<ReportPart> all() {
        return Collections.unmodifiableSet(EnumSet.allOf(ReportPart.class));
    }

    /** The part of that name. */
    public static Optional<ReportPart> named(String key) {
        return Arrays.stream(values()).filter(part -> part.key.equals(key)).findFirst();
    }

    /** {@code summary, health, …}. */
    public static String keys() {
        return Arrays.stream(values()).map(ReportPart::key).collect(Collectors.joining(", "));
    }

    /** What a report of these parts is called: a health sheet says nothing of money, changes or plans. */
    static String name(Set<ReportPart> parts) {
        boolean healthAlone = parts.contains(HEALTH)
                && EnumSet.of(SUMMARY, TUNE_UP, DYNO, CHANGES, MONEY).stream().noneMatch(parts::contains);
        return healthAlone ? "Health sheet of an engine" : "Report on an engine";
    }
}
