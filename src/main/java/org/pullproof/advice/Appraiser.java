package org.pullproof.advice;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.pullproof.car.Fact;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.dyno.DynoAssessor;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.dyno.DynoFindings.SetupPower;
import org.pullproof.dyno.Trace;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.session.Judgement;
import org.pullproof.session.Session;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.units.Figures;
import org.pullproof.worth.Spending;
import org.pullproof.worth.WorthFindings;

/** Asks every room once what a session amounts to, and hands the answers on to the rooms that build on them. Immutable. */
public final class Appraiser {
    private final Function<Judgement, Assessors> rooms;
    private final NextStepRules rules;

    /**
     * @param rooms those that judge by given values of judgement
     */
    public Appraiser(Function<Judgement, Assessors> rooms, NextStepRules rules) {
        this.rooms = rooms;
        this.rules = rules;
    }

    /**
     * @param traces figures of the pulls by their id
     * @param figures how sentences write figures
     */
    public Appraisal appraise(Session session, Map<String, Trace> traces, Figures figures) {
        Assessors by = rooms.apply(session.judgement());
        // beside the pulls: the two longest answers, and neither needs the other
        CompletableFuture<HealthFindings> judging = CompletableFuture.supplyAsync(
                () -> by.health().assess(session.readings(), session.profile(), session.car(), figures));
        TuneUpFindings tuned = by.tuneUp()
                .assess(
                        session.tuneUp(),
                        session.profile(),
                        figures,
                        session.car().quantity(Fact.ODOMETER));
        DynoFindings made = by.dyno()
                .assess(
                        session.days(),
                        session.setups(),
                        traces,
                        session.standard(),
                        new DynoAssessor.Told(
                                session.car().band(), session.car().quantity(Fact.ELEVATION), session.stated()),
                        figures);
        ChangeLedger changed = by.changes()
                .judge(
                        session.setups(),
                        session.changes(),
                        session.presentSetup(),
                        made.pulls(),
                        session.car().smallestDifferencePercent(),
                        figures);
        DynoFindings flagged =
                made.withPulls(made.pulls().stream().map(changed::flagged).toList());
        HealthFindings sound = outcome(judging);
        WorthFindings paid = by.worth()
                .assess(
                        session.money(),
                        session.car(),
                        changeCosts(session),
                        sound,
                        everRead(session),
                        changed,
                        session.setups(),
                        presentBandKw(session, made),
                        session.profile());
        DayStanding day = by.day().standing(session, sound, tuned, flagged);
        Situation now = new Situation(session, sound, tuned, flagged, changed, day.gate());
        return new Appraisal(
                session,
                figures,
                new CarAnswer(figures).sentence(session.car(), session.profile()),
                sound,
                tuned,
                flagged,
                changed,
                paid,
                day,
                rules.choose(now),
                StageWords.of(now, paid));
    }

    private static <T> T outcome(CompletableFuture<T> judging) {
        try {
            return judging.join();
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw failed;
        }
    }

    private static Set<TestKind> everRead(Session session) {
        return session.readings().stream().map(Reading::test).collect(Collectors.toSet());
    }

    private static List<Spending> changeCosts(Session session) {
        return session.changes().stream()
                .flatMap(change -> change.cost().stream()
                        .map(cost ->
                                new Spending(change.what(), cost, change.time().toLocalDate())))
                .toList();
    }

    private static OptionalDouble presentBandKw(Session session, DynoFindings made) {
        return made.setups().stream()
                .filter(power -> power.setup().equals(session.presentSetup()) && power.corrected())
                .mapToDouble(SetupPower::meanKw)
                .findFirst();
    }
}
