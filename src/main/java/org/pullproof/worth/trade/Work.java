package org.pullproof.worth.trade;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.pullproof.engine.FuelSystem;
import org.pullproof.engine.Ignition;
import org.pullproof.worth.decision.problem.CostLine;
import org.pullproof.worth.decision.problem.Overrun;

/**
 * A work with its bill; its numbers are judgements under {@code work.<key>}: {@code p10 p50 p90 hours weeks chance}, of its gain
 * {@code gain.mean} and {@code gain.sd}, of another engine {@code hazard}.
 *
 * @param key {@code one-head}
 * @param words "one head, valve job"
 * @param kind whether it is engine work
 * @param overrun how its money overruns
 * @param find the hidden find it is for, if it comes only then
 * @param when the faults it comes with; empty if it always comes
 * @param gains whether power is expected of it
 * @param subjects words of a setting or a change that is about the same
 * @param cures faults it cures
 * @param needs works that have to go before it
 * @param mayCure faults it cures at times, by the number {@code may-cure.<fault>}
 * @param otherEngine whether it puts another engine in
 * @param ignition kinds of ignition it is for; empty for all
 * @param fuel kinds of fuel system it is for; empty for all
 * @param onlyOwned whether it comes only to who owns the car already
 * @param heads number of heads it is for; absent for any
 */
public record Work(
        String key,
        String words,
        CostLine.Kind kind,
        Overrun overrun,
        Optional<String> find,
        Set<String> when,
        boolean gains,
        Set<String> subjects,
        Set<String> cures,
        Set<String> needs,
        Set<String> mayCure,
        boolean otherEngine,
        Set<Ignition> ignition,
        Set<FuelSystem> fuel,
        boolean onlyOwned,
        OptionalInt heads) {
    public Work {
        when = Set.copyOf(when);
        subjects = Set.copyOf(subjects);
        cures = Set.copyOf(cures);
        needs = Set.copyOf(needs);
        mayCure = Set.copyOf(mayCure);
        ignition = Set.copyOf(ignition);
        fuel = Set.copyOf(fuel);
    }

    /** Key of the number that tells something of this work. */
    public String number(String what) {
        return "work." + key + "." + what;
    }

    /** Whether an engine has what it is for. */
    public boolean fits(Ignition has, FuelSystem fed, int headCount, boolean owned) {
        return (ignition.isEmpty() || ignition.contains(has))
                && (fuel.isEmpty() || fuel.contains(fed))
                && (owned || !onlyOwned)
                && heads.orElse(headCount) == headCount;
    }

    /** Whether words of a setting or a change are about what this work is for. */
    public boolean isAbout(String text) {
        String plain = text.toLowerCase(Locale.ROOT);
        return subjects.stream().anyMatch(plain::contains);
    }
}
