package org.pullproof.start;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.pullproof.Main;
import org.pullproof.app.Toolbox;
import org.pullproof.cli.Commands;

/** Runs, one after another in one Java, the commands that read, judge, print and write with every library there is. */
final class Errands {
    private Errands() {}

    /**
     * @param arguments the folder of profiles and demos, an empty folder to write in
     */
    public static void main(String[] arguments) {
        Path home = Path.of(arguments[0]);
        Path work = Path.of(arguments[1]);
        Toolbox tools = Main.tools(home, work.resolve("config"), work.resolve("sessions"));
        String demo = home.resolve("demo-sessions/grey-coupe").toString();
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        List<String[]> errands = List.of(
                new String[] {"profiles"},
                new String[] {"health", demo, "--json"},
                new String[] {"changes", demo},
                new String[] {"worth", demo},
                new String[] {
                    "report",
                    demo,
                    "--format",
                    "html",
                    "-o",
                    work.resolve("report.html").toString()
                },
                new String[] {
                    "report",
                    demo,
                    "--format",
                    "pdf",
                    "-o",
                    work.resolve("report.pdf").toString()
                },
                new String[] {
                    "tally",
                    demo,
                    "--test",
                    "compression",
                    "-o",
                    work.resolve("tally.pdf").toString()
                },
                new String[] {"share", demo, "-o", work.resolve("shared.zip").toString()});
        int worst = errands.stream()
                .mapToInt(errand -> new Commands(tools, Optional.empty(), Clock.system(ZoneId.systemDefault()))
                        .run(out, err, errand))
                .max()
                .orElse(0);
        System.exit(worst);
    }
}
