package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;
import org.pullproof.weather.Barometer;
import org.pullproof.weather.Humidity;
import org.pullproof.weather.Standard;
import org.pullproof.weather.Thermometer;
import org.pullproof.weather.TypedAir;

/**
 * A power that somebody else's sheet states, kept as stated: "248 hp", by a standard or none told, at the wheels or the crank or
 * not told.
 *
 * @param power as stated, above zero
 * @param standard it was corrected to, if the sheet says; {@link Standard#NONE} if it says that it was not
 * @param at where the power was taken
 * @param air in which it was measured, if the sheet says: station pressure, temperature, and relative humidity or none known
 * @param note whose sheet, in free words; may be empty
 */
public record StatedFigure(Quantity power, Optional<Standard> standard, At at, Optional<TypedAir> air, String note) {
    /** Where the power was taken. */
    public enum At {
        WHEELS("wheels", "at the wheels"),
        CRANK("crank", "at the crank"),
        UNKNOWN("unknown", "wheels or crank not told");

        private final String key;
        private final String words;

        At(String key, String words) {
            this.key = key;
            this.words = words;
        }

        public String key() {
            return key;
        }

        public String words() {
            return words;
        }
    }

    private static final String SHAPE = "write a power, then as far as the sheet says it a standard (" + standards()
            + "), \"wheels\" or \"crank\", the air as station pressure, temperature and humidity, and after \";\" a"
            + " note: 248hp sae-j607 wheels; sheet of the seller";

    public StatedFigure {
        power.requireDimension(Dimension.POWER);
        if (!(power.si() > 0)) {
            throw new IllegalArgumentException("A stated power is above zero, was " + power);
        }
        if (air.isPresent() && !plain(air.get())) {
            throw new IllegalArgumentException("The air of a sheet is a station pressure, a temperature, and a relative"
                    + " humidity or none known");
        }
        note = note.strip();
    }

    private static boolean plain(TypedAir air) {
        return air.barometer() instanceof Barometer.Station
                && air.thermometer() instanceof Thermometer.Intake
                && (air.humidity() instanceof Humidity.Relative || air.humidity() instanceof Humidity.Unknown);
    }

    private static String standards() {
        return Arrays.stream(Standard.values()).map(Standard::key).collect(Collectors.joining(", "));
    }

    /**
     * Reads what {@link #text} writes; the words before the note may stand in any order.
     *
     * @throws IllegalArgumentException with a sentence if there is no power, or a word that is none of these, or one told twice
     */
    public static StatedFigure parse(String text) {
        String[] halves = text.split(";", 2);
        Words words = new Words(text);
        Stream.of(halves[0].strip().split("[\\s\u00a0]+"))
                .filter(word -> !word.isEmpty())
                .forEach(words::take);
        return words.figure(halves.length > 1 ? halves[1] : "");
    }

    /** The words of one figure, sorted by what they are. */
    private static final class Words {
        private final String text;
        private final List<Quantity> quantities = new ArrayList<>();
        private final List<Standard> standards = new ArrayList<>();
        private final List<At> places = new ArrayList<>();

        Words(String text) {
            this.text = text;
        }

        void take(String word) {
            Optional<Standard> standard = Arrays.stream(Standard.values())
                    .filter(known -> known.key().equals(word))
                    .findFirst();
            Optional<At> place = Arrays.stream(At.values())
                    .filter(known -> known.key().equals(word) || known.key().equals(word + "s"))
                    .findFirst();
            standard.ifPresent(standards::add);
            place.ifPresent(places::add);
            if (standard.isEmpty() && place.isEmpty()) {
                quantities.add(quantity(word));
            }
        }

        private Quantity quantity(String word) {
            try {
                return Quantity.parse(word);
            } catch (IllegalArgumentException unknown) {
                throw refused("\"" + word + "\" is none of its words");
            }
        }

        StatedFigure figure(String note) {
            Quantity power = one(Dimension.POWER)
                    .orElseThrow(() -> refused("\"" + text.strip() + "\" has no power with its unit"));
            if (quantities.size() > used() || standards.size() > 1 || places.size() > 1) {
                throw refused("\"" + text.strip() + "\" tells something twice, or what is no power and no air");
            }
            return new StatedFigure(
                    power,
                    standards.stream().findFirst(),
                    places.stream().findFirst().orElse(At.UNKNOWN),
                    air(),
                    note);
        }

        private long used() {
            return Stream.of(Dimension.POWER, Dimension.PRESSURE, Dimension.TEMPERATURE, Dimension.SHARE)
                    .filter(dimension -> one(dimension).isPresent())
                    .count();
        }

        private Optional<Quantity> one(Dimension dimension) {
            return quantities.stream()
                    .filter(quantity -> quantity.dimension() == dimension)
                    .findFirst();
        }

        private Optional<TypedAir> air() {
            Optional<Quantity> pressure = one(Dimension.PRESSURE);
            Optional<Quantity> temperature = one(Dimension.TEMPERATURE);
            Optional<Quantity> share = one(Dimension.SHARE);
            if (pressure.isEmpty() && temperature.isEmpty() && share.isEmpty()) {
                return Optional.empty();
            }
            if (pressure.isEmpty() || temperature.isEmpty()) {
                throw refused("the air of a sheet needs station pressure and temperature at least");
            }
            Humidity humidity = share.<Humidity>map(Humidity.Relative::new).orElseGet(Humidity.Unknown::new);
            return Optional.of(new TypedAir(new Barometer.Station(pressure.get()), temperature.get(), humidity));
        }

        private IllegalArgumentException refused(String why) {
            return new IllegalArgumentException(why + ": " + SHAPE);
        }
    }

    /** The figure as it may be typed: "248hp sae-j607 wheels; sheet of the seller". */
    public String text() {
        List<String> words = new ArrayList<>();
        words.add(typed(power));
        standard.map(Standard::key).ifPresent(words::add);
        if (at != At.UNKNOWN) {
            words.add(at.key());
        }
        air.ifPresent(told -> words.addAll(typed(told)));
        return String.join(" ", words) + (note.isEmpty() ? "" : "; " + note);
    }

    private static String typed(Quantity quantity) {
        return quantity.figure().toPlainString() + quantity.unit().symbol();
    }

    private static List<String> typed(TypedAir air) {
        List<String> words = new ArrayList<>();
        if (air.barometer() instanceof Barometer.Station station) {
            words.add(typed(station.pressure()));
        }
        if (air.thermometer() instanceof Thermometer.Intake intake) {
            words.add(typed(intake.read()));
        }
        if (air.humidity() instanceof Humidity.Relative relative) {
            words.add(typed(relative.share()));
        }
        return words;
    }

    /** The figure in words: "248 hp, SAE J607, at the wheels". */
    public String words() {
        return power + ", " + standard.map(Standard::words).orElse("standard not told") + ", " + at.words();
    }
}
