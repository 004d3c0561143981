package org.pullproof.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.pullproof.app.Toolbox;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells facts about the car and wishes of its owner. */
@Command(
        name = "set",
        description = "Tells facts and wishes that no reading tells: all of them or, if one is wrong, none.",
        footer = {
            "",
            "Names: access (look-only, start-it, plugs-out, drive-it, own-it), runs (yes,",
            "dies, no), elevation, price, least-price, odometer, fuel, gear, identity,",
            "seller-says, standard (sae-j1349, sae-j607, iso-1585, din-70020, none),",
            "band (2600-5000rpm), smallest-difference (1%%), compression-rule (75-percent,",
            "70-percent, 20-below-average, 10-percent, 10-psi), worth-sound, value-per-hp,",
            "hour-price, months, budget, week-without, hard-pulls (yes, no), spent.",
            "seller-figure (a power of another dyno's sheet, as far as the sheet says it:",
            "\"248hp sae-j607 wheels 98.2kPa 30C 40%%; March\").",
            "\"NAME=\" forgets a value. Money is typed with its currency: 1400USD.",
            "",
            "Example: pullproof set grey-coupe access=own-it runs=yes elevation=800ft"
        })
final class SetCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Parameters(index = "0", paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "NAME=VALUE", description = "What to tell.")
    private List<String> assignments;

    @Mixin
    private Output output;

    @Spec
    private CommandSpec spec;

    SetCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        Map<String, String> values = Assignments.of(assignments, spec.commandLine(), "runs=yes");
        tools.setFacts().set(tools.desk().open(session), values);
        if (output.json()) {
            output.print(new Json().put("set", List.copyOf(values.keySet())));
        } else {
            values.forEach((name, text) -> output.print(text.isBlank() ? "forgot " + name : name + " = " + text));
        }
        return Output.DONE;
    }
}
