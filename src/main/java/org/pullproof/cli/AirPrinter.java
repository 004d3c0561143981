package org.pullproof.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pullproof.app.ReadAir;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;
import org.pullproof.weather.AirPart;
import org.pullproof.weather.AirSummary;
import org.pullproof.weather.Factor;
import org.pullproof.weather.Friction;
import org.pullproof.weather.Humidity;
import org.pullproof.weather.Metar;
import org.pullproof.weather.Standard;
import org.pullproof.weather.StandardNote;
import org.pullproof.weather.Thermometer;

/** Writes the state of the air and its factors, for scripts and for people. */
final class AirPrinter {
    private static final char SPACE = Figures.NO_BREAK_SPACE;

    /** What is less than this reads as 0.0000. */
    private static final double SHOWN = 0.00005;

    private final AirSummary air;
    private final List<String> doubts;
    private final Optional<Quantity> power;
    private final Optional<Friction> friction;
    private final Standard standard;
    private final boolean knownUncharged;

    /**
     * @param told the air, with what is doubtful of it
     * @param power measured, to be corrected
     * @param friction known at that power
     * @param standard whose factor is looked at closely
     * @param knownUncharged whether the engine is known to breathe freely, so that nothing need be said of charging
     */
    AirPrinter(
            ReadAir.Told told,
            Optional<Quantity> power,
            Optional<Friction> friction,
            Standard standard,
            boolean knownUncharged) {
        this.air = told.summary();
        this.doubts = told.doubts();
        this.power = power;
        this.friction = friction;
        this.standard = standard;
        this.knownUncharged = knownUncharged;
    }

    Json json() {
        Json json = new Json()
                .put("read", air.typed().words())
                .put("stationPressureKpa", air.state().pressure().kilopascal())
                .put("vapourPressureKpa", air.state().vapour().kilopascal())
                .put("dryPressureKpa", air.state().dry().kilopascal())
                .put("temperatureC", air.state().temperature().celsius())
                .put("relativeHumidity", air.relativeHumidity());
        air.dewPoint().ifPresent(dewPoint -> json.put("dewPointC", dewPoint.celsius()));
        air.wetBulb().ifPresent(wetBulb -> json.put("wetBulbC", wetBulb.celsius()));
        json.put("densityAltitudeM", air.densityAltitude())
                .put("pressureAltitudeM", air.pressureAltitude())
                .put("airDensityKgM3", air.density())
                .put("dryDensityKgM3", air.dryDensity());
        air.typed().report().ifPresent(report -> json.put("metar", json(report)));
        Json factors = new Json();
        air.factors().forEach(factor -> factors.put(factor.standard().key(), json(factor)));
        return json.put("factors", factors).put("warnings", doubts).put("notes", notes());
    }

    private static Json json(Metar report) {
        Json json = new Json().put("altimeter", report.altimeter());
        report.temperature()
                .ifPresent(t -> json.put("temperatureC", t.temperature().celsius()));
        report.dewPoint().ifPresent(t -> json.put("dewPointC", t.temperature().celsius()));
        return json.put("missing", report.missing());
    }

    private Json json(Factor factor) {
        StandardNote note = StandardNote.of(factor.standard());
        Json json = new Json()
                .put("factor", factor.value())
                .put("uncertainty", factor.uncertainty())
                .put("withinRange", factor.withinRange());
        power.ifPresent(measured -> json.put("correctedPowerKw", measured.si() / 1e3 * factor.value()));
        Json parts = new Json();
        factor.parts().forEach(part -> parts.put(part.part().words(), part.halfWidth()));
        return json.put("parts", parts)
                .put("outside", factor.outside())
                .put("reference", note.reference())
                .put("pressure", note.pressure())
                .put("form", note.form())
                .put("range", note.range())
                .put("status", note.status());
    }

