package org.pullproof.health;

import java.util.List;
import java.util.Optional;
import org.pullproof.engine.Geometry;
import org.pullproof.health.compression.SeaLevel;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;

/** What thin air explains of low readings, so that altitude is never taken for a fault. */
final class AltitudeNote {
    /** Middle of the exponents of cranking, from memory. */
    private static final double MIDDLE_EXPONENT = (SeaLevel.LEAST_EXPONENT + SeaLevel.GREATEST_EXPONENT) / 2;

    private AltitudeNote() {}

    /**
     * A sentence where the air's pressure is known and low; the readings are the dry ones that compare.
     *
     * @param ringsTired whether all readings together say that the rings are tired all round
     */
    static Optional<String> of(Evidence evidence, HealthLimits limits, boolean ringsTired) {
        List<Reading.Compression> readings = evidence.comparison().alike().values().stream()
                .filter(reading -> evidence.station(reading).isPresent())
                .toList();
        double station = readings.stream()
                .flatMapToDouble(reading -> evidence.station(reading).stream())
                .average()
                .orElse(Double.MAX_VALUE);
        return station >= limits.thinAirKpa() * 1e3
                ? Optional.empty()
                : Optional.of(sentence(
                                readings,
                                station,
                                evidence.profile().geometry(),
                                limits,
                                ringsTired,
                                evidence.figures())
                        + (evidence.stationFromElevation()
                                ? " The air's pressure is that of the standard atmosphere at the garage;"
                                        + " a barometer tells better."
                                : ""));
    }

    private static String sentence(
            List<Reading.Compression> readings,
            double station,
            Geometry geometry,
            HealthLimits limits,
            boolean ringsTired,
            Figures figures) {
        double mean = readings.stream()
                .mapToDouble(reading -> reading.gauge().si())
                .average()
                .orElseThrow();
        double restated = SeaLevel.restated(mean, station);
        double least = SeaLevel.expected(geometry, SeaLevel.PRESSURE, SeaLevel.LEAST_EXPONENT);
        String air = "At " + figures.of(station, Shown.AIR_PRESSURE) + " the thin air takes about "
                + figures.of(taken(geometry, station, MIDDLE_EXPONENT), Shown.COMPRESSION) + " ("
                + figures.bare(taken(geometry, station, SeaLevel.LEAST_EXPONENT), Shown.COMPRESSION) + " to "
                + figures.bare(taken(geometry, station, SeaLevel.GREATEST_EXPONENT), Shown.COMPRESSION)
                + "); restated for sea level the mean of "
                + figures.of(mean, Shown.COMPRESSION) + " is " + figures.of(restated, Shown.COMPRESSION) + ". ";
        boolean withinReach = restated >= least * (1 - limits.shortOfExpected() / 100);
        if (withinReach && ringsTired) {
            return air + "That explains a part only: the readings together speak of rings tired all round.";
        }
        return air
                + (withinReach
                        ? "That explains the low figures."
                        : "That explains a part only: " + (geometry.assumed() ? "the assumed" : "this")
                                + " geometry leads to expect " + figures.of(least, Shown.COMPRESSION)
                                + " or more (exponent from memory).");
    }

    /** What a tight cylinder reads less at that pressure than at sea level, Pa. */
    private static double taken(Geometry geometry, double station, double exponent) {
        return SeaLevel.expected(geometry, SeaLevel.PRESSURE, exponent)
                - SeaLevel.expected(geometry, station, exponent);
    }
}
