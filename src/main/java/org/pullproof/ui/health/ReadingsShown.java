package org.pullproof.ui.health;

import org.pullproof.health.TestKind;

/** What stands below the tiles: what all readings amount to, or those of one group of tests, typed and listed. */
public enum ReadingsShown {
    ALL("All", "A"),
    BALANCE("Balance", "B"),
    COMPRESSION("Compression", "C"),
    LEAKDOWN("Leak-down", "L"),
    FURTHER("Further", "F"),
    WHOLE_ENGINE("Engine", "W");

    private final String words;
    private final String key;

    ReadingsShown(String words, String key) {
        this.words = words;
        this.key = key;
    }

    public String words() {
        return words;
    }

    /** The letter that chooses it. */
    public String key() {
        return key;
    }

    /** The group a test belongs to; never {@link #ALL}. */
    static ReadingsShown of(TestKind test) {
        return switch (test) {
            case BALANCE -> BALANCE;
            case COMPRESSION_DRY, COMPRESSION_WET, RUNNING_COMPRESSION -> COMPRESSION;
            case LEAKDOWN -> LEAKDOWN;
            default -> test.byCylinder() ? FURTHER : WHOLE_ENGINE;
        };
    }

    /** The test that is typed when the group is opened. */
    TestKind firstTest() {
        return switch (this) {
            case ALL, COMPRESSION -> TestKind.COMPRESSION_DRY;
            case BALANCE -> TestKind.BALANCE;
            case LEAKDOWN -> TestKind.LEAKDOWN;
            case FURTHER -> TestKind.PLUG;
            case WHOLE_ENGINE -> TestKind.COOLING_HOLD;
        };
    }
}
