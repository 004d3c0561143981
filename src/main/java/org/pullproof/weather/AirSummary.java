package org.pullproof.weather;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.pullproof.units.Temperature;

/**
 * Everything that follows from one typed air.
 *
 * @param state pressures and temperature
 * @param relativeHumidity fraction, over water
 * @param dewPoint over water; empty where the air is drier than any dew point from −50 °C up
 * @param density kg/m³
 * @param pressureAltitude m, see {@link StandardAtmosphere#pressureAltitude}
 * @param densityAltitude m, see {@link StandardAtmosphere#densityAltitude}
 * @param factors of every standard but {@link Standard#NONE}, in their order
 */
public record AirSummary(
        AirState state,
        double relativeHumidity,
        Optional<Temperature> dewPoint,
        double density,
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
                state,
                MoistAir.relativeHumidity(state),
                MoistAir.dewPoint(state.vapour()),
                density,
                StandardAtmosphere.pressureAltitude(state.pressure()),
                StandardAtmosphere.densityAltitude(density),
                Arrays.stream(Standard.values())
                        .filter(standard -> standard != Standard.NONE)
                        .map(standard -> correction.factor(standard, typed))
                        .toList());
    }
}
