package org.pullproof.weather;

import java.util.List;
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
 * the temperature range of ISO 1585 are published in EU 134/2014 (P); the rest is from memory (M). What a person should know
 * of each is in {@link StandardNote}; where each was seen in {@code docs/methods/air.md}.
 */
public final class Correction {

    /** Returns the factor of that air with the uncertainty its typed digits leave. */
    public Factor factor(Standard standard, AirReading reading) {
        return factor(standard, reading.air());
    }

    /**
     * Returns the factor of that air. Its uncertainty is the root of the sum of squares of what the factor changes when
     * each reading is moved by half a step of its last typed digit (O), see {@link TypedAir#widths}.
     */
    public Factor factor(Standard standard, TypedAir typed) {
        return factor(standard, typed, air -> value(standard, air));
    }

    /**
     * Returns the factor of SAE J1349 for an engine whose friction is known:
     *
     * <pre>  ((P + FP) k − FP)/P,   k = (99/pd) √((t°C + 273)/298)</pre>
     *
     * <p>At a mechanical efficiency P/(P + FP) of 85 % it is the usual form but for its rounding. Status as there.
     */
    public Factor saeJ1349(TypedAir typed, Friction friction) {
        double share = friction.share();
        return factor(Standard.SAE_J1349, typed, air -> (1 + share) * density(air) - share);
    }

    private static Factor factor(Standard standard, TypedAir typed, ToDoubleFunction<AirState> formula) {
        AirState air = typed.state();
        double value = formula.applyAsDouble(air);
        return new Factor(standard, value, typed.widths(formula), outside(standard, air, value));
    }

    /** The factor of an air that nobody typed, such as one between two readings. */
    public double value(Standard standard, AirState air) {
        return formula(standard).applyAsDouble(air);
    }

    static List<String> outside(Standard standard, AirState air, double factor) {
        return new StandardRange(standard).outside(air, factor);
    }

    private static ToDoubleFunction<AirState> formula(Standard standard) {
        return switch (standard) {
            case SAE_J1349 -> air -> 1.18 * density(air) - 0.18;
            case ISO_1585 -> Correction::iso1585;
            case SAE_J607 -> Correction::saeJ607;
            case DIN_70020 -> Correction::din70020;
            case NONE -> air -> 1;
        };
    }

    /** What J1349 calls the ratio of indicated power: 1 in its reference air, above it in thinner air. */
    private static double density(AirState air) {
        return 99 / air.dry().kilopascal() * Math.sqrt((air.temperature().celsius() + 273) / 298);
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
}
