package org.pullproof.dyno;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.StatUtils;
import org.pullproof.units.Figures;
import org.pullproof.weather.Standard;

/**
 * Whether power fits what torque and the roll tell of it, and whether it is corrected already. Power over torque times speed is 1
 * throughout; another ratio that is the same all along is a unit taken for another, or a correction.
 *
 * @param limits what is borne
 * @param standard that the session corrects to
 */
record FitRules(PullLimits limits, Standard standard) implements PullRule {
    /** Factors between the units that are taken for each other: kW and hp, N·m and lb-ft, each way. */
    private static final List<Mistaken> MISTAKEN = List.of(
            new Mistaken(0.7457, "kilowatts headed as horsepower, or the other way round"),
            new Mistaken(1.3410, "horsepower headed as kilowatts"),
            new Mistaken(1.3558, "foot-pounds headed as newton metres, or the other way round"),
            new Mistaken(0.7376, "newton metres headed as foot-pounds"));

    private record Mistaken(double factor, String words) {}

    /** A ratio that is the same all along. */
    private record Constant(double mean, String to) {}

    @Override
    public Stream<String> flags(Judged pull, Company company) {
        List<Constant> off = Stream.of(toTorque(pull), toDrum(pull))
                .flatMap(Optional::stream)
                .filter(ratio -> Math.abs(ratio.mean() - 1) > limits.ratioPercent() / 100)
                .toList();
        Stream<String> units =
                off.stream().flatMap(ratio -> unit(ratio).stream()).limit(1);
        return Stream.concat(units, corrected(pull, off).stream());
    }

    private Optional<Constant> toTorque(Judged pull) {
        Recording rows = pull.rows();
        return constant(
                rows, "torque times speed", row -> rows.at(Role.TORQUE, row) * rows.at(Role.RPM, row) * Math.PI / 30);
    }

    private Optional<Constant> toDrum(Judged pull) {
        return constant(pull.rows(), "the power that the roll's own speed tells", pull.rows()::drumWatt);
    }

    private Optional<Constant> constant(Recording rows, String to, java.util.function.IntToDoubleFunction other) {
        double[] ratio = Medians.of(rows, row -> rows.at(Role.POWER, row) / other.applyAsDouble(row));
        if (ratio.length < 3) {
            return Optional.empty();
        }
        double mean = StatUtils.mean(ratio);
        double scatter = 100 * Math.sqrt(StatUtils.variance(ratio)) / Math.abs(mean);
        return scatter < limits.constantPercent() ? Optional.of(new Constant(mean, to)) : Optional.empty();
    }

    private Optional<String> unit(Constant ratio) {
        return mistaken(ratio)
                .map(unit -> "unit: power is " + Figures.number(ratio.mean(), 4) + " of " + ratio.to()
                        + ", all along; " + Figures.number(unit.factor(), 4) + " is the factor of " + unit.words()
                        + ". Say the right unit with --column, or exclude the pull.");
    }

    private Optional<Mistaken> mistaken(Constant ratio) {
        return MISTAKEN.stream()
                .filter(unit -> Math.abs(ratio.mean() / unit.factor() - 1) < limits.factorPercent() / 100)
                .findFirst();
    }

    private Optional<String> corrected(Judged pull, List<Constant> off) {
        Pull own = pull.pull();
        if (own.correctedAlready().isPresent()) {
            return own.correctedAlready().map(this::answered);
        }
        if (pull.made().unanswered()) {
            return Optional.of(
                    "corrected: the file says that its figures are corrected already, and nobody has said to what; the"
                            + " pull has no corrected figure until that is answered.");
        }
        return off.stream()
                .filter(ratio -> !own.how().asMeasured()
                        && mistaken(ratio).isEmpty()
                        && ratio.to().contains("roll"))
                .map(ratio -> "corrected: power is " + Figures.number(ratio.mean(), 3) + " of " + ratio.to()
                        + ", all along: it may be corrected already. Say so, or that it is as measured.")
                .findFirst();
    }

    private String answered(Standard already) {
        return already == standard
                ? "corrected: the file's figures are already corrected to " + already.words()
                        + " and taken as they are; the air of the day is not used."
                : "corrected: the file's figures are already corrected to " + already.words() + ", not to "
                        + standard.words() + "; they cannot be compared and have no corrected figure.";
    }
}
