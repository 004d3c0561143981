package org.pullproof.dyno;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.pullproof.units.Dimension;

/** What a column of a pull file tells. Figures are kept in the SI units of {@link org.pullproof.units.Unit}. */
public enum Role {
    RPM("rpm", "engine speed", Dimension.ROTATION),
    POWER("power", "power", Dimension.POWER),
    TORQUE("torque", "torque", Dimension.TORQUE),
    TIME("time", "time", Dimension.TIME),
    ROLL("roll", "roll speed", Dimension.ROTATION, Dimension.SPEED),
    PULL("pull", "number of the pull", Dimension.NUMBER),
    THROTTLE("throttle", "throttle", Dimension.SHARE, Dimension.NUMBER, Dimension.VOLTAGE),
    LAMBDA("lambda", "lambda", Dimension.MIXTURE),
    KNOCK("knock", "knock", Dimension.NUMBER),
    BOOST("boost", "boost", Dimension.PRESSURE),
    VOLTS("volts", "supply voltage", Dimension.VOLTAGE),
    COOLANT("coolant", "coolant temperature", Dimension.TEMPERATURE),
    OIL("oil", "oil temperature", Dimension.TEMPERATURE),
    INTAKE("intake", "intake temperature", Dimension.TEMPERATURE),
    FUEL_PRESSURE("fuel-pressure", "fuel pressure", Dimension.PRESSURE);

    /** What a pull is judged by besides its power; a file may have any of them. */
    static final Set<Role> JUDGED = EnumSet.range(THROTTLE, FUEL_PRESSURE);

    private final String key;
    private final String words;
    private final List<Dimension> dimensions;

    Role(String key, String words, Dimension... dimensions) {
        this.key = key;
        this.words = words;
        this.dimensions = List.of(dimensions);
    }

    public String key() {
        return key;
    }

    /** For people: "intake temperature". */
    public String words() {
        return words;
    }

    /** The dimension its figures mostly have. */
    public Dimension dimension() {
        return dimensions.get(0);
    }

    /** Whether its figures may have that dimension. */
    public boolean takes(Dimension dimension) {
        return dimensions.contains(dimension);
    }

    /** Whether figures of this kind mean something though nobody says a unit: a ratio, a count, or what is only compared. */
    boolean needsNoUnit() {
        return this == PULL || this == THROTTLE || this == LAMBDA || this == KNOCK || this == VOLTS || this == RPM;
    }

    /**
     * @throws IllegalArgumentException naming the keys there are
     */
    public static Role of(String key) {
        return Arrays.stream(values())
                .filter(role -> role.key.equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("a column is " + keys() + ", was \"" + key + "\""));
    }

    /** All keys, for messages. */
    static String keys() {
        String[] all = Arrays.stream(values()).map(Role::key).toArray(String[]::new);
        return Arrays.stream(all, 0, all.length - 1).collect(Collectors.joining(", ")) + " or " + all[all.length - 1];
    }
}
