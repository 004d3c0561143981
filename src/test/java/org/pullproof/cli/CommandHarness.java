package org.pullproof.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;
import org.pullproof.app.Toolbox;
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

    /** With the tools of the program. */
    public CommandHarness() {
        this(Tools.ofTheProgram());
    }

    public CommandHarness(Toolbox tools) {
        this.tools = tools;
    }

    public Outcome run(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] texts = Arrays.stream(arguments).map(String::valueOf).toArray(String[]::new);
        int status = new Commands(tools).run(new PrintWriter(out, true), new PrintWriter(err, true), texts);
        return new Outcome(status, out.toString(), err.toString());
    }
}
