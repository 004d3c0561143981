package org.pullproof.simulation.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.health.AirPlace;
import org.pullproof.health.faults.Fault;

/** One invented engine: what it is, what is wrong with it. Everything follows from the seed. */
final class InventedEngine {
    private static final double[] LAYOUTS = {4, 3, 4, 3};

    final Kind kind;
    final int banks;
    final int inBank;
    final double boreM;
    final double strokeM;
    final double ratio;
    final double closing;
    final double air;
    final double rpm;
    final double tellRatio;
    final double tellClosing;
    final double gauge;
    final List<Bore> bores = new ArrayList<>();

    InventedEngine(Dice dice) {
        int layout = dice.weighted(LAYOUTS);
        this.banks = layout < 2 ? 1 : 2;
        this.inBank = layout == 0 ? 4 : layout == 1 ? 6 : layout == 2 ? 4 : 3;
        this.boreM = dice.between(0.078, 0.102);
        this.strokeM = dice.between(0.074, 0.096);
        this.ratio = dice.between(8.3, 10.8);
        this.kind = Kind.draw(dice);
        double camOut = kind == Kind.CAM_TIMING ? dice.between(12, 26) : 0;
        double trueClosing = dice.between(50, 68);
        this.closing = trueClosing + camOut;
        this.air = 101.3e3 * Math.exp(-dice.between(0, 2000) / 8300);
        this.rpm = dice.between(165, 235) * (kind == Kind.SPOILED ? 0.85 : 1);
        this.tellRatio = ratio * (1 + dice.normal(0, 0.015));
        this.tellClosing = trueClosing + dice.normal(0, 5);
        this.gauge = 1 + dice.normal(0, 0.03);
        double common = kind == Kind.RINGS_ALL ? 1.35 * dice.factor(0.35) : 0.42 * dice.factor(0.42);
        for (int i = 0; i < cylinders(); i++) {
            bores.add(new Bore(Fault.SOUND, common * dice.factor(0.25), 0, Optional.empty(), 1, 1));
        }
        damage(dice);
    }

    int cylinders() {
        return banks * inBank;
    }

    private void damage(Dice dice) {
        int at = dice.below(cylinders());
        if (kind == Kind.PAIR) {
            int one = at % inBank == inBank - 1 ? at - 1 : at;
            double hole = 2.3 * dice.factor(0.8);
            double idle = idle(hole, dice);
            bores.set(one, pair(one, hole, idle));
            bores.set(one + 1, pair(one + 1, hole, idle * dice.factor(0.1)));
        } else if (kind == Kind.TWO_FAULTS) {
            damage(at, any(dice), dice);
            damage((at + 1 + dice.below(cylinders() - 1)) % cylinders(), any(dice), dice);
        } else {
            kind.fault().ifPresent(fault -> damage(at, fault, dice));
        }
    }

    private static Fault any(Dice dice) {
        List<Fault> faults = List.of(
                Fault.EXHAUST_VALVE,
                Fault.VALVE_HELD_OPEN,
                Fault.RINGS,
                Fault.IGNITION,
                Fault.FUEL,
                Fault.INTAKE_VALVE,
                Fault.VALVE_NOT_OPENING);
        return faults.get(dice.below(faults.size()));
    }

    private Bore pair(int index, double hole, double idle) {
        return new Bore(
                Fault.GASKET_NEIGHBOUR, bores.get(index).ringMm2(), hole, Optional.of(AirPlace.NEIGHBOUR), 1, idle);
    }

    private static double idle(double hole, Dice dice) {
        return Math.exp(-0.15 * dice.factor(0.7) * hole);
    }

    private void damage(int index, Fault fault, Dice dice) {
        double ring = bores.get(index).ringMm2();
        bores.set(
                index,
                switch (fault) {
                    case EXHAUST_VALVE -> holed(fault, ring, 2.4 * dice.factor(0.8), AirPlace.EXHAUST, dice);
                    case INTAKE_VALVE -> holed(fault, ring, 2.2 * dice.factor(0.8), AirPlace.INTAKE, dice);
                    case VALVE_HELD_OPEN ->
                        holed(
                                fault,
                                ring,
                                2.2 * dice.factor(0.9),
                                dice.chance(0.7) ? AirPlace.EXHAUST : AirPlace.INTAKE,
                                dice);
                    case GASKET_COOLANT -> holed(fault, ring, 0.7 * dice.factor(0.8), AirPlace.COOLANT, dice);
                    case RINGS -> worn(fault, ring + 1.4 * dice.factor(0.6), 0, dice);
                    case PISTON -> worn(fault, ring, 4.5 * dice.factor(0.6), dice);
                    case VALVE_NOT_OPENING -> notOpening(ring, dice);
                    default -> weak(fault, ring, dice);
                });
    }

    private static Bore holed(Fault fault, double ring, double hole, AirPlace path, Dice dice) {
        return new Bore(fault, ring, hole, Optional.of(path), 1, idle(hole, dice));
    }

    private static Bore worn(Fault fault, double ring, double hole, Dice dice) {
        return new Bore(fault, ring, hole, Optional.of(AirPlace.CRANKCASE), 1, idle(ring + hole, dice));
    }

    private static Bore notOpening(double ring, Dice dice) {
        boolean exhaust = dice.chance(0.15);
        double filling = exhaust ? 1 : dice.between(0.07, 0.75);
        double idle = exhaust ? dice.between(0, 0.4) : Math.pow(filling, dice.between(0.6, 1.8));
        return new Bore(Fault.VALVE_NOT_OPENING, ring, 0, Optional.empty(), filling, idle);
    }

    private static Bore weak(Fault fault, double ring, Dice dice) {
        double dead = fault == Fault.IGNITION ? 0.65 : fault == Fault.FUEL ? 0.42 : 0.12;
        double idle = dice.chance(dead) ? dice.between(0, 0.06) : dice.between(0.06, 0.92);
        return new Bore(fault, ring, 0, Optional.empty(), 1, idle);
    }
}
