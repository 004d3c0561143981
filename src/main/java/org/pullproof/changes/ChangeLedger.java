package org.pullproof.changes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.TDistribution;
import org.pullproof.dyno.PullFindings;
import org.pullproof.units.Sentence;

/**
 * Every change with its call.
 *
 * @param answer the answer in one sentence
 * @param repeatabilityPercent pull-to-pull scatter s of the fit, percent; absent without pulls
 * @param driftPercentPerPull drift of the fit, percent a pull, the mean over the pulls if there are several days; absent without pulls
 * @param degreesOfFreedom of the fit, 0 without pulls
 * @param onMeasured whether the calls stand on measured power because a pull has no air
 * @param changes the comparisons, in order of the newer setup's first pull
 * @param unjudged the comparisons that have no figures yet
 * @param baselineToNow the first setup against the present one measured directly, if both have pulls and differ
 * @param residuals what the setups do not explain, pull by pull in order
 * @param sweeps numeric settings tried at three levels or more
 * @param againstPresent every other setup with pulls against the present one, if that has pulls
 * @param flags what the other pulls and the changes say against a pull, sentences by the pull's id, each beginning with its keyword
 */
public record ChangeLedger(
        Sentence answer,
        OptionalDouble repeatabilityPercent,
        OptionalDouble driftPercentPerPull,
        double degreesOfFreedom,
        boolean onMeasured,
        List<JudgedChange> changes,
        List<Unjudged> unjudged,
        Optional<JudgedChange> baselineToNow,
        List<Residual> residuals,
        List<Sweep> sweeps,
        List<AgainstPresent> againstPresent,
        Map<String, List<String>> flags) {
    public ChangeLedger {
        againstPresent = List.copyOf(againstPresent);
        changes = List.copyOf(changes);
        unjudged = List.copyOf(unjudged);
        residuals = List.copyOf(residuals);
        sweeps = List.copyOf(sweeps);
        flags = Map.copyOf(flags);
    }

    /**
     * Half width of the range in which 90 of 100 pulls of an unchanged engine lie around its true power, percent: t(0.95, ν)·s
     * with the scatter s and the degrees of freedom ν of the fit. Drift and the step at each new setup come on top. Source: own
     * derivation from the fit's model; absent without pulls.
     */
    public OptionalDouble ribbonPercent() {
        return repeatabilityPercent.isPresent() && degreesOfFreedom > 0
                ? OptionalDouble.of(repeatabilityPercent.getAsDouble()
                        * new TDistribution(degreesOfFreedom).inverseCumulativeProbability(0.95))
                : OptionalDouble.empty();
    }

    /** A pull with the flags that came to it by being compared. */
    public PullFindings flagged(PullFindings pull) {
        List<String> more = flags.getOrDefault(pull.pull().id(), List.of());
        return more.isEmpty()
                ? pull
                : pull.withFlags(
                        Stream.concat(pull.flags().stream(), more.stream()).toList());
    }

    /**
     * @param pull id of the pull
     * @param setup id of its setup
     * @param percent its power over what the setup alone explains, percent
     * @param driftPercent the fitted drift at its place, percent
     */
    public record Residual(String pull, String setup, double percent, double driftPercent) {}

    /**
     * What going to another setup would bring, in 100·ln of band power.
     *
     * @param setup its id
     * @param estimate that setup less the present one
     * @param standardError of it
     * @param degrees degrees of freedom of Student's t
     * @param call what may be said of it
     */
    public record AgainstPresent(String setup, double estimate, double standardError, double degrees, Call call) {}
}
