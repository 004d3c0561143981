package org.pullproof.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.pullproof.files.Preferences.KnownTable;
import org.pullproof.session.Problem;
import org.pullproof.units.UnitSystem;

/**
 * The preferences in the user's own configuration folder. A damaged file never stops the program: it is set aside, said, and the
 * program goes on as at first.
 */
public final class PreferenceFile {
    /** Overrides the folder, for tests and for a program on a stick. */
    private static final String OVERRIDE = "pullproof.config";

    private static final int FORMAT = 1;
    private static final String NAME = "preferences.json";

    private final Path folder;

    public PreferenceFile(Path folder) {
        this.folder = folder;
    }

    /**
     * The preferences found.
     *
     * @param preferences as written, or as at first
     * @param problem what was wrong, and where the damaged file is now
     */
    public record Found(Preferences preferences, Optional<Problem> problem) {}

    /** Where preferences lie on this computer: the folder the system gives to programs, or the property {@code pullproof.config}. */
    public static Path folder(Properties properties, Map<String, String> environment) {
        String home = properties.getProperty("user.home", ".");
        String chosen = properties.getProperty(OVERRIDE, "");
        if (!chosen.isEmpty()) {
            return Path.of(chosen);
        }
        boolean windows = properties.getProperty("os.name", "").startsWith("Windows");
        String base = environment.getOrDefault(windows ? "APPDATA" : "XDG_CONFIG_HOME", "");
        return (base.isEmpty() ? Path.of(home, ".config") : Path.of(base)).resolve("pullproof");
    }

    private Path file() {
        return folder.resolve(NAME);
    }

    public Found read() {
        if (!Files.exists(file())) {
            return new Found(Preferences.atFirst(), Optional.empty());
        }
        try {
            return new Found(read(JsonPlace.parse(file().toString(), BoundedFile.read(file(), 1))), Optional.empty());
        } catch (BadFileException bad) {
            return setAside(bad.problems().get(0));
        }
    }

    private Found setAside(Problem damage) {
        Path aside = folder.resolve("preferences.damaged.json");
        String where;
        try {
            Files.move(file(), aside, StandardCopyOption.REPLACE_EXISTING);
            where = " The preferences begin anew; the damaged file is now " + aside + ".";
        } catch (IOException failure) {
            where = " The preferences begin anew.";
        }
        Problem told = new Problem(damage.file(), damage.place(), damage.message() + where);
        return new Found(Preferences.atFirst(), Optional.of(told));
    }

    /**
     * @throws BadFileException if they could not be written; the old ones are then as they were
     */
    public void write(Preferences preferences) throws BadFileException {
        try {
            Flushed.makeFolder(folder);
            new WholeFile().write(file(), JsonText.of(json(preferences)));
        } catch (IOException failure) {
            throw new BadFileException(
                    file().toString(), "", Reason.of(failure) + "; the preferences could not be written.");
        }
    }

    private static Preferences read(JsonPlace place) throws BadFileException {
        DocumentFormat.require(place, FORMAT);
        place.onlyKeys("format", "units", "night", "recent", "window", "sheet", "hints-shut", "tables", "paper");
        UnitSystem units = place.at("units").oneOf(UnitSystem.class);
        boolean night = place.at("night").flag();
        List<Path> recent = place.each("recent", PreferenceFile::path);
        Optional<Preferences.WindowPlace> window = place.maybe("window", PreferenceFile::window);
        Optional<String> sheet = place.maybe("sheet", JsonPlace::text);
        boolean hintsShut = place.maybe("hints-shut", JsonPlace::flag).orElse(false);
        List<KnownTable> tables = place.each("tables", PreferenceFile::table);
        Optional<String> paper = place.maybe("paper", JsonPlace::text);
        return new Preferences(units, night, recent, window, sheet, hintsShut, tables, paper);
    }

    private static KnownTable table(JsonPlace place) throws BadFileException {
        place.onlyKeys("headers", "columns");
        return new KnownTable(place.at("headers").text(), place.each("columns", DynoJson::column));
    }

    private static Map<String, Object> json(KnownTable table) {
        return new JsonObject()
                .put("headers", table.shape())
                .put("columns", table.columns().stream().map(DynoJson::write).toList())
                .entries();
    }

    private static Path path(JsonPlace place) throws BadFileException {
        String text = place.text();
        return place.checked(() -> Path.of(text));
    }

    private static Preferences.WindowPlace window(JsonPlace place) throws BadFileException {
        place.onlyKeys("x", "y", "width", "height", "maximised");
        int x = place.at("x").whole();
        int y = place.at("y").whole();
        int width = place.at("width").whole();
        int height = place.at("height").whole();
        boolean maximised = place.at("maximised").flag();
        return place.checked(() -> new Preferences.WindowPlace(x, y, width, height, maximised));
    }

    private static Map<String, Object> json(Preferences preferences) {
        JsonObject object = new JsonObject()
                .put("format", FORMAT)
                .key("units", preferences.units())
                .put("night", preferences.night())
                .put("recent", preferences.recent().stream().map(Path::toString).toList())
                .put("hints-shut", preferences.hintsShut())
                .unlessEmpty(
                        "tables",
                        preferences.tables().stream().map(PreferenceFile::json).toList());
        preferences.window().ifPresent(window -> object.put("window", json(window)));
        preferences.sheet().ifPresent(sheet -> object.put("sheet", sheet));
        preferences.paper().ifPresent(paper -> object.put("paper", paper));
        return object.entries();
    }

    private static Map<String, Object> json(Preferences.WindowPlace window) {
        return new JsonObject()
                .put("x", window.x())
                .put("y", window.y())
                .put("width", window.width())
                .put("height", window.height())
                .put("maximised", window.maximised())
                .entries();
    }
}
