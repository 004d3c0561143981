package org.pullproof.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Optional;
import org.pullproof.app.Toolbox;
import org.pullproof.app.Window;
import org.pullproof.testing.Tools;

/** Runs one command line inside the test and keeps what it printed. */
public final class CommandHarness {
    /**
     * What a command left behind.
     *
     * @param status exit status
     * @param out standard output
     * @param err standard error
     */
    public record Outcome(int status, String out, String err) {}

    private final Toolbox tools;
    private final Optional<Window> window;

    /** With the tools of the program. */
    public CommandHarness() {
        this(Tools.ofTheProgram());
    }

    /** Without a display. */
    public CommandHarness(Toolbox tools) {
        this(tools, Optional.empty());
    }

    public CommandHarness(Toolbox tools, Optional<Window> window) {
        this.tools = tools;
        this.window = window;
    }

    public Outcome run(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] texts = Arrays.stream(arguments).map(String::valueOf).toArray(String[]::new);
        int status = new Commands(tools, window, Clock.system(ZoneId.systemDefault()))
                .run(new PrintWriter(out, true), new PrintWriter(err, true), texts);
        return new Outcome(status, out.toString(), err.toString());
    }
}
