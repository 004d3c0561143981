package org.pullproof.dyno;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.pullproof.dyno.DynoFindings.SetupPower;
import org.pullproof.weather.Standard;

/** Mean band power of each setup over its counted pulls that cover the band. */
final class SetupMeans {
    private SetupMeans() {}

    static List<SetupPower> of(List<PullFindings> pulls) {
        return pulls.stream()
                .map(pull -> pull.pull().setup())
                .distinct()
                .map(setup -> counted(pulls, setup))
                .filter(own -> !own.isEmpty())
                .map(SetupMeans::mean)
                .toList();
    }

    /** The pulls of a setup whose figures may be averaged: never figures of two standards. */
    static List<PullFindings> counted(List<PullFindings> pulls, String setup) {
        List<PullFindings> own = pulls.stream()
                .filter(pull -> pull.pull().setup().equals(setup))
                .filter(pull -> !pull.excluded() && pull.bandMeasuredKw().isPresent())
                .toList();
        return allCorrected(own) ? own : onOneStandard(own);
    }

    private static boolean allCorrected(List<PullFindings> pulls) {
        return pulls.stream().allMatch(pull -> pull.bandCorrectedKw().isPresent());
    }

    /** Those as measured, where there are any; else those that their files have on the standard of the last one. */
    private static List<PullFindings> onOneStandard(List<PullFindings> own) {
        Optional<Standard> standard =
                own.stream().anyMatch(pull -> already(pull).isEmpty())
                        ? Optional.empty()
                        : already(own.get(own.size() - 1));
        return own.stream().filter(pull -> already(pull).equals(standard)).toList();
    }

    private static Optional<Standard> already(PullFindings pull) {
        return pull.pull().correctedAlready();
    }

    private static SetupPower mean(List<PullFindings> own) {
        boolean corrected = allCorrected(own);
        double mean = own.stream()
                .map(figure(corrected))
                .mapToDouble(OptionalDouble::getAsDouble)
                .average()
                .orElseThrow();
        return new SetupPower(own.get(0).pull().setup(), own.size(), mean, corrected);
    }

    static Function<PullFindings, OptionalDouble> figure(boolean corrected) {
        return corrected ? PullFindings::bandCorrectedKw : PullFindings::bandMeasuredKw;
    }
}
