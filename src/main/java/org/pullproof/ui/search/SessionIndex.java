package org.pullproof.ui.search;

import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.Stage;
import org.pullproof.car.FactWords;
import org.pullproof.changes.JudgedChange;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFindings;
import org.pullproof.engine.Setup;
import org.pullproof.health.FaultFindings.CandidateChance;
import org.pullproof.health.FaultFindings.CylinderChances;
import org.pullproof.health.Reading;
import org.pullproof.health.ReadingWords;
import org.pullproof.session.About;
import org.pullproof.session.Picture;
import org.pullproof.session.Session;
import org.pullproof.tuneup.TuneUpFindings.StepState;
import org.pullproof.units.Figures;
import org.pullproof.worth.Option;

/** Everything in a session that a person may look for, in the order of the job. Made from an appraisal and nothing else. */
public final class SessionIndex {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH);

    private final Appraisal appraisal;
    private final Session session;

    private SessionIndex(Appraisal appraisal) {
        this.appraisal = appraisal;
        this.session = appraisal.session();
    }

    /** The places of one appraisal. */
    public static List<Place> of(Appraisal appraisal) {
        SessionIndex index = new SessionIndex(appraisal);
        return Stream.of(
                        index.facts(),
                        index.notes(),
                        index.readings(),
                        index.candidates(),
                        index.steps(),
                        index.parts(),
                        index.setups(),
                        index.pulls(),
                        index.changes(),
                        index.money(),
                        index.pictures())
                .flatMap(places -> places)
                .toList();
    }

    private Stream<Place> facts() {
        Place engine = new Place("Engine", session.profile().name(), Stage.CAR);
        Stream<Place> told = session.car().facts().entrySet().stream()
                .map(fact -> new Place(
                        fact.getKey().words() + ": " + FactWords.of(fact.getKey(), fact.getValue()),
                        "told",
                        Stage.CAR));
        return Stream.concat(Stream.of(engine), told);
    }

    private Stream<Place> notes() {
        return session.notes().stream()
                .map(note -> new Place("Note: “" + note.words() + "”", on(TIME, note.time()), Stage.CAR));
    }

    private Stream<Place> readings() {
        return session.readings().stream().map(this::reading);
    }

    private Place reading(Reading reading) {
        String of = reading.cylinder().isPresent()
                ? "Cylinder " + reading.cylinder().getAsInt()
                : "Whole engine";
        String detail = Stream.of(reading.test().words(), "typed " + on(TIME, reading.time()), reading.note())
                .filter(words -> !words.isBlank())
                .reduce((first, then) -> first + ", " + then)
                .orElseThrow();
        return new Place(of + ": " + ReadingWords.of(reading, appraisal.figures()), detail, Stage.HEALTH);
    }

    private Stream<Place> candidates() {
        return appraisal.health().faults().cylinders().stream()
                .filter(CylinderChances::calledFaulty)
                .flatMap(
                        cylinder -> cylinder.candidates().stream().map(chance -> candidate(cylinder.number(), chance)));
    }

    private static Place candidate(int cylinder, CandidateChance chance) {
        return new Place(
                "Candidate: " + chance.words() + ", cylinder " + cylinder,
                Math.round(100 * chance.probability()) + " of 100",
                Stage.HEALTH);
    }

    private Stream<Place> steps() {
        return appraisal.tuneUp().steps().stream()
                .map(step -> new Place(
                        "Step " + step.step().id() + ": " + step.step().title(), state(step), Stage.TUNE_UP));
    }

    private static String state(StepState step) {
        return step.state().key() + ", " + step.step().minutes() + Figures.NO_BREAK_SPACE + "min";
    }

    private Stream<Place> parts() {
        Stream<Place> off = appraisal.tuneUp().offCar().stream()
                .map(part -> new Place(
                        "Part off the car: " + part.part(),
                        part.step().map(step -> "since step " + step + ", ").orElse("since ") + on(TIME, part.since()),
                        Stage.TUNE_UP));
        Stream<Place> left = appraisal.tuneUp().leftOff().stream()
                .map(words -> new Place("Part left off: " + words, "on purpose", Stage.TUNE_UP));
        return Stream.concat(off, left);
    }

    private Stream<Place> setups() {
        return session.setups().stream().map(this::setup);
    }

    private Place setup(Setup setup) {
        List<String> known = new ArrayList<>();
        if (setup.id().equals(session.presentSetup())) {
            known.add("setup now");
        }
        setup.levels().forEach((name, level) -> known.add(name + " " + level));
        Optional.of(setup.note()).filter(note -> !note.isBlank()).ifPresent(known::add);
        return new Place("Setup: " + setup.name(), String.join(", ", known), Stage.DYNO_DAY);
    }

    private Stream<Place> pulls() {
        return appraisal.dyno().pulls().stream().map(SessionIndex::pull);
    }

    private static Place pull(PullFindings findings) {
        Pull pull = findings.pull();
        List<String> known =
                new ArrayList<>(List.of(on(TIME, pull.time()), pull.file().original()));
        pull.excluded().ifPresent(reason -> known.add("does not count: " + reason));
        known.addAll(findings.flags());
        return new Place("Pull " + findings.name(), String.join(", ", known), Stage.DYNO_DAY);
    }

    private Stream<Place> changes() {
        Stream<Place> judged = appraisal.changes().changes().stream().map(SessionIndex::change);
        Stream<Place> recorded = session.changes().stream()
                .map(change -> new Place("Change: " + change.what(), on(TIME, change.time()), Stage.CHANGES));
        return Stream.concat(judged, recorded).filter(place -> !place.title().isBlank());
    }

    private static Place change(JudgedChange change) {
        return new Place("Call: " + change.name(), change.sentence().replace("**", ""), Stage.CHANGES);
    }

    private Stream<Place> money() {
        Stream<Place> options = session.money().options().stream().map(SessionIndex::option);
        Stream<Place> spent = session.money().spent().stream()
                .map(spending -> new Place(
                        "Spent: " + spending.what() + ", " + Figures.money(spending.amount()),
                        on(DAY, spending.date()),
                        Stage.WORTH_IT));
        return Stream.concat(options, spent);
    }

    private static Place option(Option option) {
        return new Place("Option: " + option.name(), "about " + Figures.money(option.likely()), Stage.WORTH_IT);
    }

    private Stream<Place> pictures() {
        return session.pictures().stream().map(SessionIndex::picture);
    }

    private static Place picture(Picture picture) {
        String seen = picture.words().isEmpty() ? "" : ": " + picture.words();
        return new Place(
                "Picture of " + picture.about().words() + seen,
                picture.original() + ", " + on(TIME, picture.time()),
                picture.about().kind() == About.Kind.CAR ? Stage.CAR : Stage.TUNE_UP);
    }

    private static String on(DateTimeFormatter format, TemporalAccessor time) {
        return format.format(time);
    }
}
