package org.pullproof.health.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.pullproof.health.hole.CompressionTable;

/**
 * What all cylinders share and compression depends on: R ring leak, g level of the gauge, w what oil does; and z, by which a
 * cylinder's own ring leak differs. A cell is one (R, g, w); cells lie in that order.
 */
final class Grid {
    /** Three points that stand for a normal: −√3, 0, √3 with weights 1/6, 2/3, 1/6 (Gauss–Hermite). */
    private static final double[] DEVIATIONS = {-Math.sqrt(3), 0, Math.sqrt(3)};

    private static final double[] DEVIATION_WEIGHTS = {1.0 / 6, 2.0 / 3, 1.0 / 6};

    /**
     * One way oil may work.
     *
     * @param staysIn share that stays in the chamber
     * @param leakLeft ring leak left
     */
    record OilWay(double staysIn, double leakLeft, double weight) {}

    private final FaultConstants constants;
    private final double[] ringLeaks;
    private final double[] levels;
    private final List<OilWay> oilWays;
    private final boolean levelKnown;
    private final double geometryFactor;

    Grid(EngineReadings readings, Tables tables, FaultConstants constants) {
        this.constants = constants;
        this.ringLeaks = constants.ringLeak().grid().areas();
        this.levelKnown = !readings.anyCompression();
        this.levels = levelKnown ? new double[] {0} : levels(bestLevel(readings, tables));
        this.oilWays = readings.anyWet() ? oilWays(constants.oil(), readings.flat()) : List.of(new OilWay(0, 1, 1));
        this.geometryFactor = readings.geometry().assumed() ? constants.level().guessedGeometry() : 1;
    }

    private Grid(Grid other, List<OilWay> oilWays) {
        this.constants = other.constants;
        this.ringLeaks = other.ringLeaks;
        this.levels = other.levels;
        this.levelKnown = other.levelKnown;
        this.oilWays = oilWays;
        this.geometryFactor = other.geometryFactor;
    }

    static List<OilWay> oilWays(FaultConstants.Oil oil, boolean flat) {
        List<OilWay> ways = new ArrayList<>();
        List<Double> leakLeft = flat ? oil.leakLeftFlat() : oil.leakLeft();
        for (int i = 0; i < oil.staysIn().size(); i++) {
            ways.add(new OilWay(
                    oil.staysIn().get(i), leakLeft.get(i), oil.weights().get(i)));
        }
        return ways;
    }

    /** g*: mean ln of the best third of readings over a tight cylinder's; it only places the grid. */
    private double bestLevel(EngineReadings readings, Tables tables) {
        double[] found = readings.cylinders().stream()
                .flatMapToDouble(one -> level(one, tables).stream())
                .sorted()
                .toArray();
        int third = Math.max(1, (int) Math.round(found.length / 3.0));
        double sum = 0;
        for (int i = found.length - third; i < found.length; i++) {
            sum += found[i];
        }
        return sum / third;
    }

    private OptionalDouble level(CylinderReadings one, Tables tables) {
        return one.dry().isPresent()
                ? OptionalDouble.of(level(one.dry().get(), 1, tables))
                : one.wet().stream()
                        .mapToDouble(wet -> level(wet, constants.level().wetToDry(), tables))
                        .findFirst();
    }

    private double level(Gauge gauge, double factor, Tables tables) {
        CompressionTable table = tables.dry(gauge.how());
        double floor = constants.gauge().floorKpa() * 1e3;
        return Math.log(Math.max(gauge.pascal() * factor, floor))
                - table.lnLast(constants.level().tightMm2());
    }

    private double[] levels(double best) {
        FaultConstants.Level level = constants.level();
        long from = (long) Math.floor((best - level.below()) / level.step());
        double to = Math.max(best + level.above(), level.atLeast());
        int count = (int) Math.floor(to / level.step() - from + 1e-9) + 1;
        double[] levels = new double[count];
        for (int i = 0; i < count; i++) {
            levels[i] = (from + i) * level.step();
        }
        return levels;
    }

    /** This grid with every way oil may work, for a cylinder that is to be read wet as the first. */
    Grid withOil(boolean flat) {
        return oilWays.size() > 1 ? this : new Grid(this, oilWays(constants.oil(), flat));
    }

    /** p(S, R, g) p(w) by cell, the state's own weight left out; g is a density times its step, not made to sum 1. */
    double[] weights(EngineState state) {
        FaultConstants.RingLeak ring = constants.ringLeak();
        double[] ofRing = (state == EngineState.RINGS_ALL ? ring.allTired() : ring.usual()).weights(ringLeaks);
        double mean = constants.level().means().getOrDefault(state, 0.0);
        double sd = constants.level().sd() * geometryFactor;
        double[] weights = new double[cells()];
        int cell = 0;
        for (double r : ofRing) {
            for (double g : levels) {
                double ofLevel = levelKnown
                        ? 1
                        : Chance.normal(g - mean, sd) * constants.level().step();
                for (OilWay oil : oilWays) {
                    weights[cell++] = r * ofLevel * oil.weight();
                }
            }
        }
        return weights;
    }

    int cells() {
        return ringLeaks.length * block();
    }

    /** Cells of one R. */
    int block() {
        return levels.length * oilWays.size();
    }

    double[] levels() {
        return levels;
    }

    List<OilWay> oilWays() {
        return oilWays;
    }

    /** Number of places (z, R), z outermost. */
    int leaks() {
        return DEVIATIONS.length * ringLeaks.length;
    }

    /** r = R exp(sd z), a cylinder's own ring leak at a place (z, R), mm². */
    double ringLeak(int place) {
        double z = DEVIATIONS[place / ringLeaks.length];
        return ringLeaks[place % ringLeaks.length]
                * Math.exp(constants.ringLeak().ownSd() * z);
    }

    /** p(z) at a place (z, R). */
    double weightOfOwn(int place) {
        return DEVIATION_WEIGHTS[place / ringLeaks.length];
    }

    /** Index of R at a place (z, R). */
    int ringIndex(int place) {
        return place % ringLeaks.length;
    }
}
