package org.pullproof.testing;

import java.nio.file.Path;
import org.pullproof.Main;
import org.pullproof.app.Toolbox;
import org.pullproof.engine.EngineProfile;
import org.pullproof.files.BadFileException;

/** The tools of the program, built as the program builds them. */
public final class Tools {
    private Tools() {}

    public static Toolbox ofTheProgram() {
        return Main.tools(Path.of("."));
    }

    /** A profile that comes with the program. */
    public static EngineProfile profile(String id) {
        try {
            return ofTheProgram().profiles().find(id);
        } catch (BadFileException bad) {
            throw new AssertionError(bad);
        }
    }
}
