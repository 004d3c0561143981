package org.pullproof.health;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** A column of a table of readings; its key is its name in the header. */
enum SheetColumn {
    TEST("test"),
    CYLINDER("cylinder"),
    VALUE("value"),
    FIRST("first"),
    STROKES("strokes"),
    ROUND("round"),
    SUPPLY("supply"),
    ORIFICE("orifice"),
    AIR("air"),
    THROTTLE("throttle"),
    PLUGS("plugs"),
    ENGINE("engine"),
    CRANKING_VOLTS("crankingVolts"),
    CRANKING_RPM("crankingRpm"),
    STATION("station"),
    GAUGE("gauge"),
    GAUGE_STEP("gaugeStep"),
    OIL("oil"),
    WHO("who"),
    CLOSED("closed"),
    NOTE("note");

    private final String key;

    SheetColumn(String key) {
        this.key = key;
    }

    String key() {
        return key;
    }

    /** The column of that name, whatever its case; spaces around it do not matter. */
    static Optional<SheetColumn> named(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(column -> column.key.toLowerCase(Locale.ROOT).equals(wanted))
                .findFirst();
    }

    static String names() {
        return Arrays.stream(values()).map(SheetColumn::key).collect(Collectors.joining(", "));
    }
}
