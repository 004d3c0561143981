package org.pullproof.ui.dynoday;

import java.time.Clock;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;
import org.pullproof.units.Unit;
import org.pullproof.weather.AirCheck;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Correction;
import org.pullproof.weather.Factor;
import org.pullproof.weather.Standard;
import org.pullproof.weather.TypedAir;

/** The air as it is being typed: three quantities, each checked by itself, and the factor they give together. */
public final class AirEntry {
    private static final Quantity USUAL_PRESSURE = Quantity.of("100", Unit.KPA);
    private static final Quantity USUAL_TEMPERATURE = Quantity.of("20", Unit.CELSIUS);
    private static final Quantity USUAL_HUMIDITY = Quantity.of("50", Unit.PERCENT);

    private final Correction correction;
    private final AirCheck check;
    private final Supplier<Optional<Quantity>> elevation;
    private final Map<Part, Quantity> typed = new EnumMap<>(Part.class);

    /** What is typed of the air. */
    public enum Part {
        PRESSURE("station pressure"),
        TEMPERATURE("temperature"),
        HUMIDITY("humidity");

        private final String words;

        Part(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** The unit a bare figure is taken in. */
        public Unit unit(Figures figures) {
            return switch (this) {
                case PRESSURE -> figures.unit(Shown.AIR_PRESSURE);
                case TEMPERATURE -> figures.unit(Shown.AIR_TEMPERATURE);
                case HUMIDITY -> Unit.PERCENT;
            };
        }
    }

    /**
     * @param elevation of the garage, if told
     */
    AirEntry(Correction correction, AirCheck check, Supplier<Optional<Quantity>> elevation) {
        this.correction = correction;
        this.check = check;
        this.elevation = elevation;
    }

    /**
     * Reads and keeps one part.
     *
     * @throws IllegalArgumentException with a sentence if it cannot be read or there is no such air
     */
    public Quantity take(Part part, String text, Figures figures) {
        typed.remove(part);
        Quantity quantity = Quantity.parse(text, part.unit(figures));
        problems(alone(part, quantity)).stream().findFirst().ifPresent(sentence -> {
            throw new IllegalArgumentException(sentence);
        });
        typed.put(part, quantity);
        return quantity;
    }

    public void forget(Part part) {
        typed.remove(part);
    }

    /** One part in otherwise usual air, so that what is wrong is said of this part. */
    private static TypedAir alone(Part part, Quantity quantity) {
        return new TypedAir(
                new TypedAir.Barometer.Station(part == Part.PRESSURE ? quantity : USUAL_PRESSURE),
                part == Part.TEMPERATURE ? quantity : USUAL_TEMPERATURE,
                new TypedAir.Humidity.Relative(part == Part.HUMIDITY ? quantity : USUAL_HUMIDITY));
    }

    private List<String> problems(TypedAir air) {
        boolean realPressure = !air.barometer().equals(new TypedAir.Barometer.Station(USUAL_PRESSURE));
        return check.problems(air, realPressure ? elevation.get() : Optional.empty());
    }

    /** All three parts, once each was read. */
    private Optional<TypedAir> complete() {
        Optional<Quantity> pressure = part(Part.PRESSURE);
        Optional<Quantity> temperature = part(Part.TEMPERATURE);
        Optional<Quantity> humidity = part(Part.HUMIDITY);
        return pressure.flatMap(p -> temperature.flatMap(t -> humidity.map(
                h -> new TypedAir(new TypedAir.Barometer.Station(p), t, new TypedAir.Humidity.Relative(h)))));
    }

    private Optional<Quantity> part(Part part) {
        return Optional.ofNullable(typed.get(part));
    }

    /** The factor of the air typed so far; absent until all three parts stand and agree. */
    public Optional<Factor> factor(Standard standard) {
        return complete().filter(air -> problems(air).isEmpty()).map(air -> correction.factor(standard, air));
    }

    /** Why the air typed cannot be used yet, or empty. */
    public Optional<String> waitsFor() {
        for (Part part : Part.values()) {
            if (!typed.containsKey(part)) {
                return Optional.of("Waits for the " + part.words() + ".");
            }
        }
        return complete().flatMap(air -> problems(air).stream().findFirst());
    }

    /**
     * The air as a reading made now.
     *
     * @throws IllegalArgumentException with the sentence of {@link #waitsFor()}
     */
    AirReading reading(Clock clock) {
        waitsFor().ifPresent(sentence -> {
            throw new IllegalArgumentException(sentence);
        });
        TypedAir air = complete().orElseThrow();
        return new AirReading(
                LocalDateTime.now(clock).withNano(0),
                ((TypedAir.Barometer.Station) air.barometer()).pressure(),
                air.temperature(),
                ((TypedAir.Humidity.Relative) air.humidity()).share());
    }

    /**
     * The station pressure if what was typed is an altimeter setting, in the same unit with the same digits; absent where the elevation
     * is not told, or where taking it so would not help.
     */
    public Optional<Quantity> asAltimeterSetting(String text, Figures figures) {
        Quantity setting = Quantity.parse(text, Part.PRESSURE.unit(figures));
        return elevation.get().flatMap(height -> station(setting, height));
    }

    private Optional<Quantity> station(Quantity setting, Quantity height) {
        TypedAir.Barometer.Altimeter altimeter = new TypedAir.Barometer.Altimeter(setting, height);
        TypedAir asSetting = new TypedAir(altimeter, USUAL_TEMPERATURE, new TypedAir.Humidity.Relative(USUAL_HUMIDITY));
        if (!check.problems(asSetting, Optional.of(height)).isEmpty()) {
            return Optional.empty();
        }
        double figure = setting.unit().fromSi(altimeter.station().pascal());
        Quantity station = new Quantity(
                java.math.BigDecimal.valueOf(figure)
                        .setScale(Math.max(0, setting.figure().scale()), java.math.RoundingMode.HALF_UP),
                setting.unit());
        return problems(alone(Part.PRESSURE, station)).isEmpty() ? Optional.of(station) : Optional.empty();
    }
}
