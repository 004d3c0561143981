package org.pullproof.cli;

import java.util.Optional;
import org.pullproof.dyno.Drum;
import org.pullproof.units.Quantity;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The drum as typed on the command line. */
final class DrumTyped {
    @Option(
            names = "--inertia",
            paramLabel = "I",
            converter = Arguments.InertiaArgument.class,
            description =
                    "Moment of inertia of the roll and all that turns with it, such as 34kgm2: power then follows from"
                            + " the roll's speed against time.")
    private Optional<Quantity> inertia = Optional.empty();

    @Option(
            names = "--inertia-within",
            paramLabel = "PERCENT",
            converter = Arguments.ShareArgument.class,
            description = "How well the inertia is known; without it, half of its last digit.")
    private Optional<Quantity> within = Optional.empty();

    @Option(
            names = "--roll-radius",
            paramLabel = "L",
            converter = Arguments.LengthArgument.class,
            description = "Radius of the roll, where its speed is that of its surface, in km/h or mph.")
    private Optional<Quantity> radius = Optional.empty();

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    /**
     * The drum, if one was told.
     *
     * @throws IllegalArgumentException with a sentence if no roll is like that
     */
    Optional<Drum> drum() {
        if (inertia.isEmpty() && (within.isPresent() || radius.isPresent())) {
            throw new ParameterException(
                    spec.commandLine(), "What is told of the roll needs its --inertia, such as --inertia 34kgm2.");
        }
        return inertia.map(known -> new Drum(known, within, radius));
    }
}
