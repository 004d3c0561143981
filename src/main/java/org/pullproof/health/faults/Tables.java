package org.pullproof.health.faults;

import java.util.HashMap;
import java.util.Map;
import org.pullproof.engine.Geometry;
import org.pullproof.health.hole.Areas;
import org.pullproof.health.hole.CompressionTable;
import org.pullproof.health.hole.GaugeTest;
import org.pullproof.health.hole.LeakTable;
import org.pullproof.health.leakdown.LeakTester;

/** The tables of one engine, one for each way a test was made, each computed when first asked for. Not for several threads. */
final class Tables {
    private record Wet(GaugeTest how, double oilLeftCm3) {}

    private final Geometry geometry;
    private final FaultConstants constants;
    private final Areas areas;
    private final Map<Wet, CompressionTable> compression = new HashMap<>();
    private final Map<LeakTester, LeakTable> leaks = new HashMap<>();

    Tables(Geometry geometry, FaultConstants constants) {
        this.geometry = geometry;
        this.constants = constants;
        Steps steps = constants.tableAreas();
        this.areas = new Areas(steps.from(), steps.to(), steps.count());
    }

    CompressionTable dry(GaugeTest how) {
        return wet(how, 0);
    }

    CompressionTable wet(GaugeTest how, double oilLeftCm3) {
        return compression.computeIfAbsent(
                new Wet(how, oilLeftCm3),
                key -> new CompressionTable(geometry, key.how(), key.oilLeftCm3(), areas, constants.cranking()));
    }

    LeakTable leak(LeakTester tester) {
        return leaks.computeIfAbsent(
                tester,
                key -> new LeakTable(
                        key,
                        areas,
                        constants.cranking().dischargeCoefficient(),
                        constants.leakDown().airKelvin()));
    }
}
