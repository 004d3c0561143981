package org.pullproof.health.faults;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Every way a cylinder may be, spelled out: each fault is a mixture of branches, and a branch says what is left of sealing, where the
 * air goes, and what is left at idle. Branches share chambers, outlets and idle shares, so each of these is computed once a cylinder.
 *
 * <p>Built once from the constants (section 2 of the method).
 */
final class Hypotheses {
    /** How oil seals a chamber. */
    enum Sealing {
        /** The hole stays as it is; only the ring leak is sealed. */
        NOT_THE_HOLE,
        /** Worn rings: the hole is sealed too. */
        RINGS,
        /** A holed piston: hardly. */
        PISTON,
        /** Any reading is as likely as another. */
        ANY
    }

    /** Where the air of the hole goes. */
    enum Path {
        CRANKCASE,
        EXHAUST,
        INTAKE,
        NEIGHBOUR,
        COOLANT,
        /** Exhaust or intake, one of the two. */
        EITHER_VALVE,
        /** Any reading is as likely as another. */
        ANY
    }

    /**
     * What the compression gauge meets.
     *
     * @param x hole, mm²
     * @param filling φ, share of the charge that comes in
     */
    record Chamber(Sealing sealing, double x, double filling) {}

    /**
     * What the leak-down tester meets.
     *
     * @param x hole, mm²
     */
    record Outlet(Path path, double x) {}

    /**
     * What is left at idle: u with weights that sum 1; none where any drop is as likely as another.
     */
    static final class Left {
        private final double[] u;
        private final double[] weights;

        Left(double[] u, double[] weights) {
            this.u = u;
            this.weights = weights;
        }

        int count() {
            return u.length;
        }

        double u(int index) {
            return u[index];
        }

        double weight(int index) {
            return weights[index];
        }
    }

    /**
     * One way of a fault.
     *
     * @param weight its chance within the fault
     * @param chamber index of its chamber
     * @param outlet index of its outlet
     * @param left index of its idle share
     */
    record Branch(Fault fault, double weight, int chamber, int outlet, int left) {}

    private static final double[] WHOLE = {1};

    private final FaultConstants constants;
    private final double[] holes;
    private final List<Chamber> chambers = new ArrayList<>();
    private final List<Outlet> outlets = new ArrayList<>();
    private final List<Left> lefts = new ArrayList<>();
    private final List<Branch> branches = new ArrayList<>();
    private final int tight;
    private final int tightOutlet;

    Hypotheses(FaultConstants constants) {
        this.constants = constants;
        this.holes = constants.holes().areas();
        this.tight = chamber(new Chamber(Sealing.NOT_THE_HOLE, 0, 1));
        this.tightOutlet = outlet(new Outlet(Path.CRANKCASE, 0));
        withoutHole(Fault.SOUND, new Left(WHOLE, WHOLE));
        for (Fault fault : List.of(Fault.IGNITION, Fault.FUEL, Fault.VACUUM_LEAK)) {
            withoutHole(fault, idle(fault));
        }
        holes(Sealing.NOT_THE_HOLE);
        notOpening();
        other();
    }

    private Left idle(Fault fault) {
        double[] weights = array(constants.idle().weights().getOrDefault(fault, List.of()));
        return new Left(array(constants.idle().left()), Chance.madeToSumOne(weights));
    }

    private void withoutHole(Fault fault, Left left) {
        branches.add(new Branch(fault, 1, tight, tightOutlet, left(left)));
    }

    private void holes(Sealing unsealed) {
        int firstLeft = lefts.size();
        for (double x : holes) {
            left(idleWithHole(x));
        }
        int open = chambers(unsealed);
        leaking(Fault.VALVE_HELD_OPEN, open, outlets(Path.EITHER_VALVE), firstLeft);
        leaking(Fault.EXHAUST_VALVE, open, outlets(Path.EXHAUST), firstLeft);
        leaking(Fault.INTAKE_VALVE, open, outlets(Path.INTAKE), firstLeft);
        leaking(Fault.GASKET_COOLANT, open, outlets(Path.COOLANT), firstLeft);
        leaking(Fault.GASKET_NEIGHBOUR, open, outlets(Path.NEIGHBOUR), firstLeft);
        int crankcase = outlets(Path.CRANKCASE);
        leaking(Fault.RINGS, chambers(Sealing.RINGS), crankcase, firstLeft);
        leaking(Fault.PISTON, chambers(Sealing.PISTON), crankcase, firstLeft);
    }

