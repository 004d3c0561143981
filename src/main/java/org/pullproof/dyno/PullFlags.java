package org.pullproof.dyno;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.dyno.DynoAssessor.Made;
import org.pullproof.engine.Setup;
import org.pullproof.units.Figures;
import org.pullproof.units.RpmRange;
import org.pullproof.weather.Factor;
import org.pullproof.weather.PullAir;
import org.pullproof.weather.Standard;

/** What to mind about a pull, one sentence each, beginning with its keyword. Nothing is dropped for a flag. */
final class PullFlags {
    /** Fewer samples than one in this many rpm make a pull sparse (C, common practice without a source). */
    private static final int SPARSE_RPM = 50;

    private final List<Made> all;
    private final Optional<RpmRange> band;
    private final Standard standard;
    private final List<Setup> setups;
    private final WeatherFlags weather;

    PullFlags(List<Made> all, Optional<RpmRange> band, Standard standard, List<Setup> setups, WeatherFlags weather) {
        this.all = all;
        this.band = band;
        this.standard = standard;
        this.setups = setups;
        this.weather = weather;
    }

    List<String> of(Made made, Optional<Factor> factor) {
        Stream<String> own = Stream.of(band(made), time(made), sparse(made), corrected(made.pull()), duplicate(made))
                .flatMap(Optional::stream);
        return Stream.concat(own, weather(made, factor).stream()).toList();
    }

    /** Nothing where the air of the day does not enter: figures corrected already, or not to be corrected. */
    private List<String> weather(Made made, Optional<Factor> factor) {
        if (standard == Standard.NONE
                || made.pull().correctedAlready().isPresent()
                || made.air().isEmpty()) {
            return List.of();
        }
        PullAir air = made.air().get();
        Stream<String> age = factor.stream().flatMap(by -> weather.of(air, by).stream());
        return Stream.concat(weather.ofReadings(air).stream(), age).toList();
    }

    private Optional<String> band(Made made) {
        return band.filter(wanted -> !made.trace().covers(wanted))
                .map(wanted -> "band: the pull reaches from " + rpm(made.trace().firstRpm()) + " to "
                        + rpm(made.trace().lastRpm()) + " rpm and does not cover " + rpm(wanted.fromRpm()) + " to "
                        + rpm(wanted.toRpm()) + " rpm; it has no band power.");
    }

    private Optional<String> time(Made made) {
        return earlier(made)
                .reduce((first, last) -> last)
                .filter(before -> made.pull().time().isBefore(before.pull().time()))
                .map(before ->
                        "time: it stands after " + name(before) + " but was made before it, by the times given.");
    }

    private Optional<String> sparse(Made made) {
        Trace trace = made.trace();
        double from = band.map(RpmRange::fromRpm).map(Integer::doubleValue).orElse(trace.firstRpm());
        double to = band.map(RpmRange::toRpm).map(Integer::doubleValue).orElse(trace.lastRpm());
        int samples = trace.indexFrom(Math.nextUp(to)) - trace.indexFrom(from);
        return samples * SPARSE_RPM >= to - from
                ? Optional.empty()
                : Optional.of("sparse: " + samples + " samples from " + rpm(from) + " to " + rpm(to)
                        + " rpm are fewer than one in " + SPARSE_RPM + " rpm.");
    }

    private Optional<String> corrected(Pull pull) {
        return pull.correctedAlready()
                .map(already -> already == standard
                        ? "corrected: the file's figures are already corrected to " + already.words()
                                + " and taken as they are; the air of the day is not used."
                        : "corrected: the file's figures are already corrected to " + already.words() + ", not to "
                                + standard.words() + "; they cannot be compared and have no corrected figure.");
    }

    private Optional<String> duplicate(Made made) {
        String hash = made.pull().file().sha256();
        return earlier(made)
                .filter(before -> before.pull().file().sha256().equals(hash))
                .findFirst()
                .map(before -> "duplicate: the file is the same as that of " + name(before) + ", byte for byte.");
    }

    private Stream<Made> earlier(Made made) {
        return all.stream()
                .takeWhile(before -> !before.pull().id().equals(made.pull().id()));
    }

    private String name(Made made) {
        return SetupNames.name(setups, made.pull().setup()) + "-" + made.pull().number();
    }

    private static String rpm(double rpm) {
        return Figures.number(rpm, 0);
    }
}
