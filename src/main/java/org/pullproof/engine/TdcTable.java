package org.pullproof.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Where each cylinder stands at top dead centre on compression, in firing order.
 *
 * <pre>
 * crank angle of the k-th cylinder = sum of the intervals before it       (0 for the reference cylinder)
 * damper mark = crank angle modulo 360°,  rotor = crank angle / 2
 * </pre>
 *
 * <p>Source: four strokes are two turns of the crank and one of the distributor, Army TM 9-8000 page 2-18 (P) for even 180°;
 * odd intervals come from the profile's list and are never 720°/n.
 *
 * @param rows one a cylinder
 */
public record TdcTable(List<Row> rows) {
    private static final int TURN = 360;

    public TdcTable {
        rows = List.copyOf(rows);
    }

    /**
     * @param number the cylinder
     * @param crankDegrees turn of the crank from top dead centre of the reference cylinder, 0 to less than 720
     * @param damperDegrees where the mark on the damper must stand, in the crank's sense of rotation, 0 to less than 360
     * @param rotorDegrees turn of the distributor's rotor in its own direction, 0 to less than 360; absent without one
     */
    public record Row(int number, int crankDegrees, int damperDegrees, OptionalDouble rotorDegrees) {}

    /**
     * The turn of the crank from one cylinder to the one after it in firing order.
     *
     * @param from the cylinder at top dead centre before the turn
     * @param to the cylinder at top dead centre after it
     * @param crankDegrees turn of the crank in its direction of running, greater than 0
     */
    public record Turn(int from, int to, int crankDegrees) {
        /** Turn of the distributor's rotor meanwhile, degrees. */
        public double rotorDegrees() {
            return crankDegrees / 2.0;
        }
    }

    public static TdcTable of(EngineProfile profile) {
        List<Integer> order = profile.firing().cylinders();
        List<Row> rows = new ArrayList<>();
        int crank = 0;
        for (int k = 0; k < order.size(); k++) {
            rows.add(new Row(order.get(k), crank, crank % TURN, rotor(profile, crank)));
            crank += profile.firing().intervals().get(k);
        }
        return new TdcTable(rows);
    }

    /** The turn that brings the cylinder after this one to top dead centre. */
    public Turn turnFrom(int cylinder) {
        int place = place(cylinder);
        Row next = rows.get((place + 1) % rows.size());
        int turn = Math.floorMod(next.crankDegrees() - rows.get(place).crankDegrees(), FiringOrder.CYCLE);
        return new Turn(cylinder, next.number(), turn == 0 ? FiringOrder.CYCLE : turn);
    }

    /** The cylinder that comes before this one. */
    public int before(int cylinder) {
        return rows.get(Math.floorMod(place(cylinder) - 1, rows.size())).number();
    }

    public Row row(int cylinder) {
        return rows.get(place(cylinder));
    }

    private int place(int cylinder) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).number() == cylinder) {
                return i;
            }
        }
        throw new IllegalArgumentException("There is no cylinder " + cylinder + " in the firing order");
    }

    private static OptionalDouble rotor(EngineProfile profile, int crank) {
        return profile.rotor() == Rotor.NONE ? OptionalDouble.empty() : OptionalDouble.of(crank / 2.0);
    }
}
