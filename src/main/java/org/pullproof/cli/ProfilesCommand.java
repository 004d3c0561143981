package org.pullproof.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.pullproof.app.Toolbox;
import org.pullproof.engine.Bank;
import org.pullproof.engine.Crossfire;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Geometry;
import org.pullproof.engine.PlugSpec;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Lists the engine profiles, or shows one. */
@Command(
        name = "profiles",
        description = "Lists the engine profiles, or shows one: banks, firing order, wires to keep apart, measures.",
        footer = {"", "Example: pullproof profiles v8-distributor-order-a"})
final class ProfilesCommand implements Callable<Integer> {
    private final Toolbox tools;

    @Parameters(arity = "0..1", paramLabel = "ID", description = "A profile's id, or a profile file of your own.")
    private Optional<String> id = Optional.empty();

    @Mixin
    private Output output;

    ProfilesCommand(Toolbox tools) {
        this.tools = tools;
    }

    @Override
    public Integer call() throws Exception {
        if (id.isPresent()) {
            show(tools.profiles().find(id.get()));
        } else {
            list(tools.profiles().all());
        }
        return Output.DONE;
    }

    private void list(List<EngineProfile> profiles) {
        if (output.json()) {
            output.print(new Json()
                    .put(
                            "profiles",
                            profiles.stream()
                                    .map(profile ->
                                            new Json().put("id", profile.id()).put("name", profile.name()))
                                    .toList()));
            return;
        }
        Table table = new Table().words("id").words("engine");
        profiles.forEach(profile -> table.row(profile.id(), profile.name()));
        output.print(table);
    }

    private void show(EngineProfile profile) {
        if (output.json()) {
            output.print(json(profile));
        } else {
            output.print(words(profile, output.figures(tools)));
        }
    }

    private static Json json(EngineProfile profile) {
        return new Json()
                .put("id", profile.id())
                .put("name", profile.name())
                .put("cylinders", profile.cylinders())
                .put("firingOrder", profile.firing().cylinders())
                .put("intervalsDegrees", profile.firing().intervals())
                .put(
                        "banks",
                        profile.banks().stream()
                                .map(bank -> new Json().put("name", bank.name()).put("cylinders", bank.cylinders()))
                                .toList())
                .put(
                        "crossfirePairs",
                        Crossfire.pairs(profile).stream()
                                .map(pair -> new Json()
                                        .put("cylinders", List.of(pair.first(), pair.second()))
                                        .put("adjacent", pair.adjacent()))
                                .toList())
                .put("displacementLitre", profile.displacement() * 1e3)
                .put("boreMm", profile.geometry().boreMetre() * 1e3)
                .put("strokeMm", profile.geometry().strokeMetre() * 1e3)
                .put("rodMm", profile.geometry().rodMetre() * 1e3)
                .put("compressionRatio", profile.geometry().compressionRatio())
                .put("sources", profile.sources());
    }

    private static List<String> words(EngineProfile profile, Figures figures) {
        Table table = new Table().words(profile.id()).words(profile.name());
        profile.banks().forEach(bank -> table.row("bank " + bank.name(), bank(bank)));
        table.row(
                "fires",
                dashed(profile.firing().cylinders()) + ", after "
                        + profile.firing().intervals().stream()
                                .map(degrees -> degrees + "°")
                                .collect(Collectors.joining(" ")));
        table.row("wires apart", pairs(profile));
        table.row("displacement", figures.of(profile.displacement(), Shown.DISPLACEMENT));
        table.row("bore, stroke, rod", measures(profile.geometry(), figures));
        table.row("compression ratio", Figures.number(profile.geometry().compressionRatio(), 1) + " : 1");
        table.row("plugs", plugs(profile.plugs(), figures));
        table.row(
                "ignition, fuel",
                profile.ignition().words() + ", " + profile.fuel().words());
        profile.sources().forEach(source -> table.row("source", source));
        return table.lines();
    }

    private static String bank(Bank bank) {
        return dashed(bank.cylinders()) + ", front to rear";
    }

    private static String pairs(EngineProfile profile) {
        String pairs = Crossfire.pairs(profile).stream()
                .map(pair -> pair.first() + " and " + pair.second() + (pair.adjacent() ? " (side by side: first)" : ""))
                .collect(Collectors.joining(", "));
        return pairs.isEmpty() ? "none fire in succession on one bank" : pairs;
    }

    private static String measures(Geometry geometry, Figures figures) {
        return figures.bare(geometry.boreMetre(), Shown.BORE) + ", " + figures.bare(geometry.strokeMetre(), Shown.BORE)
                + ", " + figures.of(geometry.rodMetre(), Shown.BORE) + (geometry.assumed() ? ", assumed" : "");
    }

    private static String plugs(PlugSpec plugs, Figures figures) {
        return "gap " + range(plugs.gapFrom(), plugs.gapTo(), Shown.GAP, figures) + ", torque "
                + range(plugs.torqueFrom(), plugs.torqueTo(), Shown.TORQUE, figures) + ", " + plugs.seat();
    }

    private static String range(Quantity from, Quantity to, Shown use, Figures figures) {
        return figures.bare(from.si(), use) + " to " + figures.of(to.si(), use);
    }

    private static String dashed(List<Integer> cylinders) {
        return cylinders.stream().map(String::valueOf).collect(Collectors.joining("-"));
    }
}
