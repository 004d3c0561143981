package org.pullproof.health;

import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.pullproof.engine.EngineProfile;
import org.pullproof.health.Conditions.Plugs;
import org.pullproof.health.Conditions.Throttle;
import org.pullproof.health.Conditions.Warmth;
import org.pullproof.health.Reading.Leak;
import org.pullproof.health.SheetRow.Range;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;

/** One row of a table to one reading. */
final class RowReader {
    private static final Range GAUGE = new Range(Dimension.PRESSURE, 0, 5e6, "0 to 5000 kPa, over the surroundings");
    private static final Range STATION =
            new Range(Dimension.PRESSURE, 50e3, 110e3, "50 to 110 kPa, the absolute pressure of the air at the place");
    private static final Range DROP = new Range(Dimension.ROTATION, -500, 3000, "-500 to 3000 rpm");
    private static final Range CRANKING = new Range(Dimension.ROTATION, 20, 1000, "20 to 1000 rpm");
    private static final Range VOLTS = new Range(Dimension.VOLTAGE, 1, 30, "1 to 30 V");
    private static final Range TRIM = new Range(Dimension.SHARE, -0.5, 0.5, "-50 to 50 %");
    private static final Range ZERO = new Range(Dimension.SHARE, 0, 0.5, "0 to 50 %");
    private static final Range SHARE = new Range(Dimension.SHARE, 0, 1, "0 to 100 %");
    private static final Range SLACK = new Range(Dimension.ANGLE, 0, 60, "0 to 60° of crank");
    private static final Range GAP = new Range(Dimension.LENGTH, 0, 5e-3, "0 to 5 mm");
    private static final Range RESTRICTOR = new Range(Dimension.LENGTH, 1e-4, 1e-2, "0.1 to 10 mm");
    private static final Range OIL = new Range(Dimension.VOLUME, 0.5e-6, 50e-6, "0.5 to 50 mL; more locks a cylinder");
    private static final Range VACUUM = new Range(Dimension.PRESSURE, 0, 105e3, "0 to 105 kPa below the surroundings");
    private static final String NONE = "none";

    private final EngineProfile profile;
    private final LocalDateTime time;
    private final SheetRow row;

    RowReader(EngineProfile profile, LocalDateTime time, SheetRow row) {
        this.profile = profile;
        this.time = time;
        this.row = row;
    }

    /** Empty where the row has a problem. */
    Optional<Reading> read() {
        Optional<Reading> reading = test().flatMap(this::read);
        return row.problems().isEmpty() ? reading : Optional.empty();
    }

    private Optional<TestKind> test() {
        if (!row.has(SheetColumn.TEST)) {
            row.problem(SheetColumn.TEST, "The cell is empty; write one of " + String.join(", ", testKeys()) + ".");
        }
        return row.word(SheetColumn.TEST, testKeys()).flatMap(TestKind::named);
    }

    private static List<String> testKeys() {
        return Arrays.stream(TestKind.values()).map(TestKind::key).toList();
    }

    private Optional<Reading> read(TestKind test) {
        OptionalInt cylinder = cylinder(test);
        Conditions how = conditions();
        refuseForeignColumns(test);
        if (!row.has(SheetColumn.VALUE)) {
            row.problem(
                    SheetColumn.VALUE, "The cell is empty; a reading of " + test.key() + " is " + wanted(test) + ".");
            return Optional.empty();
        }
        return switch (test) {
            case BALANCE ->
                row.quantity(SheetColumn.VALUE, DROP)
                        .map(drop -> new Reading.Balance(cylinder, drop, round(), how, time, note()));
            case COMPRESSION_DRY, COMPRESSION_WET -> compression(test, cylinder, how);
            case LEAKDOWN -> leakdown(cylinder, how);
            case WORK ->
                row.word(SheetColumn.VALUE, Words.of(test))
                        .map(what -> new Reading.Work(cylinder, what, how, time, note()));
            default -> sign(test, cylinder, how);
        };
    }

    private OptionalInt cylinder(TestKind test) {
        if (!row.has(SheetColumn.CYLINDER)) {
            if (test.byCylinder() && test != TestKind.WORK) {
                row.problem(
                        SheetColumn.CYLINDER,
                        "The cell is empty; " + test.key() + " is read of one cylinder, 1 to " + profile.cylinders()
                                + ".");
            }
            return OptionalInt.empty();
        }
        if (!test.byCylinder()) {
            row.problem(SheetColumn.CYLINDER, test.key() + " is read of the whole engine; leave the cell empty.");
            return OptionalInt.empty();
        }
        return numbered(row.text(SheetColumn.CYLINDER));
    }

