package org.pullproof.app;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.pullproof.car.Fact;
import org.pullproof.files.BadFileException;
import org.pullproof.health.Conditions;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.health.Words;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;
import org.pullproof.tuneup.Bench;
import org.pullproof.tuneup.BreakIn;

/** Keeps work done on cylinders, so that Health weighs only what was read after it, and what has to bed in since. */
public final class RecordWork {
    private static final String RINGS = "rings";

    private final SessionDesk desk;

    public RecordWork(SessionDesk desk) {
        this.desk = desk;
    }

    /**
     * Notes work done; new rings have to bed in from then on.
     *
     * @param what a word of {@link Words} for work
     * @param cylinders on which; empty is the whole engine
     * @throws IllegalArgumentException with a sentence if it is no such word, or there is no such cylinder
     */
    public OpenSession record(OpenSession open, String what, List<Integer> cylinders, LocalDateTime when)
            throws BadFileException {
        return desk.edit(open, new Edit("Work done: " + what, session -> {
            Session next = with(session, what, cylinders, "", when);
            return what.equals(RINGS) ? bedding(next, BreakIn.What.RINGS, when.toLocalDate()) : next;
        }));
    }

    /** The session with one more piece of work done. */
    static Session with(Session session, String what, List<Integer> cylinders, String note, LocalDateTime when) {
        if (!Words.of(TestKind.WORK).contains(what)) {
            throw new IllegalArgumentException("\"" + what + "\" is no work known here; known are "
                    + String.join(", ", Words.of(TestKind.WORK)) + ".");
        }
        IntStream all = cylinders.stream().mapToInt(Integer::intValue);
        List<Reading> done = cylinders.isEmpty()
                ? List.of(work(OptionalInt.empty(), what, note, when))
                : all.mapToObj(cylinder -> work(OptionalInt.of(cylinder), what, note, when))
                        .toList();
        return RecordReading.with(session, done);
    }

    private static Reading work(OptionalInt cylinder, String what, String note, LocalDateTime when) {
        return new Reading.Work(cylinder, what, Conditions.notRecorded(), when, note);
    }

    /** Notes that something new has to bed in from that day on. */
    public OpenSession breakIn(OpenSession open, BreakIn.What what, LocalDate since) throws BadFileException {
        return desk.edit(open, new Edit("New: " + what.words(), session -> bedding(session, what, since)));
    }

    private static Session bedding(Session session, BreakIn.What what, LocalDate since) {
        return withBench(
                session,
                bench -> bench.withBreakIn(
                        new BreakIn(what, since, session.car().quantity(Fact.ODOMETER), Optional.empty())));
    }

    /**
     * Notes that it counts as bedded in.
     *
     * @param why in the words of builder or owner; stands in the report
     * @throws IllegalArgumentException with a sentence if it was not new, or no reason is given
     */
    public OpenSession bedded(OpenSession open, BreakIn.What what, String why) throws BadFileException {
        return desk.edit(open, new Edit("Bedded in: " + what.words(), session -> {
            BreakIn known = session.tuneUp().bench().breakIns().stream()
                    .filter(breakIn -> breakIn.what() == what)
                    .findFirst()
                    .orElseThrow(() ->
                            new IllegalArgumentException(what.words() + ": nothing is noted that has to bed in."));
            return withBench(
                    session,
                    bench -> bench.withBreakIn(
                            new BreakIn(what, known.since(), known.odometer(), Optional.of(why.strip()))));
        }));
    }

    /** Notes that something was looked at once more after the tune-up, or takes that back. */
    public OpenSession rechecked(OpenSession open, String what, boolean done) throws BadFileException {
        return desk.edit(
                open,
                new Edit(
                        (done ? "Looked at again: " : "Not looked at again: ") + what,
                        session -> withBench(
                                session, bench -> done ? bench.withRechecked(what) : bench.withoutRechecked(what))));
    }

    private static Session withBench(Session session, UnaryOperator<Bench> change) {
        return session.withTuneUp(
                session.tuneUp().withBench(change.apply(session.tuneUp().bench())));
    }
}
