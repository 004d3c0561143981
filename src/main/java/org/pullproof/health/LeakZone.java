package org.pullproof.health;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A zone of a leak-down gauge without figures, as an interval of leak percentage (diagnosis.md 4). */
public enum LeakZone {
    LOW(0, 20),
    MODERATE(20, 45),
    HIGH(45, 100);

    private final double from;
    private final double to;

    LeakZone(double from, double to) {
        this.from = from;
        this.to = to;
    }

    public double fromPercent() {
        return from;
    }

    public double toPercent() {
        return to;
    }

    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<LeakZone> named(String key) {
        return Arrays.stream(values()).filter(zone -> zone.key().equals(key)).findFirst();
    }
}
