package org.pullproof.advice;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.pullproof.car.Access;
import org.pullproof.engine.FuelSystem;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.health.HealthFindings.Verdict;
import org.pullproof.health.TestKind;

/** What every running engine is asked: each cylinder first, then the engine as a whole. */
final class HealthRules {
    private final Proposals proposals;

    HealthRules(Proposals proposals) {
        this.proposals = proposals;
    }

    List<Rule> inOrder() {
        return List.of(this::balance, this::compression, this::comparable);
    }

    List<Rule> wholeEngine() {
        return List.of(this::oilPressure, this::coolantGasNow, this::vacuum, this::starterHumps, this::codes);
    }

    /** What may wait for the tune-up, but not for full load. */
    List<Rule> beforeLoad() {
        return List.of(this::coolantGas);
    }

    private Optional<NextStep> balance(Situation now) {
        return missing(now, cylinder -> cylinder.dropRpm().isEmpty())
                .map(which -> proposals.test(
                        now,
                        TestKind.BALANCE,
                        "Balance, cylinder by cylinder" + which,
                        "It needs the engine running and nothing removed, and finds the one weak cylinder.",
                        "Which cylinders deserve compression and leak-down first."));
    }

    private Optional<NextStep> compression(Situation now) {
        return missing(now, cylinder -> cylinder.dry().isEmpty())
                .map(which -> proposals.test(
                        now,
                        TestKind.COMPRESSION_DRY,
                        "Compression, dry, all plugs out" + which,
                        "Balance shows a weak cylinder, not why; compression tells seal from spark and fuel.",
                        "Which cylinders seal alike, and which one is to be looked into."));
    }

    private Optional<NextStep> comparable(Situation now) {
        String apart = numbers(now, cylinder -> cylinder.state() == State.NOT_COMPARABLE);
        return apart.isEmpty()
                ? Optional.empty()
                : Optional.of(proposals.test(
                        now,
                        TestKind.COMPRESSION_DRY,
                        "Compression again, all in one run: cylinder " + apart,
                        "These readings were made differently and cannot be held beside the others.",
                        "Whether cylinder " + apart + " is low or was only read differently."));
    }

    /** Names the cylinders that lack something, if any does: ": cylinder 3, 4", or nothing to add where all do. */
    private static Optional<String> missing(Situation now, Predicate<CylinderFindings> lacks) {
        String numbers = numbers(now, lacks);
        boolean all = now.health().cylinders().stream().allMatch(lacks);
        return numbers.isEmpty() ? Optional.empty() : Optional.of(all ? "" : ": cylinder " + numbers);
    }

    private static String numbers(Situation now, Predicate<CylinderFindings> which) {
        return now.health().cylinders().stream()
                .filter(which)
                .map(cylinder -> String.valueOf(cylinder.number()))
                .collect(Collectors.joining(", "));
    }

    private Optional<NextStep> oilPressure(Situation now) {
        return once(
                now,
                TestKind.OIL_PRESSURE,
                "Oil pressure, hot idle, by a mechanical gauge",
                "Perfect cylinders on worn bearings are no sound engine.",
                "Whether the bottom end holds: below 8 psi (55 kPa) is bad, above 20 psi (140 kPa) speaks for it.");
    }

    /** Before money changes hands, and where the engine is not sound anyway, the gasket is looked at at once. */
    private Optional<NextStep> coolantGasNow(Situation now) {
        boolean mayWait = now.owned() && now.health().verdict() == Verdict.SOUND;
        return mayWait ? Optional.empty() : coolantGas(now);
    }

    private Optional<NextStep> coolantGas(Situation now) {
        return once(
                now,
                TestKind.COOLANT_GAS,
                "Coolant-gas test",
                "A gasket that leaks into the coolant costs more than any tune-up.",
                "Whether combustion gas gets into the coolant.");
    }

    private Optional<NextStep> vacuum(Situation now) {
        return once(
                now,
                TestKind.VACUUM,
                "Vacuum at idle and at a held 2500 rpm",
                "One gauge speaks for cam timing, exhaust and all cylinders at once.",
                "Whether anything is wrong with the engine as a whole.");
    }

    private Optional<NextStep> starterHumps(Situation now) {
        boolean instead = !now.permits(Access.PLUGS_OUT);
        boolean read = now.everRead(TestKind.STARTER_CURRENT);
        return instead && !read
                ? Optional.of(proposals.test(
                        now,
                        TestKind.STARTER_CURRENT,
                        "Starter current, hump by hump",
                        "The plugs must stay in; the starter feels each compression all the same.",
                        "Whether one cylinder seals worse than the others."))
                : Optional.empty();
    }

    private Optional<NextStep> codes(Situation now) {
        boolean electronic = now.session().profile().fuel() != FuelSystem.CARBURETTOR;
        return electronic && !now.owned()
                ? once(
                        now,
                        TestKind.CODES,
                        "Read stored codes and whether the monitors are ready",
                        "Codes erased just before a visit leave the monitors not ready.",
                        "Whether something was hidden.")
                : Optional.empty();
    }

    private Optional<NextStep> once(Situation now, TestKind test, String action, String why, String settles) {
        return now.engineRead(test) ? Optional.empty() : Optional.of(proposals.test(now, test, action, why, settles));
    }
}
