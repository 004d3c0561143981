package org.pullproof.ui.health;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.pullproof.health.LeakZone;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;
import org.pullproof.units.Unit;
import org.pullproof.units.UnitSystem;

/** What a leak-down tester shows. */
public enum LeakShown {
    PERCENT("percent"),
    PRESSURE("pressure behind the restrictor"),
    ZONES("low, moderate, high");

    private final String words;

    LeakShown(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The zones, where it shows these. */
    List<String> choices() {
        return this == ZONES
                ? Arrays.stream(LeakZone.values()).map(LeakZone::key).toList()
                : List.of();
    }

    /** The unit of its figures. */
    Optional<Unit> unit(UnitSystem system) {
        return switch (this) {
            case PERCENT -> Optional.of(Unit.PERCENT);
            case PRESSURE -> Optional.of(Shown.COMPRESSION.unit(system));
            case ZONES -> Optional.empty();
        };
    }

    /** What was typed, with the unit of its figures. */
    String read(String typed, UnitSystem system) {
        return unit(system).map(unit -> Quantity.parse(typed, unit).toString()).orElse(typed);
    }
}
