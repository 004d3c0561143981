package org.pullproof.session;

import java.util.List;
import java.util.Optional;
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
        return new Session(
                next,
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

    public Session withProfile(EngineProfile next) {
        return new Session(
                car,
                next,
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

    public Session withReadings(List<Reading> next) {
        return new Session(
                car,
                profile,
                next,
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

    public Session withTuneUp(TuneUp next) {
        return new Session(
                car,
                profile,
                readings,
                next,
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

    public Session withSetups(List<Setup> next, String present, List<Change> steps) {
        return new Session(
                car, profile, readings, tuneUp, next, present, steps, standard, days, money, notes, stated, judgement,
                pictures);
    }

    public Session withStandard(Standard next) {
        return new Session(
                car,
                profile,
                readings,
                tuneUp,
                setups,
                presentSetup,
                changes,
                next,
                days,
                money,
                notes,
                stated,
                judgement,
                pictures);
    }

    public Session withDays(List<DynoDay> next) {
        return new Session(
                car,
                profile,
                readings,
                tuneUp,
                setups,
                presentSetup,
                changes,
                standard,
                next,
                money,
                notes,
                stated,
                judgement,
                pictures);
    }

    public Session withMoney(MoneyBook next) {
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
                next,
                notes,
                stated,
                judgement,
                pictures);
    }

    public Session withNotes(List<Note> next) {
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
                next,
                stated,
                judgement,
                pictures);
    }

    public Session withStated(Optional<StatedFigure> next) {
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
                next,
                judgement,
                pictures);
    }

    public Session withPictures(List<Picture> next) {
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
                next);
    }

    /** The pictures of one thing, in the order they were attached. */
    public List<Picture> pictures(About about) {
        return pictures.stream()
                .filter(picture -> picture.about().equals(about))
                .toList();
    }

    public Session withJudgement(Judgement next) {
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
                next,
                pictures);
    }
}
