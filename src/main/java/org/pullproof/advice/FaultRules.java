package org.pullproof.advice;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.pullproof.engine.Ignition;
import org.pullproof.engine.Layout;
import org.pullproof.health.AirPlace;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.health.HealthFindings.Verdict;
import org.pullproof.health.TestKind;

/** A cylinder that is low or in doubt: the cheapest cause first. */
final class FaultRules {
    private static final Set<AirPlace> VALVES = Set.of(AirPlace.EXHAUST, AirPlace.INTAKE);

    /** A cylinder that gives less than this part of its fair share of the balance is as good as dead; judgement. */
    private static final double DEAD_SHARE = 0.5;

    private final Proposals proposals;

    FaultRules(Proposals proposals) {
        this.proposals = proposals;
    }

    List<Rule> inOrder() {
        return List.of(this::coilSwap, this::wet, this::leakdown, this::gas, this::lash, this::borescope);
    }

    /** What is left to do with a fault once the whole engine is read too. */
    List<Rule> whenAllIsRead() {
        return List.of(this::weighRepair);
    }

    private Optional<NextStep> coilSwap(Situation now) {
        boolean coils = now.session().profile().ignition() == Ignition.COIL_ON_PLUG;
        return first(now, TestKind.COIL_SWAP, cylinder -> sparkOrFuel(cylinder, now.cylinders()))
                .map(number -> proposals.test(
                        now,
                        TestKind.COIL_SWAP,
                        coils
                                ? "Swap the coil of cylinder " + number + " with a neighbour's"
                                : "Swap lead and plug of cylinder " + number + " with a neighbour's",
                        "Cylinder " + number
                                + " gives little power though nothing says it leaks; spark is the cheapest cause.",
                        "If the fault moves, it was the part; if it stays, look at fuel and seal."));
    }

    private static boolean sparkOrFuel(CylinderFindings cylinder, int cylinders) {
        boolean fuelWet = cylinder.plugLook().filter("fuel-wet"::equals).isPresent();
        boolean dead = cylinder.sharePercent().isPresent()
                && cylinder.sharePercent().getAsDouble() < DEAD_SHARE * 100 / cylinders;
        return fuelWet || (dead && cylinder.state() != State.LOW);
    }

    private Optional<NextStep> wet(Situation now) {
        boolean decisive = now.session().profile().layout() != Layout.FLAT;
        return first(
                        now,
                        TestKind.COMPRESSION_WET,
                        cylinder -> decisive && cylinder.dry().isPresent())
                .map(number -> proposals.test(
                        now,
                        TestKind.COMPRESSION_WET,
                        "Compression, wet, cylinder " + number,
                        "Cylinder " + number + " stands out dry; a spoon of oil seals rings, not valves.",
                        "Rings if it rises, valves or gasket if it stays."));
    }

    private Optional<NextStep> leakdown(Situation now) {
        return first(now, TestKind.LEAKDOWN, cylinder -> true)
                .map(number -> proposals.test(
                        now,
                        TestKind.LEAKDOWN,
                        "Leak-down, cylinder " + number + ", and listen",
                        "Where the air is heard tells more than any percentage.",
                        "Which part of cylinder " + number + " leaks: valve, ring or gasket."));
    }

    private Optional<NextStep> gas(Situation now) {
        boolean heard =
                now.suspects().stream().anyMatch(cylinder -> cylinder.air().contains(AirPlace.COOLANT));
        return heard && !now.engineRead(TestKind.COOLANT_GAS)
                ? Optional.of(proposals.test(
                        now,
                        TestKind.COOLANT_GAS,
                        "Coolant-gas test",
                        "Air was heard in the coolant; the chemical test needs no tools on the engine.",
                        "Whether gasket or head lets combustion gas through."))
                : Optional.empty();
    }

    private Optional<NextStep> lash(Situation now) {
        return first(now, TestKind.LASH, cylinder -> cylinder.air().stream().anyMatch(VALVES::contains))
                .map(number -> proposals.test(
                        now,
                        TestKind.LASH,
                        "Valve lash, cylinder " + number,
                        "A valve held open by tight lash leaks like a burnt one, and setting it costs next to nothing.",
                        "Whether the head has to come off at all."));
    }

    private Optional<NextStep> borescope(Situation now) {
        return first(now, TestKind.BORESCOPE, cylinder -> !cylinder.air().isEmpty())
                .map(number -> proposals.test(
                        now,
                        TestKind.BORESCOPE,
                        "Borescope, cylinder " + number,
                        "It leaks, and a look inside costs less than taking it apart.",
                        "A burnt edge, a mark on the bore or a damaged piston: what the repair will be."));
    }

    private Optional<NextStep> weighRepair(Situation now) {
        return now.owned() && now.health().verdict() == Verdict.NOT_SOUND
                ? Optional.of(proposals.desk(
                        Stage.WORTH_IT,
                        "Weigh the repair before anything else",
                        "It is not sound, and what could be read of it is read; a sick engine is not loaded on a dyno.",
                        "Whether to repair, to live with it or to stop. Work done goes into Health."))
                : Optional.empty();
    }

    private static Optional<Integer> first(Situation now, TestKind test, Predicate<CylinderFindings> concerned) {
        return now.suspects().stream()
                .filter(concerned)
                .map(CylinderFindings::number)
                .filter(number -> !now.readSinceWork(test, number))
                .findFirst();
    }
}
