package org.pullproof.advice;

import java.util.List;
import java.util.Optional;
import org.pullproof.car.Access;
import org.pullproof.health.TestKind;

/** What has to be told of the car before anything is done to it, and what looking alone can do. */
final class CarRules {
    private final Proposals proposals;

    CarRules(Proposals proposals) {
        this.proposals = proposals;
    }

    List<Rule> inOrder() {
        return List.of(this::access, this::runs, this::coldLook, this::askForMore);
    }

    private Optional<NextStep> access(Situation now) {
        return now.car().access().isPresent()
                ? Optional.empty()
                : Optional.of(proposals.desk(
                        Stage.CAR,
                        "Say what the owner permits",
                        "Every test needs leave: to look, to start it, to take plugs out, to drive it.",
                        "Which tests can come next."));
    }

    private Optional<NextStep> runs(Situation now) {
        return now.car().runs().isPresent()
                ? Optional.empty()
                : Optional.of(proposals.desk(
                        Stage.CAR,
                        "Say whether it runs",
                        "An engine that does not run is tested in another order.",
                        "Whether the tests begin with the engine running or with the plugs out."));
    }

    private Optional<NextStep> coldLook(Situation now) {
        if (now.permits(Access.START_IT) || now.everRead(TestKind.OBSERVATION)) {
            return Optional.empty();
        }
        return Optional.of(proposals.act(
                now,
                "cold-look",
                Access.LOOK_ONLY,
                Stage.HEALTH,
                "Cold look: oil, coolant, belts, leaks, smell",
                "Looking is all that is permitted, and it costs nothing.",
                "Milk under the cap, oil in the coolant or a loose belt end many visits early."));
    }

    private Optional<NextStep> askForMore(Situation now) {
        return now.permits(Access.START_IT)
                ? Optional.empty()
                : Optional.of(proposals.desk(
                        Stage.CAR,
                        "Ask for leave to start it",
                        "By looking alone nothing more can be learned of this engine.",
                        "With the engine running, balance and oil pressure can be read."));
    }
}
