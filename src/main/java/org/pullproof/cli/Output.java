package org.pullproof.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.pullproof.app.Toolbox;
import org.pullproof.files.PreferenceFile;
import org.pullproof.report.Paper;
import org.pullproof.session.Problem;
import org.pullproof.units.Figures;
import org.pullproof.units.Inert;
import org.pullproof.units.UnitSystem;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The two options every answering command has, and the ways to print what they ask for. */
public final class Output {
    /** Exit status: what was asked for is done. */
    public static final int DONE = 0;

    /** Exit status: the input was read and something in it is wrong. */
    public static final int WRONG_INPUT = 1;

    /** The spelling on the command line: {@code us} or {@code metric}. */
    enum Units {
        us,
        metric
    }

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--json",
            description = "Print one JSON object, numbers in SI with the unit in the key, and nothing else.")
    private boolean json;

    @Option(
            names = "--units",
            paramLabel = "us|metric",
            description = "Units of the tables for people; without it the ones chosen in the window, at first US.")
    private Optional<Units> units = Optional.empty();

    public boolean json() {
        return json;
    }

    /** How figures are written: as the command line says, else as the user prefers. */
    public Figures figures(Toolbox tools) {
        return new Figures(units.map(Output::system).orElseGet(() -> preferred(tools)));
    }

    /** What something is printed on: as the command line says, else as the user prefers, else what goes with the units. */
    Paper paper(Toolbox tools, Optional<Paper> said) {
        return said.or(() -> liked(tools))
                .orElseGet(() -> Paper.usualFor(figures(tools).system()));
    }

    private static Optional<Paper> liked(Toolbox tools) {
        return tools.preferences().read().preferences().paper().flatMap(Paper::named);
    }

    private UnitSystem preferred(Toolbox tools) {
        PreferenceFile.Found found = tools.preferences().read();
        found.problem().ifPresent(problem -> complain(List.of(problem)));
        return found.preferences().units();
    }

    private static UnitSystem system(Units units) {
        return units == Units.us ? UnitSystem.US : UnitSystem.METRIC;
    }

    public void print(String words) {
        out().println(Inert.lines(words));
    }

    public void print(List<String> lines) {
        lines.forEach(this::print);
    }

    public void print(Table table) {
        print(table.lines());
    }

    public void print(Json object) {
        out().println(object);
    }

    /** Tells problems on standard error, one line each. */
    public void complain(List<Problem> problems) {
        problems.forEach(problem -> err().println(problem));
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
