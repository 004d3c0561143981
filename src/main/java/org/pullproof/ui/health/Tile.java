package org.pullproof.ui.health;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;

/**
 * What a cylinder's tile says.
 *
 * @param number of the cylinder
 * @param state how it stands beside the others
 * @param words the same in words
 * @param values drop, first stroke, dry, wet, leak
 */
public record Tile(int number, State state, String words, List<Value> values) {
    /** What stands where nothing was measured; never a zero. */
    static final String NOT_MEASURED = "–";

    public Tile {
        values = List.copyOf(values);
    }

    /**
     * @param name short: "dry"
     * @param figure in the unit of the sheet, or {@code –}
     * @param always whether it is shown where room is short
     */
    public record Value(String name, String figure, boolean always) {
        public boolean measured() {
            return !figure.equals(NOT_MEASURED);
        }
    }

    static Tile of(CylinderFindings cylinder, Figures figures) {
        List<Value> values = new ArrayList<>();
        values.add(new Value("drop", number(cylinder.dropRpm()), true));
        values.add(new Value("first", pressure(cylinder.first(), figures), false));
        values.add(new Value("dry", pressure(cylinder.dry(), figures), true));
        values.add(new Value("wet", pressure(cylinder.wet(), figures), false));
        values.add(leak(cylinder));
        return new Tile(cylinder.number(), cylinder.state(), cylinder.words(), values);
    }

    /** The tile of a cylinder of which nothing is known. */
    static Tile notMeasured(int number) {
        List<Value> values = List.of(
                new Value("drop", NOT_MEASURED, true),
                new Value("first", NOT_MEASURED, false),
                new Value("dry", NOT_MEASURED, true),
                new Value("wet", NOT_MEASURED, false),
                new Value("leak %", NOT_MEASURED, true));
        return new Tile(number, State.NOT_MEASURED, "not measured", values);
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? Figures.number(value.getAsDouble(), 0) : NOT_MEASURED;
    }

    private static String pressure(java.util.Optional<org.pullproof.units.Quantity> typed, Figures figures) {
        return typed.map(quantity -> figures.bare(quantity.si(), Shown.COMPRESSION))
                .orElse(NOT_MEASURED);
    }

    private static Value leak(CylinderFindings cylinder) {
        if (cylinder.leakPercent().isPresent()) {
            return new Value("leak %", Figures.number(cylinder.leakPercent().getAsDouble(), 0), true);
        }
        return cylinder.leakWords()
                .map(words -> new Value("leak", words, true))
                .orElse(new Value("leak %", NOT_MEASURED, true));
    }

    /** The whole tile in one sentence, for people who cannot see it. */
    String spoken() {
        String read = values.stream()
                .filter(Value::measured)
                .map(value -> value.name() + " " + value.figure())
                .collect(Collectors.joining(", "));
        return "Cylinder " + number + ": " + words + (read.isEmpty() ? "" : ". " + read);
    }
}
