package org.pullproof.ui.health;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.health.AirPlace;
import org.pullproof.health.RunField;
import org.pullproof.health.TestKind;
import org.pullproof.units.Shown;
import org.pullproof.units.Unit;
import org.pullproof.units.UnitSystem;

/** What is typed of a reading; the key is the column of the same name in a table of readings. */
public enum EntryColumn {
    VALUE("value", "Reading"),
    FIRST("first", "First stroke"),
    AIR("air", "Air heard at"),
    STROKES("strokes", "Strokes"),
    THROTTLE("throttle", "Throttle"),
    PLUGS("plugs", "Plugs"),
    ENGINE("engine", "Engine"),
    SUPPLY("supply", "Supply"),
    ORIFICE("orifice", "Orifice"),
    CRANKING_VOLTS("crankingVolts", "Cranking"),
    CRANKING_RPM("crankingRpm", "Cranking speed"),
    STATION("station", "Station pressure"),
    GAUGE("gauge", "Gauge"),
    GAUGE_STEP("gaugeStep", "Step of the gauge"),
    OIL("oil", "Oil"),
    WHO("who", "Read by"),
    CLOSED("closed", "Hose closed"),
    ROUND("round", "Round"),
    NOTE("note", "Note");

    private static final List<EntryColumn> COMPRESSION =
            List.of(VALUE, FIRST, STROKES, THROTTLE, PLUGS, ENGINE, CRANKING_VOLTS, GAUGE, ROUND, NOTE);
    private static final List<EntryColumn> LEAKDOWN = List.of(VALUE, SUPPLY, ORIFICE, ROUND, NOTE, AIR, CLOSED, ENGINE);
    private static final List<EntryColumn> BALANCE = List.of(VALUE, ENGINE, ROUND, NOTE);
    private static final List<EntryColumn> FURTHER = List.of(VALUE, NOTE);

    private final String key;
    private final String words;

    EntryColumn(String key, String words) {
        this.key = key;
        this.words = words;
    }

    public String key() {
        return key;
    }

    public String words() {
        return words;
    }

    /** What may be typed of a test, what is read at each cylinder first. */
    public static List<EntryColumn> of(TestKind test) {
        return switch (test) {
            case COMPRESSION_DRY, COMPRESSION_WET -> COMPRESSION;
            case LEAKDOWN -> LEAKDOWN;
            case BALANCE -> BALANCE;
            default -> FURTHER;
        };
    }

    /** The column in which what is told of a run stands. */
    public static EntryColumn of(RunField field) {
        return Arrays.stream(values())
                .filter(column -> column.key.equals(field.key()))
                .findFirst()
                .orElseThrow();
    }

    /** Whether it is read anew at each cylinder; the others tell how a run of readings is made and stay. */
    public boolean eachTime() {
        return switch (this) {
            case VALUE, FIRST, AIR, NOTE -> true;
            default -> false;
        };
    }

    /** The few words it may be answered with; empty where figures or any words are typed. */
    public List<String> choices() {
        return switch (this) {
            case THROTTLE -> List.of("open", "closed");
            case PLUGS -> List.of("all-out", "one-out");
            case ENGINE -> List.of("hot", "warm", "cold");
            case AIR ->
                Stream.concat(Arrays.stream(AirPlace.values()).map(AirPlace::key), Stream.of("none"))
                        .toList();
            default -> List.of();
        };
    }

    /** The unit a bare figure is taken in; empty where there is none. */
    public Optional<Unit> unit(TestKind test, UnitSystem system) {
        return switch (this) {
            case VALUE -> valueUnit(test, system);
            case FIRST, SUPPLY, CLOSED -> Optional.of(Shown.COMPRESSION.unit(system));
            case ORIFICE -> Optional.of(Shown.GAP.unit(system));
            case CRANKING_VOLTS -> Optional.of(Unit.VOLT);
            case CRANKING_RPM -> Optional.of(Unit.RPM);
            case STATION -> Optional.of(Shown.AIR_PRESSURE.unit(system));
            case GAUGE_STEP -> Optional.of(Shown.COMPRESSION.unit(system));
            case OIL -> Optional.of(Unit.ML);
            default -> Optional.empty();
        };
    }

    private static Optional<Unit> valueUnit(TestKind test, UnitSystem system) {
        return switch (test) {
            case BALANCE -> Optional.of(Unit.RPM);
            case COMPRESSION_DRY, COMPRESSION_WET, RUNNING_COMPRESSION -> Optional.of(Shown.COMPRESSION.unit(system));
            case OIL_PRESSURE -> Optional.of(Shown.OIL_PRESSURE.unit(system));
            case VACUUM -> Optional.of(Shown.VACUUM.unit(system));
            case LEAKDOWN, STARTER_CURRENT, MISFIRES, TRIMS -> Optional.of(Unit.PERCENT);
            case CHARGING -> Optional.of(Unit.VOLT);
            case CHAIN_SLACK -> Optional.of(Unit.DEGREE);
            case LASH -> Optional.of(Shown.LASH.unit(system));
            default -> Optional.empty();
        };
    }
}
