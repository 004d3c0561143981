package org.pullproof.tuneup;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pullproof.units.Dimension;

/** One of the settings a tuned engine is left at; the key is its name on the command line, on disk and as level of a setup. */
public enum Setting {
    BASE_TIMING("base-timing", Dimension.ANGLE, "Base timing, vacuum hose off and plugged"),
    MECHANICAL("mechanical-advance", Dimension.ANGLE, "Mechanical advance at pull rpm"),
    PULL_RPM("pull-rpm", Dimension.ROTATION, "Engine speed it was read at"),
    CANISTER_ADVANCE("canister-advance", Dimension.ANGLE, "Vacuum canister adds"),
    CANISTER_STARTS("canister-starts", Dimension.PRESSURE, "Canister begins to move at"),
    CANISTER_ENDS("canister-ends", Dimension.PRESSURE, "Canister is fully over at"),
    CANISTER_HOLDS("canister-holds", Dimension.TIME, "Canister holds 15 inHg for"),
    DWELL("dwell", Dimension.ANGLE, "Dwell"),
    POINT_GAP("point-gap", Dimension.LENGTH, "Points or pick-up gap"),
    IDLE("idle", Dimension.ROTATION, "Idle, warm"),
    FLOAT_LEVEL("float-level", Dimension.LENGTH, "Float level"),
    FUEL_PRESSURE("fuel-pressure", Dimension.PRESSURE, "Fuel pressure under load"),
    THROTTLE("throttle", Dimension.SHARE, "Throttle opening, pedal to the floor");

    private final String key;
    private final Dimension dimension;
    private final String words;

    Setting(String key, Dimension dimension, String words) {
        this.key = key;
        this.dimension = dimension;
        this.words = words;
    }

    public String key() {
        return key;
    }

    public Dimension dimension() {
        return dimension;
    }

    public String words() {
        return words;
    }

    public static Optional<Setting> named(String key) {
        return Arrays.stream(values())
                .filter(setting -> setting.key.equals(key))
                .findFirst();
    }

    /** All keys, for messages. */
    public static String keys() {
        return Arrays.stream(values()).map(Setting::key).collect(Collectors.joining(", "));
    }
}