    /** u = exp(−k x), k spread by factors. */
    private Left idleWithHole(double x) {
        LogNormal loss = constants.idle().lossPerMm2();
        double[] deviations = array(constants.idle().lossDeviations());
        double[] u = new double[deviations.length];
        for (int i = 0; i < u.length; i++) {
            u[i] = Math.exp(-loss.median() * Math.exp(loss.sd() * deviations[i]) * x);
        }
        return new Left(u, Chance.normalWeights(deviations));
    }

    private int chambers(Sealing sealing) {
        int first = chambers.size();
        for (double x : holes) {
            chamber(new Chamber(sealing, x, 1));
        }
        return first;
    }

    private int outlets(Path path) {
        int first = outlets.size();
        for (double x : holes) {
            outlet(new Outlet(path, x));
        }
        return first;
    }

    private void leaking(Fault fault, int firstChamber, int firstOutlet, int firstLeft) {
        double[] weights = size(fault).weights(holes);
        for (int x = 0; x < holes.length; x++) {
            branches.add(new Branch(fault, weights[x], firstChamber + x, firstOutlet + x, firstLeft + x));
        }
    }

    private LogNormal size(Fault fault) {
        LogNormal size = constants.priors().holes().get(fault);
        if (size == null) {
            throw new IllegalArgumentException("The constants give no size of the hole for " + fault.key());
        }
        return size;
    }

    /** Mostly the charge does not come in; else it cannot get out, and compression reads as without a fault. */
    private void notOpening() {
        FaultConstants.Idle idle = constants.idle();
        double[] fillings = array(idle.fillings());
        double[] weights = gapWeights(fillings);
        for (int i = 0; i < fillings.length; i++) {
            double filling = fillings[i];
            double[] u = {filling * filling, filling, Math.sqrt(filling)};
            branches.add(new Branch(
                    Fault.VALVE_NOT_OPENING,
                    (1 - idle.exhaustSide()) * weights[i],
                    chamber(new Chamber(Sealing.NOT_THE_HOLE, 0, filling)),
                    tightOutlet,
                    left(alike(u))));
        }
        branches.add(new Branch(
                Fault.VALVE_NOT_OPENING,
                idle.exhaustSide(),
                tight,
                tightOutlet,
                left(alike(array(idle.exhaustSideLeft())))));
    }

    /** Weights ∝ half the gap between the two neighbours; at the ends the one gap. */
    private static double[] gapWeights(double[] places) {
        int last = places.length - 1;
        double[] weights = new double[places.length];
        for (int i = 0; i <= last; i++) {
            double gap = places[Math.min(i + 1, last)] - places[Math.max(i - 1, 0)];
            weights[i] = i == 0 || i == last ? gap : gap / 2;
        }
        return Chance.madeToSumOne(weights);
    }

    private static Left alike(double[] u) {
        double[] weights = new double[u.length];
        Arrays.fill(weights, 1.0 / u.length);
        return new Left(u, weights);
    }

    private void other() {
        branches.add(new Branch(
                Fault.OTHER,
                1,
                chamber(new Chamber(Sealing.ANY, 0, 1)),
                outlet(new Outlet(Path.ANY, 0)),
                left(new Left(new double[0], new double[0]))));
    }

    private int chamber(Chamber chamber) {
        chambers.add(chamber);
        return chambers.size() - 1;
    }

    private int outlet(Outlet outlet) {
        outlets.add(outlet);
        return outlets.size() - 1;
    }

    private int left(Left left) {
        lefts.add(left);
        return lefts.size() - 1;
    }

    static double[] array(List<Double> values) {
        return values.stream().mapToDouble(value -> value).toArray();
    }

    List<Chamber> chambers() {
        return chambers;
    }

    List<Outlet> outlets() {
        return outlets;
    }

    List<Left> lefts() {
        return lefts;
    }

    List<Branch> branches() {
        return branches;
    }
}
