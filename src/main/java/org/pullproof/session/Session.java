package org.pullproof.session;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.pullproof.car.Car;
import org.pullproof.changes.Change;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.StatedFigure;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Setup;
import org.pullproof.health.Reading;
import org.pullproof.tuneup.TuneUp;
import org.pullproof.weather.Standard;
import org.pullproof.worth.MoneyBook;

/**
 * Everything known about one car's engine. Immutable; an {@link Edit} makes the next one.
 *
 * @param car the car around the engine
 * @param profile this engine, a copy of a generic profile
 * @param readings of its health, and work done, in the order they came
 * @param tuneUp how far the tune-up is
 * @param setups every state of adjustment, the first made first; at least one
 * @param presentSetup id of the setup the engine is in now
 * @param changes the steps between setups, in order
 * @param standard that power is corrected to
 * @param days the dyno days in order
 * @param money what is spent and what could be
 * @param notes free words
 * @param stated a figure of another dyno's sheet, as stated there
 * @param judgement values of judgement that stand in the place of the program's own
 * @param pictures photographs, in the order they were attached
 */
public record Session(
        Car car,
        EngineProfile profile,
        List<Reading> readings,
        TuneUp tuneUp,
        List<Setup> setups,
        String presentSetup,
        List<Change> changes,
        Standard standard,
        List<DynoDay> days,
        MoneyBook money,
        List<Note> notes,
        Optional<StatedFigure> stated,
        Judgement judgement,
        List<Picture> pictures) {
    public Session {
        readings = List.copyOf(readings);
        setups = List.copyOf(setups);
        changes = List.copyOf(changes);
        days = List.copyOf(days);
        notes = List.copyOf(notes);
        pictures = List.copyOf(pictures);
        String present = presentSetup;
        if (setups.stream().noneMatch(setup -> setup.id().equals(present))) {
            throw new IllegalArgumentException("The present setup \"" + present + "\" is none of the session's setups");
        }
    }

    /** A session of a car of which nothing is known but its engine. */
    public static Session begin(String carName, EngineProfile profile) {
        Setup found = Setup.named("as-found", "as found");
        return new Session(
                Car.named(carName),
                profile,
                List.of(),
                TuneUp.notBegun(),
                List.of(found),
                found.id(),
                List.of(),
                Standard.SAE_J1349,
                List.of(),
                MoneyBook.empty(),
                List.of(),
                Optional.empty(),
                Judgement.own(),
                List.of());
    }

    public Optional<Setup> setup(String id) {
        return setups.stream().filter(setup -> setup.id().equals(id)).findFirst();
    }

    public Setup present() {
        return setup(presentSetup).orElseThrow();
    }

    public Session withCar(Car next) {
        return with(draft -> draft.car = next);
    }

    public Session withProfile(EngineProfile next) {
        return with(draft -> draft.profile = next);
    }

    public Session withReadings(List<Reading> next) {
        return with(draft -> draft.readings = next);
    }

    public Session withTuneUp(TuneUp next) {
        return with(draft -> draft.tuneUp = next);
    }

    public Session withSetups(List<Setup> next, String present, List<Change> steps) {
        return with(draft -> {
            draft.setups = next;
            draft.presentSetup = present;
            draft.changes = steps;
        });
    }

    public Session withStandard(Standard next) {
        return with(draft -> draft.standard = next);
    }

    public Session withDays(List<DynoDay> next) {
        return with(draft -> draft.days = next);
    }

    public Session withMoney(MoneyBook next) {
        return with(draft -> draft.money = next);
    }

    public Session withNotes(List<Note> next) {
        return with(draft -> draft.notes = next);
    }

    public Session withStated(Optional<StatedFigure> next) {
        return with(draft -> draft.stated = next);
    }

    public Session withPictures(List<Picture> next) {
        return with(draft -> draft.pictures = next);
    }

    /** The pictures of one thing, in the order they were attached. */
    public List<Picture> pictures(About about) {
        return pictures.stream()
                .filter(picture -> picture.about().equals(about))
                .toList();
    }

    public Session withJudgement(Judgement next) {
        return with(draft -> draft.judgement = next);
    }

    private Session with(Consumer<Draft> change) {
        Draft draft = new Draft(this);
        change.accept(draft);
        return draft.session();
    }

    /** The parts of a session while the next one is made: every part but the changed ones is taken over. */
    private static final class Draft {
        private Car car;
        private EngineProfile profile;
        private List<Reading> readings;
        private TuneUp tuneUp;
        private List<Setup> setups;
        private String presentSetup;
        private List<Change> changes;
        private Standard standard;
        private List<DynoDay> days;
        private MoneyBook money;
        private List<Note> notes;
        private Optional<StatedFigure> stated;
        private Judgement judgement;
        private List<Picture> pictures;

        Draft(Session from) {
            car = from.car;
            profile = from.profile;
            readings = from.readings;
            tuneUp = from.tuneUp;
            setups = from.setups;
            presentSetup = from.presentSetup;
            changes = from.changes;
            standard = from.standard;
            days = from.days;
            money = from.money;
            notes = from.notes;
            stated = from.stated;
            judgement = from.judgement;
            pictures = from.pictures;
        }

        Session session() {
            return new Session(
                    car,
                    profile,
                    readings,
                    tuneUp,
                    setups,
                    presentSetup,
                    changes,
                    standard,
                    days,
                    money,
                    notes,
                    stated,
                    judgement,
                    pictures);
        }
    }
}
