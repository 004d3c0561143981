package org.pullproof.tuneup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.engine.Crossfire;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Ignition;
import org.pullproof.units.Figures;

/**
 * What is remarkable about plug wires: one that resists half as much again as the others for its length, wires that stand in
 * the wrong towers of the cap, and pairs that must run apart. The factor of one and a half is judgement: common practice, no
 * source.
 */
final class WireRemarks {
    private static final double UNLIKE_THE_OTHERS = 1.5;
    private static final int FEWEST = 3;

    private final EngineProfile profile;

    WireRemarks(EngineProfile profile) {
        this.profile = profile;
    }

    List<String> of(TuneUp tuneUp) {
        List<String> remarks = new ArrayList<>();
        swapped(tuneUp.capOrder()).ifPresent(remarks::add);
        tuneUp.wires().forEach(wire -> resistance(wire, tuneUp.wires()).ifPresent(remarks::add));
        apart(tuneUp.wires()).forEach(remarks::add);
        return remarks;
    }

    /** Compares the cap with the firing order, wherever the reading began. */
    private Optional<String> swapped(List<Integer> cap) {
        List<Integer> order = profile.firing().cylinders();
        if (cap.isEmpty() || rotations(order).contains(cap)) {
            return Optional.empty();
        }
        return rotations(order).stream()
                .filter(right -> differing(right, cap).size() == 2)
                .findFirst()
                .map(right -> differing(right, cap))
                .map(pair -> "The wires of cylinders " + Math.min(pair.get(0), pair.get(1)) + " and "
                        + Math.max(pair.get(0), pair.get(1))
                        + " are swapped at the cap: in the direction of the rotor it must read " + joined(order)
                        + ", it reads " + joined(cap) + ".")
                .or(() -> Optional.of("The wires do not follow the firing order: in the direction of the rotor the cap"
                        + " must read " + joined(order) + ", it reads " + joined(cap) + "."));
    }

    private static List<List<Integer>> rotations(List<Integer> order) {
        List<List<Integer>> all = new ArrayList<>();
        for (int first = 0; first < order.size(); first++) {
            List<Integer> turned = new ArrayList<>(order.subList(first, order.size()));
            turned.addAll(order.subList(0, first));
            all.add(turned);
        }
        return all;
    }

    private static List<Integer> differing(List<Integer> right, List<Integer> cap) {
        List<Integer> differing = new ArrayList<>();
        for (int place = 0; place < right.size(); place++) {
            if (!right.get(place).equals(cap.get(place))) {
                differing.add(cap.get(place));
            }
        }
        return differing;
    }

    private static String joined(List<Integer> cylinders) {
        return String.join(" ", cylinders.stream().map(String::valueOf).toList());
    }

    private static Optional<String> resistance(WireRecord wire, List<WireRecord> all) {
        double[] others = all.stream()
                .filter(other -> other.cylinder() != wire.cylinder())
                .flatMap(other -> other.ohmPerMetre().stream())
                .mapToDouble(ohm -> ohm)
                .sorted()
                .toArray();
        if (others.length + 1 < FEWEST) {
            return Optional.empty();
        }
        double middle = (others[(others.length - 1) / 2] + others[others.length / 2]) / 2;
        return wire.ohmPerMetre()
                .filter(ohm -> ohm > UNLIKE_THE_OTHERS * middle)
                .map(ohm -> "The wire of cylinder " + wire.cylinder() + " has "
                        + Figures.number(ohm / 1e3, 1) + " kΩ/m, the middle of the others "
                        + Figures.number(middle / 1e3, 1) + " kΩ/m (judgement: half as much again is too much).");
    }

    /** Two wires told to run the same way that must not. */
    private List<String> apart(List<WireRecord> wires) {
        return profile.ignition() == Ignition.COIL_ON_PLUG
                ? List.of()
                : Crossfire.pairs(profile).stream()
                        .filter(pair -> sameRoute(pair, wires))
                        .map(pair -> "The wires of cylinders " + pair.first() + " and " + pair.second()
                                + " run together and fire in succession on one bank: keep them apart (Army TM"
                                + " 5-4210-230-14&P-1, note on cross fire).")
                        .toList();
    }

    private static boolean sameRoute(Crossfire.Pair pair, List<WireRecord> wires) {
        List<String> routes = wires.stream()
                .filter(wire -> wire.cylinder() == pair.first() || wire.cylinder() == pair.second())
                .map(wire -> wire.route().strip())
                .toList();
        return routes.size() == 2 && !routes.get(0).isEmpty() && routes.get(0).equals(routes.get(1));
    }
}
