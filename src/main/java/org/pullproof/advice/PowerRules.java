package org.pullproof.advice;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pullproof.car.Access;
import org.pullproof.changes.Call;
import org.pullproof.changes.JudgedChange;
import org.pullproof.dyno.DynoFindings.SetupPower;
import org.pullproof.dyno.PullFindings;
import org.pullproof.engine.Setup;

/** Pulls, changes and the way back to base, until enough is known to weigh the next money. */
final class PowerRules {
    /** Fewer pulls do not tell a setup's mean from its scatter; judgement. */
    private static final int ENOUGH = 3;

    /** With so many pulls on both sides, more of them are dearer than the difference; judgement. */
    private static final int MANY = 6;

    /** So many open points are named, the ones that come first. */
    private static final int MOST_NAMED = 3;

    private static final int MINUTES_OF_A_CHANGE = 60;

    private final Proposals proposals;

    PowerRules(Proposals proposals) {
        this.proposals = proposals;
    }

    List<Rule> inOrder() {
        return List.of(
                this::air,
                this::baseline,
                this::firstChange,
                this::pullsOnPresent,
                this::backToBase,
                this::leaveALoss,
                this::takeAGain,
                this::settle,
                this::worth);
    }

    private Optional<NextStep> air(Situation now) {
        boolean lacks = counted(now).stream().anyMatch(pull -> pull.air().isEmpty());
        return lacks
                ? Optional.of(proposals.desk(
                        Stage.DYNO_DAY,
                        "Type in the air of the dyno day",
                        "Pulls without their air cannot be corrected, nor compared with another day.",
                        "Power on one standard."))
                : Optional.empty();
    }

    private Optional<NextStep> baseline(Situation now) {
        String base = baseId(now);
        int missing = ENOUGH - pullsOn(now, base);
        return missing > 0
                ? Optional.of(pulls(
                        now,
                        missing + (missing > 1 ? " more pulls on " : " more pull on ") + name(now, base),
                        "No change can be judged without a baseline whose scatter is known.",
                        "What it makes, and how well that repeats."))
                : Optional.empty();
    }

    private Optional<NextStep> firstChange(Situation now) {
        return now.session().setups().size() == 1
                ? Optional.of(proposals.work(
                        MINUTES_OF_A_CHANGE,
                        "change",
                        Stage.CHANGES,
                        "Make one change, and only one",
                        "The baseline stands; two changes at once cannot be told apart.",
                        "What that one change is worth, after three pulls on it and one back at base."))
                : Optional.empty();
    }

    private Optional<NextStep> pullsOnPresent(Situation now) {
        String present = now.session().presentSetup();
        int missing = ENOUGH - pullsOn(now, present);
        return missing > 0
                ? Optional.of(pulls(
                        now,
                        missing + (missing > 1 ? " pulls on " : " pull on ") + name(now, present),
                        "The engine stands on a setup that has too few pulls.",
                        "Whether " + name(now, present) + " made power."))
                : Optional.empty();
    }

    /** The newest setup needs a pull of an earlier one after it, or drift and change cannot be told apart. */
    private Optional<NextStep> backToBase(Situation now) {
        List<PullFindings> pulls = counted(now);
        List<String> order = now.dyno().setups().stream().map(SetupPower::setup).toList();
        if (order.size() < 2) {
            return Optional.empty();
        }
        String newest = order.get(order.size() - 1);
        List<String> setups = pulls.stream().map(pull -> pull.pull().setup()).toList();
        boolean control =
                setups.subList(setups.indexOf(newest), setups.size()).stream().anyMatch(id -> !id.equals(newest));
        return control
                ? Optional.empty()
                : Optional.of(pulls(
                        now,
                        "Back to " + name(now, order.get(0)) + ", one or two control pulls",
                        "An engine that warms up drifts; without a way back drift and change look alike.",
                        "Whether it was " + name(now, newest) + " or the day."));
    }

    private Optional<NextStep> leaveALoss(Situation now) {
        return judged(now, Call.LOSS)
                .filter(change -> change.to().equals(now.session().presentSetup()))
                .map(change -> set(
                        change.from(), now, "The engine stands on " + name(now, change.to()) + ", which lost power."));
    }

    private Optional<NextStep> takeAGain(Situation now) {
        return judged(now, Call.GAIN)
                .filter(change -> change.from().equals(now.session().presentSetup()))
                .map(change -> set(
                        change.to(),
                        now,
                        name(now, change.to()) + " made power, and the engine stands on " + name(now, change.from())
                                + "."));
    }

    private NextStep set(String setup, Situation now, String why) {
        return proposals.work(
                MINUTES_OF_A_CHANGE,
                "change",
                Stage.CHANGES,
                "Set it to " + name(now, setup),
                why,
                "What the engine keeps.");
    }

    private Optional<NextStep> settle(Situation now) {
        return judged(now, Call.NO_CALL)
                .filter(change -> Math.min(pullsOn(now, change.from()), pullsOn(now, change.to())) < MANY)
                .map(change -> pulls(
                        now,
                        "More pulls, by turns on " + name(now, change.from()) + " and " + name(now, change.to()),
                        "The pulls so far allow no call on " + change.name() + ".",
                        "Whether it is a gain, a loss or the same."));
    }

    private Optional<NextStep> worth(Situation now) {
        return Optional.of(proposals.desk(
                Stage.WORTH_IT,
                "Weigh what the next money buys",
                "What can be read is read, and the changes are judged.",
                "Whether to stop and drive, or what to try next."));
    }

    private NextStep pulls(Situation now, String action, String why, String settles) {
        return now.gate().blocks()
                ? gate(now, action)
                : proposals.act(now, "dyno-pull", Access.DRIVE_IT, Stage.DYNO_DAY, action, why, settles);
    }

    /** No pull is proposed to a person who has not gone through the gate; what the pull would be is said. */
    private NextStep gate(Situation now, String pulls) {
        List<GatePoint> open = now.gate().inTheWay();
        String first = open.stream()
                .map(point -> point.state() == GatePoint.State.AGAINST ? point.why() : point.name())
                .limit(MOST_NAMED)
                .collect(Collectors.joining("; "));
        String more = open.size() > MOST_NAMED ? "; and " + (open.size() - MOST_NAMED) + " more" : "";
        return proposals.act(
                now,
                "dyno-pull",
                Access.DRIVE_IT,
                Stage.DYNO_DAY,
                "Go through the gate before the first pull",
                "Engine, car, room and people must be fit for full load. Not passed yet: " + first + more + ".",
                "Whether the car may be loaded; then: " + pulls + ".");
    }

    private static Optional<JudgedChange> judged(Situation now, Call call) {
        return now.changes().changes().stream()
                .filter(change -> change.call() == call)
                .reduce((earlier, later) -> later);
    }

    private static List<PullFindings> counted(Situation now) {
        return now.dyno().pulls().stream().filter(pull -> !pull.excluded()).toList();
    }

    private static String baseId(Situation now) {
        return now.dyno().setups().stream()
                .map(SetupPower::setup)
                .findFirst()
                .orElse(now.session().presentSetup());
    }

    private static int pullsOn(Situation now, String setup) {
        return (int) counted(now).stream()
                .filter(pull -> pull.pull().setup().equals(setup))
                .count();
    }

    private static String name(Situation now, String setup) {
        return now.session().setup(setup).map(Setup::name).orElse(setup);
    }
}
