package org.pullproof.cli;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.pullproof.app.AmendChange.Amendment;
import org.pullproof.changes.RotatingPart;
import org.pullproof.units.Money;
import picocli.CommandLine.Option;

/** What is told of a change of setup: what was done, what it cost, which rotating parts it touched. */
final class StepOptions {
    @Option(names = "--what", paramLabel = "TEXT", description = "What was done, in words.")
    private Optional<String> what = Optional.empty();

    @Option(
            names = "--cost",
            paramLabel = "MONEY",
            converter = Arguments.MoneyArgument.class,
            description = "What the change cost, such as 18USD.")
    private Optional<Money> cost = Optional.empty();

    @Option(
            names = "--touches",
            paramLabel = "PART",
            converter = Arguments.RotatingPartArgument.class,
            description = "A rotating part that the change touched: flywheel, clutch, driveline, gear, wheels or"
                    + " tyres; repeatable. Pulls before and after it are then not compared.")
    private List<RotatingPart> touches = List.of();

    Amendment amendment() {
        return new Amendment(
                what,
                cost.isPresent() ? Optional.of(cost) : Optional.empty(),
                touches.isEmpty() ? Optional.empty() : Optional.of(new LinkedHashSet<>(touches)));
    }
}
