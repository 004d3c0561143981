package org.pullproof.health.faults;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.pullproof.health.faults.CylinderLikelihood.Table;

/** Makes the likelihoods of cylinders on the grids of one engine. */
final class Likelihoods {
    private final Hypotheses hypotheses;
    private final FaultConstants constants;
    private final Tables tables;
    private final Grid grid;
    private final BalanceGrid balance;
    private final double firstShift;

    Likelihoods(EngineReadings readings, Hypotheses hypotheses, FaultConstants constants) {
        this.hypotheses = hypotheses;
        this.constants = constants;
        this.tables = new Tables(readings.geometry(), constants);
        this.grid = new Grid(readings, tables, constants);
        this.balance = BalanceGrid.of(readings, constants.balance());
        this.firstShift = FirstStroke.shift(readings, tables, constants);
    }

    private Likelihoods(Likelihoods other, Grid grid, BalanceGrid balance) {
        this.hypotheses = other.hypotheses;
        this.constants = other.constants;
        this.tables = other.tables;
        this.firstShift = other.firstShift;
        this.grid = grid;
        this.balance = balance;
    }

    /** These on a grid where oil may work in every way. */
    Likelihoods withOil(boolean flat) {
        return new Likelihoods(this, grid.withOil(flat), balance);
    }

    Grid grid() {
        return grid;
    }

    BalanceGrid balance() {
        return balance;
    }

    Tables tables() {
        return tables;
    }

    CylinderLikelihood of(CylinderReadings readings) {
        return new CylinderLikelihood(
                chambers(readings, Set.of()),
                outlets(readings.leak(), false),
                lefts(balance.used() ? readings.drops() : Optional.empty(), false),
                factors(readings));
    }

    Table chambers(CylinderReadings readings, Set<Part> sure) {
        CompressionLikelihood compression =
                new CompressionLikelihood(readings, grid, tables, firstShift, constants, sure);
        return table(hypotheses.chambers(), compression::of);
    }

    Table outlets(Optional<Leak> leak, boolean sure) {
        LeakLikelihood likelihood = new LeakLikelihood(leak, grid, tables, constants, sure);
        return table(hypotheses.outlets(), likelihood::of);
    }

    Table lefts(Optional<Drops> drops, boolean sure) {
        BalanceLikelihood likelihood = new BalanceLikelihood(drops, balance, constants.balance(), sure);
        return table(hypotheses.lefts(), likelihood::of);
    }

    private static <T> Table table(List<T> of, Function<T, double[]> likelihood) {
        return new Table(of.size(), index -> likelihood.apply(of.get(index)));
    }

    /** What the plug's look and further tests make of each fault. */
    Map<Fault, Double> factors(CylinderReadings readings) {
        LookLikelihood looks = new LookLikelihood(constants.plugs());
        FurtherTests further = new FurtherTests(constants.furtherTests());
        Map<Fault, Double> factors = new EnumMap<>(Fault.class);
        for (Fault fault : Fault.values()) {
            factors.put(fault, looks.of(readings.plug(), fault) * further.chance(readings.found(), fault));
        }
        return factors;
    }

    /** The likelihood of a cylinder after one of its readings changed; the others are taken over. */
    CylinderLikelihood changed(CylinderLikelihood before, CylinderReadings readings, Part part, boolean sure) {
        return switch (part) {
            case DRY, FIRST, WET -> before.withChambers(chambers(readings, sure ? Set.of(part) : Set.of()));
            case LEAKDOWN, AIR -> before.withOutlets(outlets(readings.leak(), sure));
            case BALANCE -> before.withLefts(lefts(balance.used() ? readings.drops() : Optional.empty(), sure));
            case PLUG, LASH, COIL_SWAP, BORESCOPE, RUNNING -> before.withFactors(factors(readings));
        };
    }

    Hypotheses.Outlet outlet(Hypotheses.Branch branch) {
        return hypotheses.outlets().get(branch.outlet());
    }

    List<Hypotheses.Branch> branches() {
        return hypotheses.branches();
    }
}