    private OptionalInt numbered(String text) {
        if (!text.matches("\\d{1,3}")) {
            row.problem(
                    SheetColumn.CYLINDER,
                    "\"" + text + "\" is not a cylinder; write 1 to " + profile.cylinders() + ".");
            return OptionalInt.empty();
        }
        try {
            return OptionalInt.of(profile.requireCylinder(Integer.parseInt(text)));
        } catch (IllegalArgumentException none) {
            row.problem(SheetColumn.CYLINDER, Phrase.capital(String.valueOf(none.getMessage())) + ".");
            return OptionalInt.empty();
        }
    }

    private void refuseForeignColumns(TestKind test) {
        boolean compression = test == TestKind.COMPRESSION_DRY || test == TestKind.COMPRESSION_WET;
        if (!compression) {
            row.refuse(SheetColumn.FIRST, test);
        }
        if (test != TestKind.COMPRESSION_WET) {
            row.refuse(SheetColumn.OIL, test);
        }
        if (test != TestKind.LEAKDOWN) {
            row.refuse(SheetColumn.SUPPLY, test);
            row.refuse(SheetColumn.ORIFICE, test);
            row.refuse(SheetColumn.AIR, test);
            row.refuse(SheetColumn.CLOSED, test);
        }
    }

    private Conditions conditions() {
        return new Conditions(
                row.whole(SheetColumn.STROKES, 1, 50),
                choice(SheetColumn.THROTTLE, Throttle.class),
                choice(SheetColumn.PLUGS, Plugs.class),
                choice(SheetColumn.ENGINE, Warmth.class),
                row.quantity(SheetColumn.CRANKING_VOLTS, VOLTS),
                row.quantity(SheetColumn.CRANKING_RPM, CRANKING),
                row.quantity(SheetColumn.STATION, STATION),
                words(SheetColumn.GAUGE),
                row.quantity(SheetColumn.GAUGE_STEP, GAUGE),
                row.quantity(SheetColumn.OIL, OIL),
                words(SheetColumn.WHO),
                row.quantity(SheetColumn.CLOSED, row.text(SheetColumn.CLOSED).endsWith("%") ? ZERO : GAUGE));
    }

    private Optional<String> words(SheetColumn column) {
        return Optional.of(row.text(column)).filter(text -> !text.isEmpty());
    }

    private <E extends Enum<E>> Optional<E> choice(SheetColumn column, Class<E> type) {
        List<E> all = List.of(type.getEnumConstants());
        return row.word(column, all.stream().map(RowReader::key).toList())
                .flatMap(word ->
                        all.stream().filter(one -> key(one).equals(word)).findFirst());
    }

