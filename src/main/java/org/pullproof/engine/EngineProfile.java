package org.pullproof.engine;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What an engine is: a generic profile, or a copy of one edited for a car.
 *
 * @param id file name without ending: {@code v8-distributor-order-a}
 * @param name what people read: "V8 90°, odd and even banks, order A"
 * @param layout in-line, V or flat
 * @param bankAngleDegrees angle between the banks; 0 for in-line, 180 for flat
 * @param banks the banks; every cylinder 1…n stands in exactly one
 * @param firing order and intervals
 * @param rotor direction of the distributor's rotor, {@code NONE} without a distributor
 * @param geometry measures of a cylinder
 * @param plugs gap and torque
 * @param ignition kind of ignition
 * @param fuel kind of fuel system
 * @param charged whether a compressor feeds the engine
 * @param interference whether the valves meet the pistons when the cam drive fails
 * @param steps id of the tune-up's step graph
 * @param sources where firing order, intervals and measures come from, one sentence each
 */
public record EngineProfile(
        String id,
        String name,
        Layout layout,
        int bankAngleDegrees,
        List<Bank> banks,
        FiringOrder firing,
        Rotor rotor,
        Geometry geometry,
        PlugSpec plugs,
        Ignition ignition,
        FuelSystem fuel,
        boolean charged,
        Known interference,
        String steps,
        List<String> sources) {
    public EngineProfile {
        banks = List.copyOf(banks);
        sources = List.copyOf(sources);
        Set<Integer> standing = new HashSet<>();
        for (Bank bank : banks) {
            for (int cylinder : bank.cylinders()) {
                if (!standing.add(cylinder)) {
                    throw new IllegalArgumentException("Cylinder " + cylinder + " stands in two places");
                }
            }
        }
        if (!standing.equals(numbers(standing.size()))) {
            throw new IllegalArgumentException(
                    "The banks hold " + standing + "; they must hold 1 to " + standing.size());
        }
        if (!standing.equals(Set.copyOf(firing.cylinders()))) {
            throw new IllegalArgumentException("The firing order " + firing.cylinders() + " must name each of the "
                    + standing.size() + " cylinders once");
        }
        if ((ignition == Ignition.DISTRIBUTOR) == (rotor == Rotor.NONE)) {
            throw new IllegalArgumentException("A rotor direction belongs to a distributor and to nothing else");
        }
    }

    private static Set<Integer> numbers(int last) {
        return java.util.stream.IntStream.rangeClosed(1, last).boxed().collect(Collectors.toSet());
    }

    public int cylinders() {
        return firing.cylinders().size();
    }

    /** Displacement in m³. */
    public double displacement() {
        return cylinders() * geometry.sweptVolume();
    }

    /**
     * @throws IllegalArgumentException if this engine has no such cylinder; the message says how many it has
     */
    public int requireCylinder(int number) {
        if (number < 1 || number > cylinders()) {
            throw new IllegalArgumentException(
                    "cylinder " + number + " of " + cylinders() + ": this engine has cylinders 1 to " + cylinders());
        }
        return number;
    }

    /** The bank a cylinder stands in. */
    public Bank bankOf(int cylinder) {
        requireCylinder(cylinder);
        return banks.stream()
                .filter(bank -> bank.cylinders().contains(cylinder))
                .findFirst()
                .orElseThrow();
    }
}
