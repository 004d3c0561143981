package org.pullproof.weather;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.pullproof.units.Temperature;

/**
 * Everything that follows from one typed air.
 *
 * @param typed the readings
 * @param state pressures and temperature
 * @param relativeHumidity fraction, over water
 * @param dewPoint over water; empty where the air is drier than any dew point from −50 °C up
 * @param density kg/m³
 * @param dryDensity kg/m³ of its dry part
 * @param pressureAltitude m, see {@link StandardAtmosphere#pressureAltitude}
 * @param densityAltitude m, see {@link StandardAtmosphere#densityAltitude}
 * @param factors of every standard but {@link Standard#NONE}, in their order
 */
public record AirSummary(
        TypedAir typed,
        AirState state,
        double relativeHumidity,
        Optional<Temperature> dewPoint,
        double density,
        double dryDensity,
        double pressureAltitude,
        double densityAltitude,
        List<Factor> factors) {
    public AirSummary {
        factors = List.copyOf(factors);
    }

    public static AirSummary of(TypedAir typed, Correction correction) {
        AirState state = typed.state();
        double density = MoistAir.density(state);
        return new AirSummary(
                typed,
                state,
                MoistAir.relativeHumidity(state),
                MoistAir.dewPoint(state.vapour()),
                density,
                MoistAir.dryDensity(state),
                StandardAtmosphere.pressureAltitude(state.pressure()),
                StandardAtmosphere.densityAltitude(density),
                Arrays.stream(Standard.values())
                        .filter(standard -> standard != Standard.NONE)
                        .map(standard -> correction.factor(standard, typed))
                        .toList());
    }

    /** With the factor of SAE J1349 made from known friction instead of an assumed efficiency. */
    public AirSummary with(Friction friction, Correction correction) {
        List<Factor> next = factors.stream()
                .map(factor -> factor.standard() == Standard.SAE_J1349 ? correction.saeJ1349(typed, friction) : factor)
                .toList();
        return new AirSummary(
                typed, state, relativeHumidity, dewPoint, density, dryDensity, pressureAltitude, densityAltitude, next);
    }

    public Factor factor(Standard standard) {
        return factors.stream()
                .filter(factor -> factor.standard() == standard)
                .findFirst()
                .orElseGet(() -> Factor.exactlyOne(standard));
    }

    /** What a wet bulb would show; empty in air as dry or as damp as no psychrometer reads. */
    public Optional<Temperature> wetBulb() {
        boolean readable = relativeHumidity <= 1 && state.temperature().celsius() > MoistAir.COLDEST_CELSIUS;
        return readable ? Optional.of(Psychrometer.wetBulb(state)) : Optional.empty();
    }
}
