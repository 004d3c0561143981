package org.pullproof.dyno;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.pullproof.units.Figures;

/**
 * Whether the engine burnt the same mixture as in the other pulls, and one that is safe under load.
 *
 * @param limits what is borne
 */
record MixtureRules(PullLimits limits) implements PullRule {
    /** Without times, so many samples on end count as long. */
    private static final int MANY = 5;

    private static final String STOP = " Stop and find the cause before the next pull.";

    @Override
    public Stream<String> flags(Judged pull, Company company) {
        return Stream.of(moved(pull, company), lean(pull), leaner(pull, company))
                .flatMap(stream -> stream);
    }

    private Stream<String> moved(Judged pull, Company company) {
        OptionalDouble usual = company.usualOfSetup(pull, Figured.mean(Role.LAMBDA));
        double own = pull.mean(Role.LAMBDA);
        return usual.isPresent() && Math.abs(own - usual.getAsDouble()) > limits.lambdaMoved()
                ? Stream.of("mixture: mean lambda in the band is " + lambda(own) + ", against "
                        + lambda(usual.getAsDouble()) + " as is usual for this setup; " + lambda(limits.lambdaMoved())
                        + " either way is borne.")
                : Stream.empty();
    }

    private Stream<String> lean(Judged pull) {
        double limit = charged(pull) ? limits.leanChargedLambda() : limits.leanLambda();
        Recording rows = pull.rows();
        int from = 0;
        for (int row = 1; row <= rows.size(); row++) {
            boolean goesOn =
                    row < rows.size() && rows.at(Role.LAMBDA, row) > limit && rows.at(Role.LAMBDA, from) > limit;
            if (!goesOn) {
                if (row > from && rows.at(Role.LAMBDA, from) > limit && lasting(rows, from, row - 1)) {
                    return Stream.of("mixture: lean: lambda is above " + lambda(limit) + " from "
                            + Figures.number(rows.at(Role.RPM, from), 0) + " to "
                            + Figures.number(rows.at(Role.RPM, row - 1), 0) + " rpm." + STOP);
                }
                from = row;
            }
        }
        return Stream.empty();
    }

    private boolean lasting(Recording rows, int from, int last) {
        double seconds = rows.at(Role.TIME, last) - rows.at(Role.TIME, from);
        return Double.isNaN(seconds) ? last - from >= MANY : seconds >= limits.leanSeconds();
    }

    /** Absolute pressure well above that of the air, or a gauge that shows some of its own (O). */
    private static boolean charged(Judged pull) {
        double most = Arrays.stream(pull.rows().finite(Role.BOOST)).max().orElse(0);
        return most > 115e3 || (most > 10e3 && most < 60e3);
    }

    private Stream<String> leaner(Judged pull, Company company) {
        double own = pull.mean(Role.LAMBDA);
        if (Double.isNaN(own)) {
            return Stream.empty();
        }
        List<Judged> before = company.before(pull);
        OptionalDouble last = IntStream.iterate(before.size() - 1, i -> i >= 0, i -> i - 1)
                .mapToObj(before::get)
                .filter(Judged::counted)
                .mapToDouble(other -> other.mean(Role.LAMBDA))
                .filter(Double::isFinite)
                .findFirst();
        return last.isPresent() && own - last.getAsDouble() > limits.leanStep()
                ? Stream.of("mixture: lean: mean lambda in the band is " + lambda(own) + ", leaner by more than "
                        + lambda(limits.leanStep()) + " than the pull before, " + lambda(last.getAsDouble()) + "."
                        + STOP)
                : Stream.empty();
    }

    private static String lambda(double value) {
        return Figures.number(value, 3);
    }
}
