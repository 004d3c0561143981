package org.pullproof.advice;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pullproof.advice.GatePoint.State;
import org.pullproof.dyno.DayGate;
import org.pullproof.dyno.DoNotRun;
import org.pullproof.dyno.DynoDay;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.LoadPoint;
import org.pullproof.health.LoadPoint.Standing;
import org.pullproof.session.Session;
import org.pullproof.tuneup.Bench;
import org.pullproof.tuneup.BreakIn;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.tuneup.TuneUpFindings.Block;

/** Puts the points of the gate before the first pull together: engine, start gate, and what is looked at on the day. Immutable. */
final class GateKeeper {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private final DoNotRun rules;

    GateKeeper(DoNotRun rules) {
        this.rules = rules;
    }

    /** The gate of the last dyno day. */
    LoadGate gate(Session session, HealthFindings health, TuneUpFindings tuneUp) {
        Optional<DynoDay> last = session.days().stream().reduce((earlier, later) -> later);
        DayGate by = last.map(DynoDay::gate).orElse(DayGate.untouched());
        List<GatePoint> points = Stream.of(
                        LoadPoint.of(health).stream().map(point -> engine(point, by)),
                        Stream.of(startGate(tuneUp)),
                        rules.checks().stream()
                                .map(check -> check.key().equals(LoadGate.BEDDED)
                                        ? bedded(check, by, session.tuneUp().bench(), tuneUp)
                                        : check(check, by)))
                .flatMap(parts -> parts)
                .toList();
        boolean driven = last.map(day -> !day.pulls().isEmpty()).orElse(false);
        return new LoadGate(last.map(DynoDay::date), driven, points, by.aborts(), rules);
    }

    private static GatePoint engine(LoadPoint point, DayGate by) {
        State read = switch (point.standing()) {
            case MET -> State.READ;
            case NOT_KNOWN -> State.OPEN;
            case NOT_MET -> State.AGAINST;
        };
        boolean tickable = point.standing() == Standing.NOT_KNOWN;
        GatePoint found = new GatePoint(point.key(), "engine", point.name(), read, point.why());
        return read == State.READ ? found : byHand(found, by, tickable);
    }

    private static GatePoint check(DoNotRun.Check check, DayGate by) {
        return byHand(point(check, State.OPEN, "not ticked"), by, true);
    }

    /** Where the tune-up knows what is new in the engine, it answers; a person may still pass what beds in, with a reason. */
    private static GatePoint bedded(DoNotRun.Check check, DayGate by, Bench bench, TuneUpFindings tuneUp) {
        Optional<String> lock = tuneUp.afterwards().fullLoadLock();
        if (lock.isPresent()) {
            return byHand(point(check, State.AGAINST, lock.get()), by, false);
        }
        return bench.breakIns().isEmpty()
                ? check(check, by)
                : point(
                        check,
                        State.READ,
                        bench.breakIns().stream().map(GateKeeper::beddedIn).collect(Collectors.joining("; ")));
    }

    private static String beddedIn(BreakIn part) {
        return part.what().words() + ": " + part.bedded().orElse("driven as far as they bed in");
    }

    private static GatePoint point(DoNotRun.Check check, State state, String why) {
        return new GatePoint(check.key(), check.about(), check.words(), state, why);
    }

    private static GatePoint byHand(GatePoint point, DayGate by, boolean tickable) {
        Optional<String> reason = Optional.ofNullable(by.passed().get(point.key()));
        Optional<LocalDateTime> ticked =
                Optional.ofNullable(by.ticked().get(point.key())).filter(when -> tickable);
        return reason.map(why -> with(point, State.PASSED, why))
                .or(() -> ticked.map(when -> with(point, State.TICKED, "at " + when.format(CLOCK))))
                .orElse(point);
    }

    private static GatePoint with(GatePoint point, State state, String why) {
        return new GatePoint(point.key(), point.about(), point.name(), state, why);
    }

    private static GatePoint startGate(TuneUpFindings tuneUp) {
        String name = "nothing stands in the way of a start";
        if (tuneUp.startIsOpen()) {
            return new GatePoint(LoadGate.START_GATE, "tune-up", name, State.READ, "the start gate is open");
        }
        String blocks = tuneUp.startBlockedBy().stream().map(Block::what).collect(Collectors.joining("; "));
        return new GatePoint(LoadGate.START_GATE, "tune-up", name, State.AGAINST, blocks);
    }
}
