package org.pullproof.dyno;

import java.util.Arrays;
import org.pullproof.units.Dimension;

/** What a column of a pull file tells. */
public enum Role {
    RPM("rpm", Dimension.ROTATION),
    POWER("power", Dimension.POWER),
    TORQUE("torque", Dimension.TORQUE);

    private final String key;
    private final Dimension dimension;

    Role(String key, Dimension dimension) {
        this.key = key;
        this.dimension = dimension;
    }

    public String key() {
        return key;
    }

    public Dimension dimension() {
        return dimension;
    }

    /**
     * @throws IllegalArgumentException naming the keys there are
     */
    public static Role of(String key) {
        return Arrays.stream(values())
                .filter(role -> role.key.equals(key))
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("a column is rpm, power or torque, was \"" + key + "\""));
    }
}
