package org.pullproof.advice;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pullproof.car.Access;
import org.pullproof.engine.Ignition;
import org.pullproof.health.AirPlace;
import org.pullproof.health.FaultFindings.CandidateChance;
import org.pullproof.health.FaultFindings.CylinderChances;
import org.pullproof.health.FaultFindings.ProposedTest;
import org.pullproof.health.HealthFindings.Verdict;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.health.faults.Fault;

/** A cylinder called faulty: the cheapest cause first, then the test that is worth most to the decision. */
final class FaultRules {
    private final Proposals proposals;

    FaultRules(Proposals proposals) {
        this.proposals = proposals;
    }

    List<Rule> inOrder() {
        return List.of(this::coilSwap, this::sparkPart, this::gas, this::ofFaulty);
    }

    /** What is worth doing on the cylinders that are not called faulty, once each was looked at. */
    List<Rule> ofTheOthers() {
        return List.of(this::ofSeveral);
    }

    /** What is left to do with a fault once the whole engine is read too. */
    List<Rule> whenAllIsRead() {
        return List.of(this::weighRepair);
    }

    /** Swapping parts costs nothing and finds the very part, so it comes before what the decision is worth. */
    private Optional<NextStep> coilSwap(Situation now) {
        return withoutSparkOrMixture(now)
                .filter(number -> !now.readSinceWork(TestKind.COIL_SWAP, number))
                .findFirst()
                .map(number -> step(now, TestKind.COIL_SWAP, List.of(number), ""));
    }

    /** The swap has found the part: nothing else is worth reading before it is renewed. */
    private Optional<NextStep> sparkPart(Situation now) {
        return withoutSparkOrMixture(now)
                .filter(number -> moved(now, number))
                .findFirst()
                .filter(number -> now.owned())
                .map(number -> proposals.act(
                        now,
                        "spark-part",
                        Access.OWN_IT,
                        Stage.HEALTH,
                        "Put another " + (coilOnPlug(now) ? "coil" : "lead and plug") + " in cylinder " + number,
                        "Its fault moved with the part that was swapped, so that part is the fault.",
                        "Whether it gives its share again: tell the work done, then read the balance once more."));
    }

    private static boolean moved(Situation now, int cylinder) {
        return now.sinceWork(TestKind.COIL_SWAP, cylinder)
                .filter(reading ->
                        reading instanceof Reading.Sign sign && sign.word().equals(Optional.of("moved")))
                .isPresent();
    }

    private static Stream<Integer> withoutSparkOrMixture(Situation now) {
        return now.health().faults().cylinders().stream()
                .filter(CylinderChances::calledFaulty)
                .filter(FaultRules::lacksSparkOrMixture)
                .map(CylinderChances::number);
    }

    private static boolean lacksSparkOrMixture(CylinderChances cylinder) {
        return cylinder.candidates().stream()
                .findFirst()
                .map(CandidateChance::fault)
                .filter(fault -> fault.family() == Fault.Family.SPARK_OR_MIXTURE)
                .isPresent();
    }

    private Optional<NextStep> gas(Situation now) {
        boolean heard =
                now.suspects().stream().anyMatch(cylinder -> cylinder.air().contains(AirPlace.COOLANT));
        return heard && !now.engineRead(TestKind.COOLANT_GAS)
                ? Optional.of(step(now, TestKind.COOLANT_GAS, List.of(), ""))
                : Optional.empty();
    }

    private Optional<NextStep> ofFaulty(Situation now) {
        return proposed(now, false);
    }

    private Optional<NextStep> ofSeveral(Situation now) {
        return proposed(now, true);
    }

    private Optional<NextStep> proposed(Situation now, boolean ofSeveral) {
        return now.health().faults().nextTests().stream()
                .filter(proposed -> proposed.test().ofSeveral() == ofSeveral)
                .filter(proposed -> now.permits(proposed.test().test().access()))
                .findFirst()
                .map(proposed -> step(now, proposed));
    }

    private NextStep step(Situation now, ProposedTest proposed) {
        return step(now, proposed.test().test(), proposed.test().cylinders(), " " + proposed.why());
    }

    private NextStep step(Situation now, TestKind test, List<Integer> cylinders, String worth) {
        FaultTestWords words = FaultTestWords.of(test, numbers(cylinders), coilOnPlug(now));
        return proposals.test(now, test, words.action(), words.why() + worth, words.settles());
    }

    private static boolean coilOnPlug(Situation now) {
        return now.session().profile().ignition() == Ignition.COIL_ON_PLUG;
    }

    private static String numbers(List<Integer> cylinders) {
        return "cylinder " + cylinders.stream().map(String::valueOf).collect(Collectors.joining(", "));
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
}
