package org.pullproof.report;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pullproof.health.TestKind;

/** A test there is a tally sheet for. */
public enum TallyKind {
    BALANCE("balance", "Balance", List.of(TestKind.BALANCE)),
    COMPRESSION("compression", "Compression, dry and wet", List.of(TestKind.COMPRESSION_DRY, TestKind.COMPRESSION_WET)),
    LEAKDOWN("leakdown", "Leak-down", List.of(TestKind.LEAKDOWN));

    private final String key;
    private final String words;
    private final List<TestKind> kinds;

    TallyKind(String key, String words, List<TestKind> kinds) {
        this.key = key;
        this.words = words;
        this.kinds = kinds;
    }

    /** Its name on the command line. */
    public String key() {
        return key;
    }

    public String words() {
        return words;
    }

    /** The test whose order and conditions the sheet follows. */
    public TestKind kind() {
        return kinds.get(0);
    }

    /** The tests whose readings are written on it. */
    public List<TestKind> kinds() {
        return kinds;
    }

    public static Optional<TallyKind> named(String key) {
        return Arrays.stream(values()).filter(test -> test.key.equals(key)).findFirst();
    }

    /** The sheet on which readings of a test are written. */
    public static Optional<TallyKind> of(TestKind test) {
        return Arrays.stream(values())
                .filter(sheet -> sheet.kinds.contains(test))
                .findFirst();
    }

    /** {@code balance, compression, leakdown}. */
    public static String keys() {
        return Arrays.stream(values()).map(TallyKind::key).collect(Collectors.joining(", "));
    }
}
