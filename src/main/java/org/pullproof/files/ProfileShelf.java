package org.pullproof.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pullproof.engine.EngineProfile;
import org.pullproof.session.Problem;

/** The engine profiles that come with the program: one JSON file each, editable by people. */
public final class ProfileShelf {
    private static final String ENDING = ".json";

    private final Path folder;

    public ProfileShelf(Path folder) {
        this.folder = folder;
    }

    /**
     * Every profile in order of id.
     *
     * @throws BadFileException with the problems of all files, if any has one
     */
    public List<EngineProfile> all() throws BadFileException {
        List<EngineProfile> profiles = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (Path file : files()) {
            try {
                profiles.add(ofTheShelf(file));
            } catch (BadFileException bad) {
                problems.addAll(bad.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new BadFileException(problems);
        }
        return List.copyOf(profiles);
    }

    /**
     * Finds a profile of the program by its id, or reads a profile file of one's own.
     *
     * @throws BadFileException if there is neither, or something in the file is wrong
     */
    public EngineProfile find(String idOrFile) throws BadFileException {
        if (idOrFile.matches("[a-z0-9-]+") && Files.isRegularFile(folder.resolve(idOrFile + ENDING))) {
            return ofTheShelf(folder.resolve(idOrFile + ENDING));
        }
        if (isFile(idOrFile)) {
            return read(Path.of(idOrFile));
        }
        throw new BadFileException(
                idOrFile,
                "",
                "this is neither a profile of the program nor a profile file; the profiles are " + ids() + ".");
    }

    private static boolean isFile(String name) {
        try {
            return Files.isRegularFile(Path.of(name));
        } catch (InvalidPathException noPath) {
            return false;
        }
    }

    private String ids() throws BadFileException {
        return files().stream().map(ProfileShelf::idOf).collect(Collectors.joining(", "));
    }

    private List<Path> files() throws BadFileException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING))
                    .filter(file -> !file.toString().endsWith(".schema.json"))
                    .sorted()
                    .toList();
        } catch (IOException failure) {
            throw new BadFileException(folder.toString(), "", "the profiles are not here: " + Reason.of(failure) + ".");
        }
    }

    private static String idOf(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.substring(0, name.length() - ENDING.length());
    }

    private static EngineProfile ofTheShelf(Path file) throws BadFileException {
        EngineProfile profile = read(file);
        if (!profile.id().equals(idOf(file))) {
            throw new BadFileException(
                    file.toString(),
                    "id",
                    "the id is the file's name without ending: \"" + idOf(file) + "\", was \"" + profile.id() + "\".");
        }
        return profile;
    }

    private static EngineProfile read(Path file) throws BadFileException {
        return ProfileJson.read(JsonPlace.parse(file.toString(), BoundedFile.read(file, 1)));
    }
}
