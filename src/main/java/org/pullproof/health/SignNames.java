package org.pullproof.health;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.health.faults.FaultConstants;
import org.pullproof.units.Pressure;
import org.pullproof.units.Unit;
import org.pullproof.weather.StandardAtmosphere;

/** What was read of the whole engine, by the names that the likelihood ratios have. */
final class SignNames {
    private static final double OIL_LOW_PSI = 8;
    private static final double OIL_MIDDLE_PSI = 15;
    private static final double OIL_GOOD_PSI = 20;

    private final Evidence evidence;
    private final FaultConstants.Signs constants;

    SignNames(Evidence evidence, FaultConstants.Signs constants) {
        this.evidence = evidence;
        this.constants = constants;
    }

    List<String> all() {
        List<String> names = new ArrayList<>();
        evidence.engineSigns().forEach(sign -> name(sign).ifPresent(names::add));
        return names;
    }

    private Optional<String> name(Reading.Sign sign) {
        return switch (sign.test()) {
            case OIL_PRESSURE -> sign.figure().map(oil -> oil(oil.in(Unit.PSI)));
            case VACUUM -> vacuum(sign);
            case COOLANT_GAS -> sign.word().map(word -> "coolant-gas-" + word);
            case FILTER_CUT -> sign.word().map(word -> word.equals("clean") ? "filter-clean" : word);
            case CODES -> sign.word().filter("not-ready"::equals).map(word -> "codes-erased");
            case OBSERVATION -> sign.word();
            default -> Optional.empty();
        };
    }

    private static String oil(double psi) {
        if (psi < OIL_LOW_PSI) {
            return "oil-below-8";
        }
        if (psi < OIL_MIDDLE_PSI) {
            return "oil-8-to-15";
        }
        return psi <= OIL_GOOD_PSI ? "oil-15-to-20" : "oil-above-20";
    }

    private Optional<String> vacuum(Reading.Sign sign) {
        return sign.figure().isPresent()
                ? vacuum(atSeaLevel(sign, sign.figure().get().in(Unit.INHG)))
                : sign.word().map(word -> word.equals("steady-low") ? "vacuum-low" : word);
    }

    private Optional<String> vacuum(double inHg) {
        if (inHg <= constants.vacuumLow()) {
            return Optional.of("vacuum-low");
        }
        boolean inRange = inHg >= constants.vacuumFrom() && inHg <= constants.vacuumTo();
        return inRange ? Optional.of("vacuum-in-range") : Optional.empty();
    }

    private double atSeaLevel(Reading.Sign sign, double inHg) {
        double height = evidence.station(sign).stream()
                .map(pascal -> StandardAtmosphere.pressureAltitude(new Pressure(pascal)))
                .findFirst()
                .orElse(0);
        return inHg + Math.max(0, height) / constants.metresAnInHg();
    }
}
