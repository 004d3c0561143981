package org.pullproof.health.faults;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.pullproof.health.faults.Grid.OilWay;
import org.pullproof.health.faults.Hypotheses.Chamber;
import org.pullproof.health.faults.Hypotheses.Sealing;
import org.pullproof.health.hole.CompressionTable;
import org.pullproof.units.Unit;

/**
 * K: how likely the compression readings of one cylinder are together, for a chamber, by (z, R, g, w).
 *
 * <pre>
 *  dry    N(ln D − ln P_dry(a) − g)
 *  first  N(ln F − ln D − [ln P_first(a) − ln P_dry(a) + h + bump])
 *  wet    N(ln W − ln D − [ln P_w(a_w) − ln P_dry(a)])
 *  joint  (1−ε) N_dry M_first M_wet + ε/width · M′_first M′_wet,   M = (1−ε) N + ε/width
 * </pre>
 *
 * <p>M′, where the dry reading is the blunder (or there is none), holds F and W against P_first + g and P_w + g themselves. a is the
 * cylinder's own ring leak and the hole, a_w what of it is left when wet. Standard deviations: section 4 of the method [O, J].
 */
final class CompressionLikelihood {
    private final FaultConstants constants;
    private final FaultConstants.GaugeScatter scatter;
    private final Grid grid;
    private final double firstShift;
    private final Set<Part> sure;
    private final Optional<Gauge> dry;
    private final Optional<Gauge> first;
    private final Optional<Gauge> wet;
    private final Optional<CompressionTable> dryTable;
    private final List<CompressionTable> wetTables;

    private final double[] dryNormal;
    private final double[] firstAlone;
    private double firstBesideDry;

    /**
     * @param firstShift h, see {@link FirstStroke}
     * @param sure readings that are no blunders: their flat part is left out
     */
    CompressionLikelihood(
            CylinderReadings readings,
            Grid grid,
            Tables tables,
            double firstShift,
            FaultConstants constants,
            Set<Part> sure) {
        this.constants = constants;
        this.scatter = constants.gauge();
        this.grid = grid;
        this.firstShift = firstShift;
        this.sure = sure;
        this.dry = readings.dry();
        this.first = readings.first();
        this.wet = readings.wet();
        this.dryTable = dry.or(() -> first).or(() -> wet).map(gauge -> tables.dry(gauge.how()));
        this.wetTables = wet.stream()
                .flatMap(gauge ->
                        grid.oilWays().stream().map(way -> tables.wet(gauge.how(), way.staysIn() * oilPutIn(gauge))))
                .toList();
        this.dryNormal = new double[grid.levels().length];
        this.firstAlone = new double[grid.levels().length];
    }

    private double oilPutIn(Gauge gauge) {
        return gauge.oilCm3().orElse(constants.oil().putInCm3());
    }

    /** K of one chamber: for each place (z, R) a block of (g, w). */
    double[] of(Chamber chamber) {
        double[] table = new double[grid.leaks() * grid.block()];
        if (chamber.sealing() == Sealing.ANY || dryTable.isEmpty()) {
            Arrays.fill(table, chamber.sealing() == Sealing.ANY ? anyReading() : 1);
            return table;
        }
        for (int place = 0; place < grid.leaks(); place++) {
            fill(table, place, chamber, dryTable.get());
        }
        return table;
    }

    private double anyReading() {
        long read =
                List.of(dry, first, wet).stream().filter(Optional::isPresent).count();
        return Math.pow(1 / scatter.blunderWidth(), (double) read);
    }

    private void fill(double[] table, int place, Chamber chamber, CompressionTable whenDry) {
        double ring = grid.ringLeak(place);
        double area = ring + chamber.x();
        double lnDry = whenDry.lnLast(area, chamber.filling());
        dry(lnDry, chamber.filling() < 1);
        first(lnDry, whenDry.lnFirst(area) - whenDry.lnLast(area), whenDry.lnTight(), chamber.sealing());
        int at = place * grid.block();
        if (wet.isEmpty()) {
            fillWithoutWet(table, at);
        } else {
            for (int way = 0; way < grid.oilWays().size(); way++) {
                fillWet(table, at + way, way, chamber, ring, lnDry);
            }
        }
    }

    private void dry(double lnDry, boolean notOpening) {
        if (dry.isEmpty()) {
            return;
        }
        double read = ln(dry.get());
        double besides = notOpening ? scatter.notOpening() : 0;
        double sd = root(scatter.dry(), error(dry.get()), besides);
        for (int g = 0; g < dryNormal.length; g++) {
            dryNormal[g] = (1 - scatter.blunder()) * Chance.normal(read - lnDry - grid.levels()[g], sd);
        }
    }

