package org.pullproof.cli;

import java.util.Optional;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;
import org.pullproof.weather.AirSummary;
import org.pullproof.weather.Factor;

/** Writes the state of the air and its factors, for scripts and for people. */
final class AirPrinter {
    private final AirSummary air;
    private final Optional<Quantity> power;

    AirPrinter(AirSummary air, Optional<Quantity> power) {
        this.air = air;
        this.power = power;
    }

    Json json() {
        Json json = new Json()
                .put("stationPressureKpa", air.state().pressure().kilopascal())
                .put("vapourPressureKpa", air.state().vapour().kilopascal())
                .put("dryPressureKpa", air.state().dry().kilopascal())
                .put("temperatureC", air.state().temperature().celsius())
                .put("relativeHumidity", air.relativeHumidity());
        air.dewPoint().ifPresent(dewPoint -> json.put("dewPointC", dewPoint.celsius()));
        Json factors = new Json();
        air.factors().forEach(factor -> factors.put(factor.standard().key(), json(factor)));
        return json.put("densityAltitudeM", air.densityAltitude())
                .put("pressureAltitudeM", air.pressureAltitude())
                .put("airDensityKgM3", air.density())
                .put("factors", factors);
    }

    private Json json(Factor factor) {
        Json json = new Json()
                .put("factor", factor.value())
                .put("uncertainty", factor.uncertainty())
                .put("withinRange", factor.withinRange());
        power.ifPresent(measured -> json.put("correctedPowerKw", measured.si() / 1e3 * factor.value()));
        return json;
    }

    void print(Output output, Figures figures) {
        output.print("Station pressure " + figures.of(air.state().pressure().pascal(), Shown.AIR_PRESSURE) + ", dry "
                + figures.of(air.state().dry().pascal(), Shown.AIR_PRESSURE) + "; "
                + figures.of(air.state().temperature().kelvin(), Shown.AIR_TEMPERATURE) + ", "
                + Figures.percent(air.relativeHumidity() * 100, 0)
                + air.dewPoint()
                        .map(dewPoint -> ", dew point " + figures.of(dewPoint.kelvin(), Shown.AIR_TEMPERATURE))
                        .orElse("")
                + ".");
        output.print("Density " + Figures.number(air.density(), 4) + Figures.NO_BREAK_SPACE + "kg/m³, density altitude "
                + figures.of(air.densityAltitude(), Shown.ELEVATION) + ", pressure altitude "
                + figures.of(air.pressureAltitude(), Shown.ELEVATION) + ".");
        output.print("");
        output.print(table(figures));
    }

    private Table table(Figures figures) {
        Table table = new Table().words("standard").figures("factor").words("range");
        power.ifPresent(measured -> table.figures("corrected"));
        air.factors().forEach(factor -> table.row(cells(factor, figures)));
        return table;
    }

    private String[] cells(Factor factor, Figures figures) {
        String value = Figures.number(factor.value(), 4) + " ±" + Figures.NO_BREAK_SPACE
                + Figures.number(factor.uncertainty(), 4);
        String range = factor.withinRange() ? "" : "outside the standard's range";
        String standard = factor.standard().words();
        return power.map(measured ->
                        new String[] {standard, value, range, figures.of(measured.si() * factor.value(), Shown.POWER)})
                .orElse(new String[] {standard, value, range});
    }
}
