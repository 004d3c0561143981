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
import org.pullproof.weather.Barometer;
import org.pullproof.weather.Humidity;
import org.pullproof.weather.Lookalike;
import org.pullproof.weather.Metar;
import org.pullproof.weather.Thermometer;
import org.pullproof.weather.TypedAir;

/** The air as it is being typed, in whichever form: each part checked by itself, and all of them together. */
public final class AirEntry {
    private static final Quantity USUAL_TEMPERATURE = Quantity.of("20", Unit.CELSIUS);
    private static final Barometer USUAL_PRESSURE = new Barometer.Station(Quantity.of("100", Unit.KPA));
    private static final Humidity USUAL_MOISTURE = new Humidity.Relative(Quantity.of("50", Unit.PERCENT));

    private final AirCheck check;
    private final Supplier<Optional<Quantity>> garage;
    private final Map<Part, Quantity> typed = new EnumMap<>(Part.class);
    private Optional<Metar> report = Optional.empty();
    private Optional<Quantity> refusedPressure = Optional.empty();
    private PressureForm pressureForm = PressureForm.STATION;
    private MoistureForm moistureForm = MoistureForm.HUMIDITY;

    /** Which pressure is typed. */
    public enum PressureForm {
        STATION("station", "station pressure"),
        ALTIMETER("altimeter setting", "altimeter setting"),
        SEA_LEVEL("sea level", "sea-level pressure"),
        ELSEWHERE("read elsewhere", "station pressure there"),
        METAR("METAR", "METAR");

        private final String choice;
        private final String words;

        PressureForm(String choice, String words) {
            this.choice = choice;
            this.words = words;
        }

        public String choice() {
            return choice;
        }

        public String words() {
            return words;
        }
    }

    /** How the moisture is typed; with a METAR its dew point serves unless another is typed. */
    public enum MoistureForm {
        HUMIDITY("humidity"),
        DEW_POINT("dew point"),
        WET_BULB("wet bulb"),
        METAR("METAR"),
        UNKNOWN("not known");

        private final String words;

        MoistureForm(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** Whether a figure is typed for it. */
        public boolean isTyped() {
            return this != METAR && this != UNKNOWN;
        }
    }

    /** What is typed of the air. */
    public enum Part {
        PRESSURE,
        TEMPERATURE,
        HUMIDITY,
        ELEVATION,
        READ_AT
    }

    /**
     * @param garage its elevation, if told
     */
    AirEntry(AirCheck check, Supplier<Optional<Quantity>> garage) {
        this.check = check;
        this.garage = garage;
    }

    public PressureForm pressureForm() {
        return pressureForm;
    }

    public MoistureForm moistureForm() {
        return moistureForm;
    }

    /** Chooses which pressure is typed; one typed before is to be read again. */
    public void choose(PressureForm form) {
        pressureForm = form;
        forget(Part.PRESSURE);
        if (form == PressureForm.METAR) {
            moistureForm = MoistureForm.METAR;
        } else if (moistureForm == MoistureForm.METAR) {
            moistureForm = MoistureForm.HUMIDITY;
        }
    }

    /** Chooses how the moisture is typed; one typed before is to be read again. */
    public void choose(MoistureForm form) {
        moistureForm = form;
        forget(Part.HUMIDITY);
    }

    /** What the field of a part is called now. */
    public String words(Part part) {
        return switch (part) {
            case PRESSURE -> pressureForm.words();
            case TEMPERATURE -> "temperature";
            case HUMIDITY -> moistureForm.words();
            case ELEVATION -> "elevation";
            case READ_AT -> "read at";
        };
    }

    /** The unit a bare figure is taken in. */
    public Unit unit(Part part, Figures figures) {
        return switch (part) {
            case PRESSURE -> figures.unit(Shown.AIR_PRESSURE);
            case TEMPERATURE -> figures.unit(Shown.AIR_TEMPERATURE);
            case HUMIDITY -> moistureForm == MoistureForm.HUMIDITY ? Unit.PERCENT : figures.unit(Shown.AIR_TEMPERATURE);
            case ELEVATION, READ_AT -> figures.unit(Shown.ELEVATION);
        };
    }

    /**
     * Reads and keeps one part.
     *
     * @return the entry as it is kept
     * @throws IllegalArgumentException with a sentence if it cannot be read or there is no such air
     */
    public String take(Part part, String text, Figures figures) {
        forget(part);
        if (part == Part.PRESSURE && pressureForm == PressureForm.METAR) {
            return takeReport(text);
        }
        Quantity quantity = Quantity.parse(text, unit(part, figures));
        Optional<String> wrong = problems(alone(part, quantity)).stream().findFirst();
        if (wrong.isPresent()) {
            refusedPressure = part == Part.PRESSURE ? Optional.of(quantity) : Optional.empty();
            throw new IllegalArgumentException(wrong.get());
        }
        typed.put(part, quantity);
        return quantity.toString();
    }

    private String takeReport(String text) {
        Metar read = Metar.parse(text);
        new Barometer.Report(read, elevation().orElse(Quantity.of("0", Unit.M)));
        report = Optional.of(read);
        return text;
    }

    public void forget(Part part) {
        typed.remove(part);
        if (part == Part.PRESSURE) {
            report = Optional.empty();
            refusedPressure = Optional.empty();
        }
    }