    private void first(double lnDry, double ratio, double lnTight, Sealing sealing) {
        if (first.isEmpty()) {
            firstBesideDry = 1;
            Arrays.fill(firstAlone, 1);
            return;
        }
        double bump = bump(sealing);
        double loss = Math.min(Math.max(0, lnTight - lnDry), scatter.mostLoss());
        double own =
                root(scatter.first(), scatter.firstLoss() * loss, bump == 0 ? 0 : scatter.bumpSd(), error(first.get()));
        double expected = ratio + firstShift + bump;
        double read = ln(first.get());
        dry.ifPresent(gauge ->
                firstBesideDry = mixed(Part.FIRST, read - ln(gauge) - expected, Math.hypot(own, error(gauge))));
        double sd = Math.hypot(own, scatter.dry());
        for (int g = 0; g < firstAlone.length; g++) {
            firstAlone[g] = mixed(Part.FIRST, read - lnDry - grid.levels()[g] - expected, sd);
        }
    }

    private double bump(Sealing sealing) {
        return switch (sealing) {
            case RINGS -> scatter.bumpRings();
            case PISTON -> scatter.bumpPiston();
            case NOT_THE_HOLE, ANY -> 0;
        };
    }

    private void fillWithoutWet(double[] table, int at) {
        int ways = grid.oilWays().size();
        for (int g = 0; g < dryNormal.length; g++) {
            double joint = joint(g, 1, 1);
            for (int way = 0; way < ways; way++) {
                table[at + g * ways + way] = joint;
            }
        }
    }

    private void fillWet(double[] table, int at, int way, Chamber chamber, double ring, double lnDry) {
        double[] wetAreas = wetAreas(chamber, ring, grid.oilWays().get(way));
        int ways = grid.oilWays().size();
        for (double wetArea : wetAreas) {
            double lnWet = wetTables.get(way).lnLast(wetArea, chamber.filling());
            double read = ln(wet.orElseThrow());
            double own = root(scatter.wet(), scatter.wetGain() * (lnWet - lnDry), error(wet.orElseThrow()));
            double besideDry = dry.isEmpty()
                    ? 1
                    : mixed(Part.WET, read - ln(dry.get()) - (lnWet - lnDry), Math.hypot(own, error(dry.get())));
            double sd = Math.hypot(own, scatter.dry());
            for (int g = 0; g < dryNormal.length; g++) {
                double alone = mixed(Part.WET, read - lnWet - grid.levels()[g], sd);
                table[at + g * ways] += joint(g, besideDry, alone) / wetAreas.length;
            }
        }
    }

    /** a_w: what is left of the leak when wet, mm²; worn rings and a holed piston in three ways of one third each. */
    private double[] wetAreas(Chamber chamber, double ring, OilWay way) {
        return switch (chamber.sealing()) {
            case RINGS ->
                constants.oil().wornRings().stream()
                        .mapToDouble(factor -> Math.min(1, way.leakLeft() * factor) * (ring + chamber.x()))
                        .toArray();
            case PISTON ->
                constants.oil().holedPiston().stream()
                        .mapToDouble(left -> left * (ring + chamber.x()))
                        .toArray();
            case NOT_THE_HOLE, ANY -> new double[] {way.leakLeft() * ring + chamber.x()};
        };
    }

    private double joint(int g, double wetBesideDry, double wetAlone) {
        double withoutDry = firstAlone[g] * wetAlone;
        if (dry.isEmpty()) {
            return withoutDry;
        }
        double blunder = sure.contains(Part.DRY) ? 0 : scatter.blunder() / scatter.blunderWidth();
        return dryNormal[g] * firstBesideDry * wetBesideDry + blunder * withoutDry;
    }

    /** M = (1−ε) N + ε/width. */
    private double mixed(Part part, double difference, double sd) {
        double blunder = sure.contains(part) ? 0 : scatter.blunder() / scatter.blunderWidth();
        return (1 - scatter.blunder()) * Chance.normal(difference, sd) + blunder;
    }

    private double ln(Gauge gauge) {
        return Math.log(Math.max(gauge.pascal(), scatter.floorKpa() * 1e3));
    }

    /** e = ρ/max(D, 2ρ), ρ = √(step²/12 + reading²). */
    private double error(Gauge gauge) {
        double step = gauge.stepPascal().orElse(Unit.PSI.toSi(scatter.stepPsi()));
        double rho = Math.hypot(step / Math.sqrt(12), Unit.PSI.toSi(scatter.readPsi()));
        return rho / Math.max(gauge.pascal(), 2 * rho);
    }

    private static double root(double... parts) {
        double squares = 0;
        for (double part : parts) {
            squares += part * part;
        }
        return Math.sqrt(squares);
    }
}
