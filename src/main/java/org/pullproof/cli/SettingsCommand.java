package org.pullproof.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.tuneup.BaseSettings;
import org.pullproof.tuneup.CurvePoint;
import org.pullproof.tuneup.Setting;
import org.pullproof.tuneup.VacuumSource;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** How the engine is set after the tune-up. */
@Command(
        name = "settings",
        description = "Keeps how the engine is set, tells what the pieces of the timing add up to, and saves a setup.",
        footer = {
            "",
            "Names: base-timing, mechanical-advance, pull-rpm, canister-advance, canister-starts,",
            "canister-ends, canister-holds, dwell, point-gap, idle, float-level, fuel-pressure,",
            "throttle. \"NAME=\" forgets a value.",
            "",
            "Example: pullproof settings grey-coupe base-timing=10deg mechanical-advance=22deg",
            "         pull-rpm=3500rpm throttle=99%% --save-as \"as tuned\""
        })
final class SettingsCommand implements Callable<Integer> {
    private final Toolbox tools;
    private final Clock clock;

    @Parameters(index = "0", paramLabel = "SESSION", description = "The session's folder.")
    private Path session;

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "NAME=VALUE", description = "A setting with its unit.")
    private Map<String, String> values = Map.of();

    @Option(
            names = "--curve",
            paramLabel = "RPM=DEGREES,…",
            description = "Mechanical advance over base timing: 800rpm=0deg,1600rpm=8deg.")
    private Optional<String> curve = Optional.empty();

    @Option(
            names = "--vacuum",
            paramLabel = "ported|manifold|none",
            description = "Where the vacuum canister draws from.")
    private Optional<String> vacuum = Optional.empty();

    @Option(names = "--save-as", paramLabel = "SETUP", description = "Save the settings as this setup.")
    private Optional<String> saveAs = Optional.empty();

    @Mixin
    private WhenOption at;

    @Mixin
    private Output output;

    SettingsCommand(Toolbox tools, Clock clock) {
        this.tools = tools;
        this.clock = clock;
    }

    @Override
    public Integer call() throws Exception {
        OpenSession open = tools.desk().open(session);
        if (!values.isEmpty() || curve.isPresent() || vacuum.isPresent()) {
            open = tools.recordSettings().edit(open, "Tell settings", this::told);
        }
        if (saveAs.isPresent()) {
            LocalDateTime when = at.by(clock);
            open = tools.recordSettings().keepAs(open, saveAs.get(), when);
        }
        print(open);
        return Output.DONE;
    }

    private BaseSettings told(BaseSettings before) {
        BaseSettings next = before;
        for (Map.Entry<String, String> value : values.entrySet()) {
            Setting setting = Setting.named(value.getKey())
                    .orElseThrow(() -> new IllegalArgumentException(
                            "\"" + value.getKey() + "\" is no setting known here; known are " + Setting.keys() + "."));
            next = next.with(
                    setting,
                    value.getValue().isBlank()
                            ? Optional.empty()
                            : Optional.of(Quantity.parse(value.getValue(), setting.dimension())));
        }
        BaseSettings curved = curve.isPresent() ? next.withCurve(points(curve.get())) : next;
        return vacuum.isPresent() ? curved.withSource(Optional.of(source(vacuum.get()))) : curved;
    }

    private static VacuumSource source(String key) {
        return VacuumSource.named(key)
                .orElseThrow(() -> new IllegalArgumentException(
                        "\"" + key + "\" is no source of vacuum; write ported, manifold or none."));
    }

    private static List<CurvePoint> points(String text) {
        return Stream.of(text.split(",", -1)).map(SettingsCommand::point).toList();
    }

    private static CurvePoint point(String text) {
        String[] sides = text.split("=", -1);
        if (sides.length != 2) {
            throw new IllegalArgumentException("\"" + text + "\" is no point of a curve: write 1600rpm=8deg.");
        }
        return new CurvePoint(Quantity.parse(sides[0], Dimension.ROTATION), Quantity.parse(sides[1], Dimension.ANGLE));
    }

    private void print(OpenSession open) {
        var found = tools.appraise().of(open, output.figures(tools)).tuneUp().settings();
        var settings = open.session().tuneUp().bench().settings();
        if (output.json()) {
            Json json = new Json()
                    .put("setupNow", open.session().present().name())
                    .put("totalDegrees", settings.totalDegrees())
                    .put("timing", found.timing())
                    .put("remarks", found.remarks());
            settings.values().forEach((setting, value) -> json.put(setting.key(), value.toString()));
            output.print(json);
            return;
        }
        found.timing().ifPresent(output::print);
        found.told().forEach(output::print);
        found.remarks().forEach(remark -> output.print("! " + remark));
        output.print("Setup now: " + open.session().present().name());
    }
}
