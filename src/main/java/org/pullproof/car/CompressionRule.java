package org.pullproof.car;

import java.util.Arrays;
import java.util.stream.Collectors;

/** Which published rule decides that a dry compression reading is low; the others are shown beside it. */
public enum CompressionRule {
    SHARE_75("75-percent", "lowest at least 75 % of the highest", "Army TM 5-4210-230-14&P-1, Addendum 2"),
    SHARE_70(
            "70-percent",
            "lowest at least 70 % of the highest and none below 689 kPa (100 psi)",
            "service pages of several car makers"),
    BELOW_AVERAGE_20("20-below-average", "none 20 % below the average", "Army TM 1-1500-204-23-1"),
    APART_10("10-percent", "no two cylinders more than 10 % apart", "common practice, no source"),
    APART_10_PSI("10-psi", "no two cylinders more than 10 psi (69 kPa) apart", "Army TM 10-3930-618-20");

    private final String key;
    private final String words;
    private final String source;

    CompressionRule(String key, String words, String source) {
        this.key = key;
        this.words = words;
        this.source = source;
    }

    public String key() {
        return key;
    }

    public String words() {
        return words;
    }

    /** Where it is published, or "common practice, no source". */
    public String source() {
        return source;
    }

    /**
     * @throws IllegalArgumentException naming the keys there are
     */
    public static CompressionRule of(String key) {
        return Arrays.stream(values())
                .filter(rule -> rule.key.equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("one of "
                        + Arrays.stream(values()).map(CompressionRule::key).collect(Collectors.joining(", "))
                        + ", was \"" + key + "\""));
    }
}
