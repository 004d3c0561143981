package org.pullproof.dyno;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.pullproof.dyno.DynoAssessor.Made;
import org.pullproof.units.Figures;
import org.pullproof.units.RpmRange;
import org.pullproof.weather.Factor;
import org.pullproof.weather.PullAir;
import org.pullproof.weather.Standard;

/** What to mind about a pull, one sentence each, beginning with its keyword. Nothing is dropped for a flag. */
final class PullFlags {
    private final Company company;
    private final Band band;
    private final PullLimits limits;
    private final Standard standard;
    private final WeatherFlags weather;
    private final List<PullRule> rules;

    /**
     * The band that pulls are judged in.
     *
     * @param range empty if the pulls share none
     * @param told whether the owner told it; else the pulls themselves made it
     */
    record Band(Optional<RpmRange> range, boolean told) {}

    /**
     * @param names of the pulls, one each
     */
    PullFlags(
            List<Made> all,
            List<String> names,
            Band band,
            Standard standard,
            WeatherFlags weather,
            PullLimits limits,
            Figures figures) {
        this.company = new Company(IntStream.range(0, all.size())
                .mapToObj(i -> Judged.of(i, all.get(i), names.get(i), band.range()))
                .toList());
        this.band = band;
        this.limits = limits;
        this.standard = standard;
        this.weather = weather;
        this.rules = List.of(
                this::band,
                this::order,
                this::sparse,
                new ThrottleRules(limits),
                new SpeedRules(limits),
                new NoiseRule(limits),
                new StartRules(limits, figures),
                new MixtureRules(limits),
                new EngineRules(limits),
                new FitRules(limits, standard),
                new SameRule(limits));
    }

    /**
     * @param place of the pull among all, from 0
     */
    List<String> of(int place, Optional<Factor> factor) {
        Judged pull = company.at(place);
        Stream<String> own = rules.stream().flatMap(rule -> rule.flags(pull, company));
        return Stream.concat(own, weather(pull.made(), factor).stream()).toList();
    }

    /** Nothing where the air of the day does not enter: figures corrected already, or not to be corrected. */
    private List<String> weather(Made made, Optional<Factor> factor) {
        boolean corrected = made.pull().correctedAlready().isPresent() || made.unanswered();
        if (standard == Standard.NONE || corrected || made.air().isEmpty()) {
            return List.of();
        }
        PullAir air = made.air().get();
        Stream<String> age = factor.stream().flatMap(by -> weather.of(air, by).stream());
        return Stream.concat(weather.ofReadings(air).stream(), age).toList();
    }

    private Stream<String> band(Judged pull, Company others) {
        return band.range().stream().flatMap(wanted -> band(pull.trace(), wanted));
    }

    private Stream<String> band(Trace trace, RpmRange wanted) {
        String reach = "band: the pull reaches from " + rpm(trace.firstRpm()) + " to " + rpm(trace.lastRpm()) + " rpm";
        String range = rpm(wanted.fromRpm()) + " to " + rpm(wanted.toRpm()) + " rpm";
        if (!trace.covers(wanted)) {
            return Stream.of(reach + " and does not cover " + range + "; it has no band power.");
        }
        boolean wide = trace.firstRpm() <= wanted.fromRpm() - limits.bandMarginRpm()
                && trace.lastRpm() >= wanted.toRpm() + limits.bandMarginRpm();
        return wide || !band.told()
                ? Stream.empty()
                : Stream.of(reach + ", not " + rpm(limits.bandMarginRpm()) + " rpm beyond the band of " + range
                        + " on either side: its ends are not settled.");
    }

    private Stream<String> order(Judged pull, Company others) {
        return (pull.place() == 0 ? Optional.<Judged>empty() : Optional.of(others.at(pull.place() - 1)))
                        .filter(before ->
                                pull.pull().time().isBefore(before.pull().time()))
                        .map(before -> "time: it stands after " + before.name()
                                + " but was made before it, by the times given.")
                        .stream();
    }

    private Stream<String> sparse(Judged pull, Company others) {
        Trace trace = pull.trace();
        int samples = trace.indexFrom(Math.nextUp(pull.to())) - trace.indexFrom(pull.from());
        String said = "sparse: " + samples + " samples from " + rpm(pull.from()) + " to " + rpm(pull.to())
                + " rpm are fewer than ";
        if (samples * limits.sparseRpm() < pull.to() - pull.from()) {
            return Stream.of(said + "one in " + rpm(limits.sparseRpm()) + " rpm.");
        }
        return samples < limits.fewestSamples() ? Stream.of(said + rpm(limits.fewestSamples()) + ".") : Stream.empty();
    }

    private static String rpm(double rpm) {
        return Figures.number(rpm, 0);
    }
}
