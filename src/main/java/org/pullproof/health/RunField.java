package org.pullproof.health;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.pullproof.units.Quantity;

/**
 * What is told once of a run of readings, because it tells how each of them was made; the key is the column of the same name in a
 * table of readings.
 */
public enum RunField {
    STROKES("strokes", "Strokes counted", compression()),
    THROTTLE("throttle", "Throttle", compression(), "open", "closed"),
    PLUGS("plugs", "Plugs", compression(), "all-out", "one-out"),
    SUPPLY("supply", "Supply", EnumSet.of(TestKind.LEAKDOWN)),
    ORIFICE("orifice", "Restrictor", EnumSet.of(TestKind.LEAKDOWN)),
    CLOSED("closed", "Shown with the hose closed", EnumSet.of(TestKind.LEAKDOWN)),
    ENGINE("engine", "Engine", cylinders(), "hot", "warm", "cold"),
    CRANKING_VOLTS("crankingVolts", "Battery while cranking", compression()),
    CRANKING_RPM("crankingRpm", "Cranking speed", compression()),
    GAUGE("gauge", "Gauge", gauged()),
    GAUGE_STEP("gaugeStep", "Step of the gauge", gauged()),
    STATION("station", "Station pressure", gauged()),
    OIL("oil", "Oil, if wet", compression()),
    NOTE("note", "How the idle was held", EnumSet.of(TestKind.BALANCE)),
    WHO("who", "Read by", cylinders());

    private final String key;
    private final String words;
    private final Set<TestKind> tests;
    private final List<String> choices;

    RunField(String key, String words, Set<TestKind> tests, String... choices) {
        this.key = key;
        this.words = words;
        this.tests = tests;
        this.choices = List.of(choices);
    }

    private static Set<TestKind> compression() {
        return EnumSet.of(TestKind.COMPRESSION_DRY, TestKind.COMPRESSION_WET);
    }

    private static Set<TestKind> gauged() {
        return EnumSet.of(TestKind.COMPRESSION_DRY, TestKind.COMPRESSION_WET, TestKind.LEAKDOWN);
    }

    private static Set<TestKind> cylinders() {
        return EnumSet.of(
                TestKind.BALANCE, TestKind.COMPRESSION_DRY, TestKind.COMPRESSION_WET, TestKind.LEAKDOWN, TestKind.PLUG);
    }

    public String key() {
        return key;
    }

    /** What people call it. */
    public String words() {
        return words;
    }

    /** The few words it is answered with; empty where a figure or any words are told. */
    public List<String> choices() {
        return choices;
    }

    /** What a reading tells of it, as it would be typed; empty if it was not recorded. */
    public Optional<String> told(Reading reading) {
        Conditions made = reading.conditions();
        return switch (this) {
            case STROKES -> made.strokes().stream().mapToObj(String::valueOf).findFirst();
            case THROTTLE -> made.throttle().map(RunField::key);
            case PLUGS -> made.plugs().map(RunField::key);
            case ENGINE -> made.engine().map(RunField::key);
            case CRANKING_VOLTS -> made.crankingVolts().map(Quantity::toString);
            case CRANKING_RPM -> made.crankingRpm().map(Quantity::toString);
            case GAUGE -> made.gauge();
            case GAUGE_STEP -> made.gaugeStep().map(Quantity::toString);
            case STATION -> made.station().map(Quantity::toString);
            case OIL -> made.oil().map(Quantity::toString);
            case WHO -> made.who();
            case CLOSED -> made.closed().map(Quantity::toString);
            case NOTE -> Optional.of(reading.note()).filter(note -> !note.isBlank());
            case SUPPLY -> leakdown(reading).flatMap(Reading.Leakdown::supply).map(Quantity::toString);
            case ORIFICE -> leakdown(reading).flatMap(Reading.Leakdown::orifice).map(Quantity::toString);
        };
    }

    private static Optional<Reading.Leakdown> leakdown(Reading reading) {
        return reading instanceof Reading.Leakdown leakdown ? Optional.of(leakdown) : Optional.empty();
    }

    private static String key(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What is told of a run of a test. */
    public static List<RunField> of(TestKind test) {
        return Arrays.stream(values())
                .filter(field -> field.tests.contains(test))
                .toList();
    }
}
