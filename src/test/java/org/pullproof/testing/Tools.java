package org.pullproof.testing;

import java.nio.file.Path;
import org.pullproof.Main;
import org.pullproof.advice.Cautions;
import org.pullproof.app.Toolbox;
import org.pullproof.engine.EngineProfile;
import org.pullproof.files.BadFileException;
import org.pullproof.files.TradeFiles;

/** The tools of the program, built as the program builds them. */
public final class Tools {
    private Tools() {}

    /** With the preferences of a first start, which nothing may write. */
    public static Toolbox ofTheProgram() {
        return with(Path.of("target", "no-preferences"));
    }

    /** With preferences and copies of demos in a folder of the test. */
    public static Toolbox with(Path config) {
        return Main.tools(Path.of("."), config, config.resolve("sessions"));
    }

    /** The cautions that come with the program. */
    public static Cautions cautions() {
        TradeFiles trade = new TradeFiles();
        return new Cautions(trade.cautions(), trade.lastCaution());
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
