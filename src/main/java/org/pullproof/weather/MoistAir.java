package org.pullproof.weather;

import java.util.Optional;
import org.pullproof.units.Pressure;
import org.pullproof.units.Temperature;

/** What water vapour does to air: saturation, dew point, density. */
public final class MoistAir {
    /** Gas constant of dry air, J/(kg·K), from memory; agrees with ISO 2533 to 2e-5. */
    static final double DRY_GAS_CONSTANT = 287.058;

    /** Gas constant of water vapour, J/(kg·K), from memory. */
    static final double VAPOUR_GAS_CONSTANT = 461.495;

    static final double COLDEST_CELSIUS = -50;
    static final double HOTTEST_CELSIUS = 100;

    private MoistAir() {}

    /**
     * Returns the saturation vapour pressure over a plane surface of liquid water, below 0 °C over supercooled water.
     *
     * <pre>
     *   log10 p = 10.79574 (1 − 273.16/T) − 5.02800 log10(T/273.16)
     *           + 1.50475e-4 (1 − 10^(−8.2969 (T/273.16 − 1)))
     *           + 0.42873e-3 (10^(4.76955 (1 − 273.16/T)) − 1) − 0.2138602,   p in kPa, T in K
     * </pre>
     *
     * <p>Source (P): 40 CFR 1065.645, Eq. 1065.645-1, after Goff (1957); its example at 20 °C gives 2.3371 kPa.
     *
     * @param temperature −50 °C to 100 °C
     * @throws IllegalArgumentException outside that range
     */
    public static Pressure saturation(Temperature temperature) {
        double celsius = temperature.celsius();
        if (celsius < COLDEST_CELSIUS || celsius > HOTTEST_CELSIUS) {
            throw new IllegalArgumentException("The saturation pressure is known from " + COLDEST_CELSIUS + " to "
                    + HOTTEST_CELSIUS + " °C, was asked for " + celsius + " °C");
        }
        return Pressure.ofKilopascal(saturationKilopascal(temperature.kelvin()));
    }

    private static double saturationKilopascal(double kelvin) {
        double ratio = kelvin / 273.16;
        double less = 1 - 1 / ratio;
        return Math.pow(
                10,
                10.79574 * less
                        - 5.02800 * Math.log10(ratio)
                        + 1.50475e-4 * (1 - Math.pow(10, -8.2969 * (ratio - 1)))
                        + 0.42873e-3 * (Math.pow(10, 4.76955 * less) - 1)
                        - 0.2138602);
    }

    /**
     * Returns the temperature at which that vapour saturates over water, by halving the range of {@link #saturation} until
     * it is narrower than a millionth of a degree.
     *
     * @return empty below the vapour pressure of −50 °C (6 Pa), so for dry air, and above that of 100 °C
     */
    public static Optional<Temperature> dewPoint(Pressure vapour) {
        double low = Temperature.ofCelsius(COLDEST_CELSIUS).kelvin();
        double high = Temperature.ofCelsius(HOTTEST_CELSIUS).kelvin();
        double wanted = vapour.kilopascal();
        if (wanted < saturationKilopascal(low) || wanted > saturationKilopascal(high)) {
            return Optional.empty();
        }
        while (high - low > 1e-6) {
            double middle = (low + high) / 2;
            if (saturationKilopascal(middle) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Optional.of(new Temperature((low + high) / 2));
    }

    /** Returns the relative humidity over water as a fraction: vapour pressure over saturation pressure. */
    public static double relativeHumidity(AirState air) {
        return air.vapour().pascal() / saturation(air.temperature()).pascal();
    }

    /**
     * Returns the density in kg/m³ as a mixture of two ideal gases.
     *
     * <pre>  ρ = pd/(287.058 T) + pv/(461.495 T),   pressures in Pa</pre>
     *
     * <p>Form: common knowledge of gases; within 0.1 % of ASHRAE's spreadsheet values, see {@code MoistAirTest}.
     */
    public static double density(AirState air) {
        return dryDensity(air)
                + air.vapour().pascal()
                        / (VAPOUR_GAS_CONSTANT * air.temperature().kelvin());
    }

    /** Returns the density of the dry part in kg/m³, pd/(287.058 T): what an engine can burn fuel with. */
    public static double dryDensity(AirState air) {
        return air.dry().pascal() / (DRY_GAS_CONSTANT * air.temperature().kelvin());
    }
}
