package org.pullproof.changes;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.dyno.PowerCurve;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFile;
import org.pullproof.dyno.PullFindings;
import org.pullproof.dyno.Trace;
import org.pullproof.weather.Factor;
import org.pullproof.weather.PullAir;
import org.pullproof.weather.Standard;

/** Pulls for tests, one a call, each with a band power in kW. */
final class Pulls {
    private final List<PullFindings> made = new ArrayList<>();
    private LocalDateTime time = LocalDateTime.of(2026, 6, 14, 13, 40);

    /** Adds pulls on a setup; the air needs no correction. */
    Pulls on(String setup, double... kilowatt) {
        for (double power : kilowatt) {
            add(setup, OptionalDouble.of(power), Optional.of(1.0), Optional.empty(), List.of());
        }
        return this;
    }

    Pulls flagged(String setup, double kilowatt, String flag) {
        return add(setup, OptionalDouble.of(kilowatt), Optional.of(1.0), Optional.empty(), List.of(flag));
    }

    Pulls excluded(String setup, double kilowatt) {
        return excluded(setup, kilowatt, "lifted early");
    }

    Pulls excluded(String setup, double kilowatt, String reason) {
        return add(setup, OptionalDouble.of(kilowatt), Optional.of(1.0), Optional.of(reason), List.of());
    }

    Pulls withoutAir(String setup, double kilowatt) {
        return add(setup, OptionalDouble.of(kilowatt), Optional.empty(), Optional.empty(), List.of());
    }

    Pulls withFactor(String setup, double kilowatt, double factor) {
        return add(setup, OptionalDouble.of(kilowatt), Optional.of(factor), Optional.empty(), List.of());
    }

    Pulls withoutBand(String setup) {
        String flag = "band not covered: it ends at 4,100 rpm";
        return add(setup, OptionalDouble.empty(), Optional.of(1.0), Optional.empty(), List.of(flag));
    }

    Pulls alreadyOn(Standard standard, String setup, double kilowatt) {
        Optional<Double> factor = standard == Standard.SAE_J1349 ? Optional.of(1.0) : Optional.empty();
        String flag = "corrected: the file's figures are already corrected to " + standard.words() + ".";
        return add(setup, OptionalDouble.of(kilowatt), factor, Optional.empty(), List.of(flag), Optional.of(standard));
    }

    Pulls nextDay() {
        time = time.plusDays(1);
        return this;
    }

    List<PullFindings> list() {
        return List.copyOf(made);
    }

    private Pulls add(
            String setup,
            OptionalDouble kilowatt,
            Optional<Double> factor,
            Optional<String> excluded,
            List<String> flags) {
        return add(setup, kilowatt, factor, excluded, flags, Optional.empty());
    }

    private Pulls add(
            String setup,
            OptionalDouble kilowatt,
            Optional<Double> factor,
            Optional<String> excluded,
            List<String> flags,
            Optional<Standard> already) {
        int number = 1
                + (int) made.stream()
                        .filter(pull -> pull.pull().setup().equals(setup))
                        .count();
        time = time.plusMinutes(5);
        PullFile file = new PullFile("pull.csv", "pull.csv", "0".repeat(64));
        Pull pull = new Pull(setup, number, file, time, List.of(), already, excluded);
        made.add(new PullFindings(
                pull,
                setup + "-" + number,
                Trace.of(new double[] {2000, 5000}, new double[] {1, 1}),
                PowerCurve.of(2000, new double[] {1, 1}),
                Optional.<PullAir>empty(),
                factor.map(by -> new Factor(Standard.SAE_J1349, by, List.of(), List.of())),
                1,
                2000,
                kilowatt,
                flags));
        return this;
    }
}
