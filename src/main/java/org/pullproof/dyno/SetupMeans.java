package org.pullproof.dyno;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.pullproof.dyno.DynoFindings.SetupPower;

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

    static List<PullFindings> counted(List<PullFindings> pulls, String setup) {
        return pulls.stream()
                .filter(pull -> pull.pull().setup().equals(setup))
                .filter(pull -> !pull.excluded() && pull.bandMeasuredKw().isPresent())
                .toList();
    }

    private static SetupPower mean(List<PullFindings> own) {
        boolean corrected = own.stream().allMatch(pull -> pull.bandCorrectedKw().isPresent());
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
