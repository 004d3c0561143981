package org.pullproof.files;

import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.pullproof.car.Car;
import org.pullproof.car.Fact;
import org.pullproof.changes.Change;
import org.pullproof.changes.RotatingPart;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.StatedFigure;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Setup;
import org.pullproof.health.Reading;
import org.pullproof.session.Judgement;
import org.pullproof.session.Note;
import org.pullproof.session.Picture;
import org.pullproof.session.Problem;
import org.pullproof.session.Session;
import org.pullproof.tuneup.TuneUp;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import org.pullproof.weather.Standard;
import org.pullproof.worth.MoneyBook;

/** The whole document as {@code session.json}; the schema lies in {@code docs/formats}. */
final class SessionJson {
    private SessionJson() {}

    /** Reads a session of this format or an older one. */
    static Session read(JsonPlace file) throws BadFileException {
        JsonPlace place = SessionUpgrade.upgraded(file);
        place.onlyKeys(
                "format",
                "writtenBy",
                "car",
                "profile",
                "readings",
                "tuneUp",
                "setups",
                "presentSetup",
                "changes",
                "standard",
                "days",
                "money",
                "notes",
                "stated",
                "judgement",
                "pictures");
        Car car = place.need("car", SessionJson::car);
        EngineProfile profile = place.need("profile", ProfileJson::read);
        List<Reading> readings = place.each("readings", ReadingJson::read);
        TuneUp tuneUp = place.need("tuneUp", TuneUpJson::read);
        List<Setup> setups = place.at("setups").list(SessionJson::setup);
        String present = place.at("presentSetup").text();
        List<Change> changes = place.each("changes", SessionJson::change);
        Standard standard = place.at("standard").oneOf(Standard.class);
        List<DynoDay> days = place.each("days", DynoJson::readDay);
        MoneyBook money = place.need("money", MoneyJson::read);
        List<Note> notes = place.each("notes", SessionJson::note);
        Optional<StatedFigure> stated = place.maybe("stated", DynoJson::readStated);
        List<Picture> pictures = place.each("pictures", PictureJson::read);
        Judgement judgement = judgement(place);
        return place.at("presentSetup")
                .checked(() -> new Session(
                        car, profile, readings, tuneUp, setups, present, changes, standard, days, money, notes, stated,
                        judgement, pictures));
    }

    private static Judgement judgement(JsonPlace place) throws BadFileException {
        Judgement edited = new Judgement(new TreeMap<>(place.entries("judgement", JsonPlace::number)));
        List<Problem> problems = edited.isOwn() ? List.of() : new TradeConstants().problems(edited);
        if (!problems.isEmpty()) {
            throw new BadFileException(problems);
        }
        return edited;
    }

    private static Car car(JsonPlace place) throws BadFileException {
        place.onlyKeys("name", "facts");
        Map<Fact, String> facts = new EnumMap<>(Fact.class);
        for (Map.Entry<String, JsonPlace> told :
                place.entries("facts", at -> at).entrySet()) {
            JsonPlace at = told.getValue();
            Fact fact = Fact.named(told.getKey()).orElseThrow(() -> at.problem("this is no fact known here."));
            String text = at.text();
            at.checked(() -> Car.named("car").with(fact, text));
            facts.put(fact, text);
        }
        String name = place.at("name").text();
        return place.checked(() -> new Car(name, facts));
    }

    private static Setup setup(JsonPlace place) throws BadFileException {
        place.onlyKeys("id", "name", "levels", "note");
        String id = place.at("id").text();
        String name = place.at("name").text();
        Map<String, Quantity> levels = place.entries("levels", JsonPlace::quantity);
        String note = place.maybe("note", JsonPlace::text).orElse("");
        return place.checked(() -> new Setup(id, name, levels, note));
    }

    private static Change change(JsonPlace place) throws BadFileException {
        place.onlyKeys("from", "to", "what", "time", "cost", "rotating");
        String from = place.at("from").text();
        String to = place.at("to").text();
        String what = place.at("what").text();
        LocalDateTime time = place.at("time").time();
        Optional<Money> cost = place.maybe("cost", JsonPlace::money);
        Set<RotatingPart> rotating = Set.copyOf(place.each("rotating", SessionJson::rotating));
        return place.checked(() -> new Change(from, to, what, time, cost, rotating));
    }

    private static RotatingPart rotating(JsonPlace place) throws BadFileException {
        String key = place.text();
        return RotatingPart.named(key)
                .orElseThrow(() -> place.problem("\"" + key + "\" is no rotating part; known are "
                        + String.join(", ", RotatingPart.keys()) + "."));
    }

    private static Note note(JsonPlace place) throws BadFileException {
        place.onlyKeys("time", "words");
        return new Note(place.at("time").time(), place.at("words").text());
    }

    static Map<String, Object> write(Session session, String writtenBy) {
        JsonObject written = new JsonObject()
                .put("format", SessionUpgrade.FORMAT)
                .put("writtenBy", writtenBy)
                .put("car", write(session.car()))
                .put("profile", ProfileJson.write(session.profile()))
                .put(
                        "readings",
                        session.readings().stream().map(ReadingJson::write).toList())
                .put("tuneUp", TuneUpJson.write(session.tuneUp()))
                .put("setups", session.setups().stream().map(SessionJson::write).toList())
                .put("presentSetup", session.presentSetup())
                .put(
                        "changes",
                        session.changes().stream().map(SessionJson::write).toList())
                .key("standard", session.standard())
                .put("days", session.days().stream().map(DynoJson::write).toList())
                .put("money", MoneyJson.write(session.money()))
                .put("notes", session.notes().stream().map(SessionJson::write).toList());
        if (!session.judgement().isOwn()) {
            written.put("judgement", session.judgement().edited());
        }
        session.stated().map(DynoJson::write).ifPresent(stated -> written.put("stated", stated));
        written.unlessEmpty(
                "pictures", session.pictures().stream().map(PictureJson::write).toList());
        return written.entries();
    }

    private static Map<String, Object> write(Car car) {
        JsonObject facts = new JsonObject();
        car.facts().forEach((fact, text) -> facts.put(fact.key(), text));
        return new JsonObject()
                .put("name", car.name())
                .put("facts", facts.entries())
                .entries();
    }

    private static Map<String, Object> write(Setup setup) {
        JsonObject levels = new JsonObject();
        new TreeMap<>(setup.levels()).forEach(levels::text);
        return new JsonObject()
                .put("id", setup.id())
                .put("name", setup.name())
                .put("levels", levels.entries())
                .unlessEmpty("note", setup.note())
                .entries();
    }

    private static Map<String, Object> write(Change change) {
        return new JsonObject()
                .put("from", change.from())
                .put("to", change.to())
                .put("what", change.what())
                .text("time", change.time())
                .text("cost", change.cost())
                .unlessEmpty(
                        "rotating",
                        change.rotating().stream().map(RotatingPart::key).toList())
                .entries();
    }

    private static Map<String, Object> write(Note note) {
        return new JsonObject()
                .text("time", note.time())
                .put("words", note.words())
                .entries();
    }
}