    /** One part in otherwise usual air, so that what is wrong is said of this part. */
    private TypedAir alone(Part part, Quantity quantity) {
        return switch (part) {
            case PRESSURE ->
                new TypedAir(barometer(quantity).orElse(USUAL_PRESSURE), USUAL_TEMPERATURE, USUAL_MOISTURE);
            case TEMPERATURE -> new TypedAir(USUAL_PRESSURE, quantity, new Humidity.Unknown());
            case HUMIDITY ->
                new TypedAir(
                        USUAL_PRESSURE,
                        typed.getOrDefault(Part.TEMPERATURE, Quantity.of("89", Unit.CELSIUS)),
                        moisture(quantity));
            case ELEVATION, READ_AT ->
                new TypedAir(
                        new Barometer.Altimeter(Quantity.of("101.3", Unit.KPA), quantity),
                        USUAL_TEMPERATURE,
                        USUAL_MOISTURE);
        };
    }

    private List<String> problems(TypedAir air) {
        boolean realPressure = !air.barometer().equals(USUAL_PRESSURE);
        return check.problems(air, realPressure ? elevation() : Optional.empty());
    }

    /** The elevation typed for this reading, else that of the garage. */
    private Optional<Quantity> elevation() {
        return Optional.ofNullable(typed.get(Part.ELEVATION)).or(garage);
    }

    private Optional<Barometer> barometer(Quantity pressure) {
        return switch (pressureForm) {
            case STATION ->
                Optional.of(new Barometer.Station(pressure, Optional.ofNullable(typed.get(Part.ELEVATION))));
            case ALTIMETER -> elevation().map(here -> new Barometer.Altimeter(pressure, here));
            case SEA_LEVEL -> elevation().map(here -> new Barometer.SeaLevel(pressure, here));
            case ELSEWHERE -> elsewhere(pressure);
            case METAR -> Optional.empty();
        };
    }

    private Optional<Barometer> elsewhere(Quantity pressure) {
        return Optional.ofNullable(typed.get(Part.READ_AT))
                .flatMap(there -> elevation().map(here -> new Barometer.Elsewhere(pressure, there, here)));
    }

    private Optional<Barometer> barometer() {
        return pressureForm == PressureForm.METAR
                ? report.flatMap(read -> elevation().map(here -> new Barometer.Report(read, here)))
                : Optional.ofNullable(typed.get(Part.PRESSURE)).flatMap(this::barometer);
    }

    private Optional<Thermometer> thermometer() {
        return Optional.ofNullable(typed.get(Part.TEMPERATURE))
                .<Thermometer>map(Thermometer.Intake::new)
                .or(() -> report.filter(read -> read.temperature().isPresent()).map(Thermometer.Report::new));
    }

    private Optional<Humidity> moisture() {
        return switch (moistureForm) {
            case UNKNOWN -> Optional.of(new Humidity.Unknown());
            case METAR -> report.map(AirEntry::moisture);
            case HUMIDITY, DEW_POINT, WET_BULB ->
                Optional.ofNullable(typed.get(Part.HUMIDITY)).map(this::moisture);
        };
    }

    /** The dew point of a report; without one, none is known. */
    private static Humidity moisture(Metar read) {
        return read.dewPoint().isPresent() ? new Humidity.Report(read) : new Humidity.Unknown();
    }

    private Humidity moisture(Quantity quantity) {
        return switch (moistureForm) {
            case DEW_POINT -> new Humidity.DewPoint(quantity);
            case WET_BULB -> new Humidity.WetBulb(quantity);
            case HUMIDITY, METAR, UNKNOWN -> new Humidity.Relative(quantity);
        };
    }

    private Optional<TypedAir> complete() {
        return barometer()
                .flatMap(pressure ->
                        thermometer().flatMap(warmth -> moisture().map(damp -> new TypedAir(pressure, warmth, damp))));
    }

    /** The air typed so far; empty until all of it stands and agrees. */
    public Optional<TypedAir> air() {
        return complete().filter(air -> problems(air).isEmpty());
    }

    /** The report that was read, to show what it tells. */
    public Optional<Metar> report() {
        return report;
    }

    /** The altimeter setting that the pressure typed looks like, refused or only doubted. */
    public Optional<Lookalike> lookalike() {
        return refusedPressure
                .or(() -> Optional.ofNullable(typed.get(Part.PRESSURE)))
                .filter(pressure -> pressureForm == PressureForm.STATION)
                .flatMap(pressure -> check.lookalike(alone(Part.PRESSURE, pressure), elevation()));
    }

    /** The air with that pressure instead of the one typed, as soon as the other parts stand. */
    public Optional<TypedAir> with(Barometer pressure) {
        return thermometer().flatMap(warmth -> moisture().map(damp -> new TypedAir(pressure, warmth, damp)));
    }

    /** Why the air typed cannot be used yet, or empty. */
    public Optional<String> waitsFor() {
        if (complete().isPresent()) {
            return problems(complete().get()).stream().findFirst();
        }
        Part missing = missing();
        String what = missing == Part.READ_AT ? "elevation of the place where it was read" : words(missing);
        return Optional.of("Waits for the " + what + ".");
    }

    private Part missing() {
        boolean noPressure = pressureForm == PressureForm.METAR ? report.isEmpty() : !typed.containsKey(Part.PRESSURE);
        if (noPressure) {
            return Part.PRESSURE;
        }
        if (pressureForm == PressureForm.ELSEWHERE && !typed.containsKey(Part.READ_AT)) {
            return Part.READ_AT;
        }
        if (pressureForm != PressureForm.STATION && elevation().isEmpty()) {
            return Part.ELEVATION;
        }
        return thermometer().isEmpty() ? Part.TEMPERATURE : Part.HUMIDITY;
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
        return new AirReading(LocalDateTime.now(clock).withNano(0), complete().orElseThrow());
    }
}
