package org.pullproof.weather;

import java.util.function.ToDoubleFunction;
import org.pullproof.units.Unit;

/**
 * The factors that bring measured power to a standard's reference air. Immutable.
 *
 * <p>With pd the dry pressure in kPa, p the total pressure and t the temperature of the air taken in:
 *
 * <pre>
 *   SAE J1349   1.18 (99/pd) √((t°C + 273)/298) − 0.18       25 °C, 99 kPa dry; 85 % mechanical efficiency assumed
 *   ISO 1585    (99/pd)^1.2 ((t°C + 273.15)/298)^0.6          25 °C, 99 kPa dry; also UN R85 and EU 134/2014
 *   SAE J607    (29.92/pd inHg) √((t°F + 459.67)/519.67)      60 °F, 29.92 inHg dry
 *   DIN 70020   (1013/p hPa) √((t°C + 273)/293)               20 °C, 1013 hPa total
 * </pre>
 *
 * <p>Status: the form of J1349 and J607 was seen quoted, not in the standards themselves (P, weak); the reference air and
 * the temperature range of ISO 1585 are published in EU 134/2014 (P); the rest is from memory (M). Where each was seen:
 * {@code docs/methods/air.md}.
 */
public final class Correction {

    /** Returns the factor of that air with the uncertainty its typed digits leave. */
    public Factor factor(Standard standard, AirReading reading) {
        return factor(standard, TypedAir.of(reading));
    }

    /**
     * Returns the factor of that air. Its uncertainty is the root of the sum of squares of what the factor changes when
     * each reading is moved by half a step of its last typed digit (O).
     */
    public Factor factor(Standard standard, TypedAir typed) {
        AirState air = typed.state();
        double value = value(standard, air);
        double uncertainty = typed.halfWidth(state -> value(standard, state));
        return new Factor(standard, value, uncertainty, withinRange(standard, air, value));
    }

    double value(Standard standard, AirState air) {
        return formula(standard).applyAsDouble(air);
    }

    private static ToDoubleFunction<AirState> formula(Standard standard) {
        return switch (standard) {
            case SAE_J1349 -> Correction::saeJ1349;
            case ISO_1585 -> Correction::iso1585;
            case SAE_J607 -> Correction::saeJ607;
            case DIN_70020 -> Correction::din70020;
            case NONE -> air -> 1;
        };
    }

    private static double saeJ1349(AirState air) {
        double k = 99 / air.dry().kilopascal() * Math.sqrt((air.temperature().celsius() + 273) / 298);
        return 1.18 * k - 0.18;
    }

    private static double iso1585(AirState air) {
        return Math.pow(99 / air.dry().kilopascal(), 1.2)
                * Math.pow(air.temperature().kelvin() / 298, 0.6);
    }

    private static double saeJ607(AirState air) {
        double fahrenheit = Unit.FAHRENHEIT.fromSi(air.temperature().kelvin());
        return 29.92 / air.dry().in(Unit.INHG) * Math.sqrt((fahrenheit + 459.67) / 519.67);
    }

    private static double din70020(AirState air) {
        return 1013 / air.pressure().in(Unit.HPA) * Math.sqrt((air.temperature().celsius() + 273) / 293);
    }

    /** Ranges: J1349 from memory; ISO 1585 temperature P, limits of the factor M; the two others state none. */
    private static boolean withinRange(Standard standard, AirState air, double factor) {
        double celsius = air.temperature().celsius();
        double dryKpa = air.dry().kilopascal();
        return switch (standard) {
            case SAE_J1349 -> within(celsius, 15, 35) && within(dryKpa, 90, 105);
            case ISO_1585 -> within(celsius, 10, 45) && within(factor, 0.93, 1.07);
            case SAE_J607, DIN_70020, NONE -> true;
        };
    }

    private static boolean within(double value, double low, double high) {
        return value >= low && value <= high;
    }
}
