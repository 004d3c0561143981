package org.pullproof.health.faults;

import org.pullproof.health.hole.CompressionTable;

/**
 * h, how much more (or less) all first strokes show than the model: the median over the cylinders of ln(F/D) less the model's ratio
 * of a tight cylinder; 0 where no cylinder has both.
 */
final class FirstStroke {
    private FirstStroke() {}

    static double shift(EngineReadings readings, Tables tables, FaultConstants constants) {
        double tight = constants.level().tightMm2();
        double floor = constants.gauge().floorKpa() * 1e3;
        double[] shifts = readings.cylinders().stream()
                .filter(one -> one.dry().isPresent() && one.first().isPresent())
                .mapToDouble(one -> {
                    CompressionTable table = tables.dry(one.first().get().how());
                    return Math.log(Math.max(one.first().get().pascal(), floor)
                                    / Math.max(one.dry().get().pascal(), floor))
                            - (table.lnFirst(tight) - table.lnLast(tight));
                })
                .sorted()
                .toArray();
        int half = shifts.length / 2;
        if (shifts.length == 0) {
            return 0;
        }
        return shifts.length % 2 == 1 ? shifts[half] : (shifts[half - 1] + shifts[half]) / 2;
    }
}
