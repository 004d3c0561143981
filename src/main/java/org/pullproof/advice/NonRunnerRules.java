package org.pullproof.advice;

import java.util.List;
import java.util.Optional;
import org.pullproof.car.Access;
import org.pullproof.car.Runs;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.TestKind;

/** An engine that does not run: by hand first, then cranked, then started. */
final class NonRunnerRules {
    private final Proposals proposals;

    NonRunnerRules(Proposals proposals) {
        this.proposals = proposals;
    }

    List<Rule> inOrder() {
        return List.of(this::plugsOut, this::turnByHand, this::compression, this::leakdown, this::firstStart);
    }

    private static boolean doesNotRun(Situation now) {
        return now.car().runs().filter(runs -> runs != Runs.YES).isPresent();
    }

    private Optional<NextStep> plugsOut(Situation now) {
        return doesNotRun(now) && !now.permits(Access.PLUGS_OUT)
                ? Optional.of(proposals.desk(
                        Stage.CAR,
                        "Ask for leave to take the plugs out",
                        "It does not run, so nothing can be read with the engine running.",
                        "Whether it turns, and whether it has compression."))
                : Optional.empty();
    }

    private Optional<NextStep> turnByHand(Situation now) {
        boolean turned = now.everRead(TestKind.BORESCOPE) || now.everRead(TestKind.COMPRESSION_DRY);
        boolean stood = now.car().runs().filter(runs -> runs == Runs.NO).isPresent();
        return stood && !turned
                ? Optional.of(proposals.act(
                        now,
                        "turn-by-hand",
                        Access.PLUGS_OUT,
                        Stage.HEALTH,
                        "Plugs out, two full turns by hand, a look into each cylinder",
                        "It does not run: what is stuck or drowned breaks under the starter. If it stood more than six"
                                + " months, 5 mL of oil goes into each cylinder first.",
                        "Whether it may be cranked. Enter what the borescope shows."))
                : Optional.empty();
    }

    private Optional<NextStep> compression(Situation now) {
        boolean missing = now.health().cylinders().stream()
                .anyMatch(cylinder -> cylinder.dry().isEmpty());
        return doesNotRun(now) && missing
                ? Optional.of(proposals.test(
                        now,
                        TestKind.COMPRESSION_DRY,
                        "Crank for oil pressure, then compression, dry",
                        "It turns, so it can be cranked with the plugs out: oil first, then the gauge.",
                        "Whether every cylinder can fire at all."))
                : Optional.empty();
    }

    private Optional<NextStep> leakdown(Situation now) {
        return now.suspects().stream()
                .filter(cylinder -> doesNotRun(now))
                .filter(cylinder ->
                        cylinder.leakWords().isEmpty() && cylinder.leakPercent().isEmpty())
                .map(CylinderFindings::number)
                .findFirst()
                .map(number -> proposals.test(
                        now,
                        TestKind.LEAKDOWN,
                        "Leak-down, cylinder " + number,
                        "Cylinder " + number + " stands out, and it cannot be heard running.",
                        "Where the air goes: exhaust, intake, crankcase or coolant."));
    }

    private Optional<NextStep> firstStart(Situation now) {
        return doesNotRun(now)
                ? Optional.of(proposals.act(
                        now,
                        "first-start",
                        Access.START_IT,
                        Stage.CAR,
                        "Fresh fuel, then a first start",
                        "It turns and its cylinders are read: fuel and spark are what is left.",
                        "Whether it runs. Say so on the sheet Car."))
                : Optional.empty();
    }
}
