package org.pullproof.changes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.pullproof.engine.Setup;

/** Finds the numeric settings that were tried at several levels, and reads the response of each. */
final class Sweeps {
    private static final int POINTS = 40;

    private final PullSequence counted;
    private final Prior prior;

    Sweeps(PullSequence counted, Prior prior) {
        this.counted = counted;
        this.prior = prior;
    }

    List<Sweep> among(List<Setup> setups, List<Change> changes) {
        Set<String> pulled = Set.copyOf(counted.settings());
        return SweepGroup.among(setups, changes).stream()
                .map(group -> group.only(pulled))
                .filter(group -> group.levels() >= 3)
                .map(this::sweep)
                .toList();
    }

    private Sweep sweep(SweepGroup group) {
        Map<String, Double> levelOf = group.setups().stream().collect(Collectors.toMap(Setup::id, group::level));
        List<PullSequence.Entry> pulls = counted.entries().stream()
                .filter(entry -> levelOf.containsKey(entry.setup()))
                .toList();
        double[] x = pulls.stream()
                .mapToDouble(entry -> levelOf.getOrDefault(entry.setup(), Double.NaN))
                .toArray();
        SweepFit fit = new SweepFit(daysFromNought(pulls), x, group.isTiming(), prior);
        double resolution = group.isTiming() ? 1 : group.resolution();
        SweepAdvice plain = new SweepAdvice(fit, levels(group, pulls, fit, 0), group.isTiming(), resolution);
        double top = fit.at(plain.best());
        SweepAdvice advice = new SweepAdvice(fit, levels(group, pulls, fit, top), group.isTiming(), resolution);
        return sweep(group, advice);
    }

    private static Sweep sweep(SweepGroup group, SweepAdvice advice) {
        return new Sweep(
                group.factor(),
                group.unit(),
                advice.best(),
                advice.interval().map(of -> OptionalDouble.of(of.low())).orElse(OptionalDouble.empty()),
                advice.interval().map(of -> OptionalDouble.of(of.high())).orElse(OptionalDouble.empty()),
                advice.recommended(),
                advice.next(),
                advice.levels(),
                response(advice),
                new SweepWords(group, advice).sentence());
    }

    /** The pulls with their days numbered without a gap, as the fit wants them. */
    private static List<Observation> daysFromNought(List<PullSequence.Entry> pulls) {
        Map<Integer, Integer> days = new HashMap<>();
        List<Observation> renumbered = new ArrayList<>();
        for (PullSequence.Entry entry : pulls) {
            Observation pull = entry.observation();
            int day = days.computeIfAbsent(pull.day(), known -> days.size());
            renumbered.add(new Observation(day, pull.clock(), pull.block(), pull.setting(), pull.y()));
        }
        return renumbered;
    }

    private static List<Sweep.Level> levels(
            SweepGroup group, List<PullSequence.Entry> pulls, SweepFit fit, double top) {
        List<Observation> observed = fit.fit().design().pulls();
        return group.setups().stream()
                .map(setup -> new Sweep.Level(
                        setup.id(),
                        group.level(setup),
                        IntStream.range(0, pulls.size())
                                .filter(i -> pulls.get(i).setup().equals(setup.id()))
                                .mapToObj(i -> Estimate.percent(
                                        observed.get(i).y() - fit.fit().driftAt(observed.get(i)) - top))
                                .toList(),
                        pulls.stream()
                                .filter(entry -> entry.setup().equals(setup.id()))
                                .anyMatch(entry -> Flagged.has(entry.pull(), "knock"))))
                .sorted(Comparator.comparingDouble(Sweep.Level::value))
                .toList();
    }

    private static List<Sweep.Response> response(SweepAdvice advice) {
        double span = advice.highest() - advice.lowest();
        return IntStream.rangeClosed(0, POINTS)
                .mapToDouble(i -> advice.lowest() + span * i / POINTS)
                .mapToObj(x -> {
                    Estimate at = advice.fit().compare(x, advice.best());
                    return new Sweep.Response(
                            x,
                            Estimate.percent(at.difference()),
                            Estimate.percent(at.low()),
                            Estimate.percent(at.high()));
                })
                .toList();
    }
}
