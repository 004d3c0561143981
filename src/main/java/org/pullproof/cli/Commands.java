package org.pullproof.cli;

import java.io.PrintWriter;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.pullproof.app.Toolbox;
import org.pullproof.app.Window;
import org.pullproof.files.ProgramVersion;
import picocli.CommandLine;

/** Puts the commands together and runs one. */
public final class Commands {
    private final Toolbox tools;
    private final Optional<Window> window;
    private final Clock clock;

    /**
     * @param window empty where there is no display
     * @param clock tells when a thing was done that has no time of its own
     */
    public Commands(Toolbox tools, Optional<Window> window, Clock clock) {
        this.tools = tools;
        this.window = window;
        this.clock = clock;
    }

    /**
     * Runs one command line.
     *
     * @return the exit status: 0 done, 1 something in the input is wrong, 2 wrong usage
     */
    public int run(PrintWriter out, PrintWriter err, String... arguments) {
        return commandLine(arguments).setOut(out).setErr(err).execute(arguments);
    }

    private CommandLine commandLine(String... arguments) {
        OpenCommand open = new OpenCommand(tools, window);
        CommandLine root = new CommandLine(new RootCommand(open)).addSubcommand(open);
        needed(arguments).forEach(root::addSubcommand);
        everywhere(root);
        root.getSubcommands().values().forEach(Commands::everywhere);
        root.setExecutionExceptionHandler(new Failures());
        root.setParameterExceptionHandler(new WrongUsage());
        root.setCaseInsensitiveEnumValuesAllowed(false);
        return root;
    }

    /** Only the command that is named, since putting all together takes longer than most of them; all for help and for a name mistyped. */
    private List<Object> needed(String... arguments) {
        if (arguments.length == 0 || arguments[0].equals("open")) {
            return List.of();
        }
        List<Object> all = subcommands();
        List<Object> named =
                all.stream().filter(command -> isNamed(command, arguments[0])).toList();
        return named.isEmpty() ? all : named;
    }

    private static boolean isNamed(Object command, String name) {
        return command.getClass()
                .getAnnotation(CommandLine.Command.class)
                .name()
                .equals(name);
    }

    /** Every command but {@code open}, in the order of the job: the order of the help. */
    private List<Object> subcommands() {
        return List.of(
                new NewCommand(tools),
                new SetCommand(tools),
                new JudgementCommand(tools),
                new ProfilesCommand(tools),
                new TdcCommand(tools),
                new AddReadingsCommand(tools),
                new HealthCommand(tools),
                new LeakdownCommand(tools),
                new TallyCommand(tools),
                new WeatherCommand(tools, clock),
                new DayCommand(tools, clock),
                new AddPullsCommand(tools),
                new PullsCommand(tools),
                new DrumCommand(tools),
                new CoastDownCommand(tools),
                new StepsCommand(tools, clock),
                new PartsCommand(tools, clock),
                new SettingsCommand(tools, clock),
                new WorkCommand(tools, clock),
                new PictureCommand(tools, clock),
                new ChangeCommand(tools, clock),
                new PlanCommand(tools),
                new ChangesCommand(tools),
                new WorthCommand(tools, clock),
                new NextCommand(tools),
                new ReportCommand(tools),
                new VersionsCommand(tools),
                new ShareCommand(tools),
                new CheckCommand(tools));
    }

    private static void everywhere(CommandLine command) {
        command.getCommandSpec().mixinStandardHelpOptions(true).version("Pullproof " + ProgramVersion.text());
    }
}
