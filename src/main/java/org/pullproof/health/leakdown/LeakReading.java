package org.pullproof.health.leakdown;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.pullproof.engine.Geometry;
import org.pullproof.health.Reading;
import org.pullproof.units.Dimension;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;

/**
 * What one leak-down reading tells: the leakage as an interval, the area of the leak where supply and restrictor are known, and
 * what the reference tester would show on that leak.
 *
 * @param fromPercent least leakage the tester's word allows, percent
 * @param toPercent greatest leakage, percent
 * @param words as the tester told it: "14 %", "high"
 * @param areaMm2 geometric area of the leak, mm²
 * @param referencePercent leakage on the reference tester, percent
 */
public record LeakReading(
        double fromPercent, double toPercent, String words, OptionalDouble areaMm2, OptionalDouble referencePercent) {

    /**
     * Reads what the tester showed.
     *
     * @param reading as typed
     * @param geometry bore, for the reference tester
     * @param figures how a pressure is written
     * @return empty if the pressure behind the restrictor was read but not the supply
     */
    public static Optional<LeakReading> of(Reading.Leakdown reading, Geometry geometry, Figures figures) {
        if (reading.value() instanceof Reading.Leak.Zone zone) {
            return Optional.of(new LeakReading(
                    zone.zone().fromPercent(),
                    zone.zone().toPercent(),
                    zone.zone().key(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty()));
        }
        return percent(reading).stream()
                .mapToObj(percent -> figure(reading, percent, geometry, figures))
                .findFirst();
    }

    /**
     * Leakage in percent, 100 (1 − r/z): r the share of the supply that the tester shows, z what it shows with its hose closed, 1
     * unless recorded. Empty for a zone, or a pressure behind the restrictor without the supply.
     */
    public static OptionalDouble percent(Reading.Leakdown reading) {
        double zero = closedShare(reading).orElse(1);
        return shownShare(reading).stream()
                .map(shown -> 100 * (1 - shown / zero))
                .findFirst();
    }

    private static OptionalDouble shownShare(Reading.Leakdown reading) {
        if (reading.value() instanceof Reading.Leak.Percentage lost) {
            return OptionalDouble.of(1 - lost.share().si());
        }
        return reading.value() instanceof Reading.Leak.Behind behind
                ? ofSupply(reading, behind.pressure())
                : OptionalDouble.empty();
    }

    /** What the tester showed of the supply with its hose closed, 0 to 1; empty if that was not recorded. */
    public static OptionalDouble closedShare(Reading.Leakdown reading) {
        return reading.conditions().closed().stream()
                .flatMapToDouble(closed -> closed.unit().dimension() == Dimension.PRESSURE
                        ? ofSupply(reading, closed).stream()
                        : DoubleStream.of(1 - closed.si()))
                .findFirst();
    }

    private static OptionalDouble ofSupply(Reading.Leakdown reading, Quantity pressure) {
        return reading.supply().stream()
                .mapToDouble(supply -> pressure.si() / supply.si())
                .findFirst();
    }

    private static LeakReading figure(Reading.Leakdown reading, double percent, Geometry geometry, Figures figures) {
        Optional<LeakTester> tester = tester(reading);
        OptionalDouble area = tester.stream()
                .mapToDouble(used -> used.leakArea(used.readingOf(percent)))
                .filter(Double::isFinite)
                .findFirst();
        return new LeakReading(
                percent,
                percent,
                words(reading, percent, figures),
                map(area, 1e6),
                area.stream()
                        .map(leak ->
                                onReference(leak, geometry, tester.orElseThrow().surroundings()))
                        .findFirst());
    }

    private static OptionalDouble map(OptionalDouble value, double factor) {
        return value.stream().map(v -> v * factor).findFirst();
    }

    private static double onReference(double area, Geometry geometry, double surroundings) {
        LeakTester reference = LeakTester.reference(geometry.boreMetre(), surroundings);
        return reference.percent(reference.reading(area));
    }

    private static Optional<LeakTester> tester(Reading.Leakdown reading) {
        double air = reading.conditions().station().map(Quantity::si).orElse(LeakTester.STANDARD_AIR);
        return reading.supply()
                .flatMap(supply ->
                        reading.orifice().map(orifice -> LeakTester.withRestrictor(supply.si(), orifice.si(), air)));
    }

    private static String words(Reading.Leakdown reading, double percent, Figures figures) {
        String share = Figures.percent(percent, 0);
        return reading.value() instanceof Reading.Leak.Behind behind
                ? figures.of(behind.pressure().si(), Shown.COMPRESSION) + ", " + share
                : share;
    }

    /** Whether this leak is certainly above a limit, judged on the reference tester where it can be. */
    public boolean above(double limitPercent) {
        return referencePercent.orElse(fromPercent) > limitPercent;
    }

    /** Whether this leak may be above a limit: a zone that reaches over it. */
    public boolean mayBeAbove(double limitPercent) {
        return referencePercent.orElse(toPercent) > limitPercent;
    }
}
