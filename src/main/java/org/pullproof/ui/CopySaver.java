package org.pullproof.ui;

import java.nio.file.Files;
import java.nio.file.Path;
import org.pullproof.app.OpenSession;
import org.pullproof.app.SessionDesk;
import org.pullproof.session.Problem;
import org.pullproof.ui.shell.SessionViewModel;

/** Saves the open session in a new folder and goes on there: the way out when the old folder is gone, full or changed. */
record CopySaver(SessionDesk desk) {
    /**
     * Saves in a new folder inside the chosen one; what came of it is said at the foot.
     *
     * @param chosen the folder in which the copy's own folder is made
     */
    void into(SessionViewModel model, Path chosen) {
        model.act(open -> desk.copyTo(open, free(chosen, open)), model::say, copy -> model.say(words(copy)));
    }

    private static String words(OpenSession copy) {
        String first = "You work on the copy now: " + copy.folder() + ".";
        return copy.problems().stream()
                .findFirst()
                .map(Problem::toString)
                .map(left -> first + " " + left)
                .orElse(first);
    }

    /** A name no file has yet: {@code grey-coupe-copy}, {@code grey-coupe-copy-2}. */
    static Path free(Path chosen, OpenSession open) {
        String name = open.folder().toAbsolutePath().normalize().getFileName() + "-copy";
        Path free = chosen.resolve(name);
        for (int number = 2; Files.exists(free); number++) {
            free = chosen.resolve(name + "-" + number);
        }
        return free;
    }
}