    private static String key(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private Optional<Reading> compression(TestKind test, OptionalInt cylinder, Conditions how) {
        Optional<Quantity> first = row.quantity(SheetColumn.FIRST, GAUGE);
        return row.quantity(SheetColumn.VALUE, GAUGE)
                .map(gauge -> new Reading.Compression(
                        cylinder, test == TestKind.COMPRESSION_WET, gauge, first, round(), how, time, note()));
    }

    private Optional<Reading> leakdown(OptionalInt cylinder, Conditions how) {
        Optional<Quantity> supply = row.quantity(SheetColumn.SUPPLY, GAUGE);
        Optional<Quantity> orifice = row.quantity(SheetColumn.ORIFICE, RESTRICTOR);
        Optional<Set<AirPlace>> air = air();
        Optional<Leak> leak = leak();
        leak.ifPresent(value -> refuseAboveSupply(value, supply));
        return leak.map(
                value -> new Reading.Leakdown(cylinder, value, supply, orifice, air, round(), how, time, note()));
    }

    private Optional<Leak> leak() {
        String text = row.text(SheetColumn.VALUE);
        Optional<LeakZone> zone = LeakZone.named(text);
        if (zone.isPresent()) {
            return zone.map(Leak.Zone::new);
        }
        if (text.endsWith("%")) {
            return row.quantity(SheetColumn.VALUE, SHARE).map(Leak.Percentage::new);
        }
        if (text.matches("\\p{L}.*")) {
            return row.word(
                            SheetColumn.VALUE,
                            Stream.of(LeakZone.values()).map(LeakZone::key).toList())
                    .flatMap(LeakZone::named)
                    .map(Leak.Zone::new);
        }
        return row.quantity(SheetColumn.VALUE, GAUGE).map(Leak.Behind::new);
    }

    private void refuseAboveSupply(Leak value, Optional<Quantity> supply) {
        if (supply.isPresent() && supply.get().si() == 0) {
            row.problem(SheetColumn.SUPPLY, "Without pressure at the regulator nothing leaks; write what it showed.");
        } else if (value instanceof Leak.Behind behind
                && supply.isPresent()
                && behind.pressure().si() > supply.get().si()) {
            row.problem(
                    SheetColumn.VALUE,
                    behind.pressure() + " behind the restrictor is more than the supply, " + supply.get()
                            + "; the two may be swapped.");
        }
    }

    /** Places with {@code ;} between them; {@code none} is nothing heard; an empty cell is nobody listened. */
    private Optional<Set<AirPlace>> air() {
        if (!row.has(SheetColumn.AIR)) {
            return Optional.empty();
        }
        List<String> words = Stream.of(row.text(SheetColumn.AIR).split(";", -1))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .toList();
        if (words.equals(List.of(NONE))) {
            return Optional.of(Set.of());
        }
        Set<AirPlace> places = EnumSet.noneOf(AirPlace.class);
        for (String word : words) {
            AirPlace.named(word).ifPresentOrElse(places::add, () -> refuseAir(word));
        }
        return Optional.of(places);
    }

    private void refuseAir(String word) {
        List<String> places = Stream.of(AirPlace.values()).map(AirPlace::key).toList();
        row.problem(
                SheetColumn.AIR,
                word.equals(NONE)
                        ? "\"none\" stands alone: nothing was heard anywhere."
                        : "\"" + word + "\" is not known; write some of " + String.join(", ", places)
                                + " with ; between them, or none.");
    }

    private Optional<Reading> sign(TestKind test, OptionalInt cylinder, Conditions how) {
        String text = row.text(SheetColumn.VALUE);
        List<String> words = Words.of(test);
        if (test == TestKind.CODES || words.contains(text)) {
            return Optional.of(
                    new Reading.Sign(test, cylinder, Optional.empty(), Optional.of(text), how, time, note()));
        }
        Optional<Range> figure = figure(test);
        if (figure.isEmpty() || (!words.isEmpty() && text.matches("\\p{L}.*"))) {
            row.problem(
                    SheetColumn.VALUE, "\"" + text + "\" is not known; " + test.key() + " is " + wanted(test) + ".");
            return Optional.empty();
        }
        return row.quantity(SheetColumn.VALUE, figure.get())
                .map(value ->
                        new Reading.Sign(test, cylinder, Optional.of(value), Optional.empty(), how, time, note()));
    }

    private static Optional<Range> figure(TestKind test) {
        return switch (test) {
            case LASH -> Optional.of(GAP);
            case OIL_PRESSURE, RUNNING_COMPRESSION -> Optional.of(GAUGE);
            case VACUUM -> Optional.of(VACUUM);
            case STARTER_CURRENT, MISFIRES -> Optional.of(SHARE);
            case TRIMS -> Optional.of(TRIM);
            case CHAIN_SLACK -> Optional.of(SLACK);
            case CHARGING -> Optional.of(VOLTS);
            default -> Optional.empty();
        };
    }

    /** What a value of a test looks like: "a pressure, such as 155psi". */
    private static String wanted(TestKind test) {
        String words = "one of " + String.join(", ", Words.of(test));
        return switch (test) {
            case BALANCE -> "a fall of speed, such as 62rpm";
            case COMPRESSION_DRY, COMPRESSION_WET, RUNNING_COMPRESSION -> "a pressure, such as 155psi";
            case OIL_PRESSURE -> "the pressure at hot idle, such as 24psi";
            case LEAKDOWN -> "a percentage (14%), a pressure behind the restrictor (70psi) or low, moderate, high";
            case STARTER_CURRENT -> "a share of the highest hump, such as 92%";
            case MISFIRES -> "this cylinder's share of all misfires counted, such as 85%";
            case TRIMS -> "what the computer adds (+) or takes away (-) for the bank of this cylinder, such as 12%";
            case CHAIN_SLACK -> "the degrees the crank turns before the rotor or cam does, such as 6deg";
            case CHARGING -> "the voltage with the engine running, such as 14.2V";
            case LASH -> "a gap, such as 0.25mm, or " + words;
            case VACUUM -> "a pressure, such as 18.5inHg, or " + words;
            case CODES -> "the codes, or not-ready";
            default -> words;
        };
    }

    private int round() {
        return row.whole(SheetColumn.ROUND, 1, 99).orElse(1);
    }

    private String note() {
        return row.text(SheetColumn.NOTE);
    }
}