    void print(Output output, Figures figures) {
        output.print("Read: " + air.typed().words() + ".");
        output.print("Station pressure " + figures.of(air.state().pressure().pascal(), Shown.AIR_PRESSURE) + ", vapour "
                + figures.of(air.state().vapour().pascal(), Shown.AIR_PRESSURE) + ", dry "
                + figures.of(air.state().dry().pascal(), Shown.AIR_PRESSURE) + "; "
                + temperature(air.state().temperature().kelvin(), figures) + ", "
                + Figures.percent(air.relativeHumidity() * 100, 0)
                + air.dewPoint()
                        .map(dewPoint -> ", dew point " + temperature(dewPoint.kelvin(), figures))
                        .orElse("")
                + ".");
        output.print("Density " + density(air.density()) + ", dry " + density(air.dryDensity()) + "; density altitude "
                + figures.of(air.densityAltitude(), Shown.ELEVATION) + ", pressure altitude "
                + figures.of(air.pressureAltitude(), Shown.ELEVATION) + ".");
        output.print("");
        output.print(table(figures));
        output.print("");
        output.print(moves());
        air.factors().forEach(factor -> output.print(form(factor.standard())));
        air.factors().stream()
                .flatMap(factor -> factor.outside().stream())
                .forEach(line -> output.print("Outside: " + line));
        doubts.forEach(line -> output.print("Doubtful: " + line));
        output.print(notes());
    }

    private static String temperature(double kelvin, Figures figures) {
        return figures.of(kelvin, Shown.AIR_TEMPERATURE);
    }

    private static String density(double kilogram) {
        return Figures.number(kilogram, 4) + SPACE + "kg/m³";
    }

    private Table table(Figures figures) {
        Table table = new Table()
                .words("standard")
                .figures("factor")
                .words("reference air")
                .words("made for");
        power.ifPresent(measured -> table.figures("corrected"));
        air.factors().forEach(factor -> table.row(cells(factor, figures)));
        return table;
    }

    private String[] cells(Factor factor, Figures figures) {
        StandardNote note = StandardNote.of(factor.standard());
        List<String> cells = new ArrayList<>(List.of(
                factor.standard().words(),
                Figures.number(factor.value(), 4) + " ±" + SPACE + Figures.number(factor.uncertainty(), 4),
                note.reference(),
                note.range() + (factor.withinRange() ? "" : ": outside")));
        power.ifPresent(measured -> cells.add(figures.of(measured.si() * factor.value(), Shown.POWER)));
        return cells.toArray(new String[0]);
    }

    private static String form(Standard standard) {
        StandardNote note = StandardNote.of(standard);
        return standard.words() + ": " + note.form() + "; pressure " + note.pressure() + "; " + note.status() + ".";
    }

    private String moves() {
        Factor factor = air.factor(standard);
        return "What moves the factor of " + standard.words() + ": "
                + factor.parts().stream()
                        .filter(part -> part.halfWidth() >= SHOWN)
                        .map(AirPrinter::part)
                        .collect(Collectors.joining(", "))
                + ".";
    }

    private static String part(AirPart.Width width) {
        return width.part().words() + " ±" + SPACE + Figures.number(width.halfWidth(), 4);
    }

    /** What must be known of these figures. */
    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        air.typed().report().ifPresent(report -> notes.addAll(ofReport(report)));
        if (air.typed().humidity() instanceof Humidity.Unknown) {
            notes.add("No moisture was told: 20 to 90 % of saturation stands as uncertainty.");
        }
        friction.ifPresent(known -> notes.add("SAE J1349 with the friction power told, " + known.friction() + ", at "
                + known.measured() + "; no mechanical efficiency is assumed."));
        if (!knownUncharged) {
            notes.add(StandardNote.CHARGED);
        }
        notes.add(StandardNote.AT_THE_WHEELS);
        return List.copyOf(notes);
    }

    private List<String> ofReport(Metar report) {
        List<String> notes = new ArrayList<>();
        if (!report.missing().isEmpty()) {
            notes.add("The METAR tells no " + String.join(" and no ", report.missing()) + ".");
        }
        report.temperature()
                .ifPresent(t -> notes.add("The METAR's own temperature is " + t
                        + (air.typed().thermometer() instanceof Thermometer.Report
                                ? "; it stands for that of the intake, which nobody read: read it there."
                                : "; that of the intake was typed.")));
        return notes;
    }
}
