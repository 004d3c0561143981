package org.pullproof.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.dyno.NotLogged;
import org.pullproof.dyno.PowerCurve;
import org.pullproof.dyno.PullFindings;
import org.pullproof.dyno.Role;
import org.pullproof.engine.Setup;
import org.pullproof.session.Session;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;
import org.pullproof.weather.Factor;
import org.pullproof.weather.PullAir;
import org.pullproof.weather.Standard;

/** Writes pulls, for scripts and for people. */
final class PullPrinter {
    private final Session session;
    private final Figures figures;

    PullPrinter(Session session, Figures figures) {
        this.session = session;
        this.figures = figures;
    }

    Json added(PullFindings pull) {
        return new Json()
                .put("pull", pull.name())
                .put("setup", setup(pull))
                .put("file", pull.pull().file().original())
                .put("samples", pull.trace().size())
                .put("flags", pull.flags())
                .put("comparable", pull.comparable())
                .put("notLogged", notLogged(pull));
    }

    /** Keys of what was not logged, and so not judged. */
    private static List<String> notLogged(PullFindings pull) {
        return pull.trace().notLogged().stream().map(Role::key).toList();
    }

    Json json(DynoFindings found) {
        Json json = new Json().put("answer", found.answer().plain());
        json.put("bandFromRpm", found.bandFrom()).put("bandToRpm", found.bandTo());
        json.put("bandIsDefault", found.bandIsDefault())
                .put("pulls", found.pulls().stream().map(this::json).toList());
        found.stated().ifPresent(stated -> json.put("stated", new StatedPrinter(stated).json()));
        return json;
    }

    Json jsonWithCurve(PullFindings pull) {
        return new Json()
                .put("pulls", List.of(json(pull)))
                .put("smoothingRpm", PowerCurve.SMOOTHING)
                .put(
                        "curve",
                        IntStream.range(0, pull.curve().size())
                                .mapToObj(i -> point(pull, i))
                                .toList());
    }

    private static Json point(PullFindings pull, int i) {
        double kilowatt = pull.curve().watt(i) / 1e3;
        Json json = new Json().put("rpm", pull.curve().rpm(i)).put("measuredKw", kilowatt);
        pull.factor().ifPresent(factor -> json.put("correctedKw", kilowatt * factor.value()));
        return json.put("torqueNm", pull.curve().newtonMetre(i));
    }

    private Json json(PullFindings pull) {
        Json json = new Json()
                .put("name", pull.name())
                .put("setup", setup(pull))
                .put("file", pull.pull().file().original())
                .put("sha256", pull.pull().file().sha256())
                .put("time", pull.pull().time().toString())
                .put("samples", pull.trace().size())
                .put("rpmFrom", pull.trace().firstRpm())
                .put("rpmTo", pull.trace().lastRpm())
                .put("peakMeasuredKw", pull.peakMeasuredKw())
                .put("peakMeasuredRpm", pull.peakMeasuredRpm())
                .put("peakCorrectedKw", pull.peakCorrectedKw())
                .put("bandMeasuredKw", pull.bandMeasuredKw())
                .put("bandCorrectedKw", pull.bandCorrectedKw());
        pull.factor()
                .ifPresent(factor -> json.put("factor", factor.value())
                        .put("factorUncertainty", factor.uncertainty())
                        .put("withinRange", factor.withinRange()));
        pull.air().ifPresent(air -> json.put("air", json(air)));
        return json.put("standard", standard(pull).key())
                .put("flags", pull.flags())
                .put("comparable", pull.comparable())
                .put("notLogged", notLogged(pull))
                .put("excluded", pull.excluded())
                .put("excludedBecause", pull.pull().excluded());
    }

    /** Where the air of a pull comes from, how far away it was read and how much it moved. */
    private static Json json(PullAir air) {
        Json json = new Json()
                .put("words", air.words())
                .put("readAt", air.first().time().toString());
        air.second().ifPresent(later -> json.put("readAgainAt", later.time().toString()));
        return json.put("ageMinutes", air.age().toSeconds() / 60.0)
                .put("stationPressureKpa", air.state().pressure().kilopascal())
                .put("dryPressureKpa", air.state().dry().kilopascal())
                .put("temperatureC", air.state().temperature().celsius())
                .put("pressureMovedKpa", air.pressureMoved())
                .put("temperatureMovedC", air.temperatureMoved());
    }

    /** The standard its figures stand on. */
    private static Standard standard(PullFindings pull) {
        return pull.pull()
                .correctedAlready()
                .or(() -> pull.factor().map(Factor::standard))
                .orElse(Standard.NONE);
    }

    private String setup(PullFindings pull) {
        String id = pull.pull().setup();
        return session.setup(id).map(Setup::name).orElse(id);
    }

    Table table(List<PullFindings> pulls) {
        Table table = new Table()
                .words("pull")
                .words("file")
                .figures("from, rpm")
                .figures("to, rpm")
                .figures("peak measured")
                .figures("at, rpm")
                .figures("band measured")
                .figures("band corrected")
                .words("standard")
                .words("air read");
        pulls.forEach(pull -> table.row(cells(pull)));
        return table;
    }

    private String[] cells(PullFindings pull) {
        return new String[] {
            pull.name(),
            pull.pull().file().original(),
            speed(pull.trace().firstRpm()),
            speed(pull.trace().lastRpm()),
            power(OptionalDouble.of(pull.peakMeasuredKw())),
            speed(pull.peakMeasuredRpm()),
            power(pull.bandMeasuredKw()),
            power(pull.bandCorrectedKw()),
            pull.standardWords(),
            pull.air().map(PullAir::words).orElse("–")
        };
    }

    private String speed(double rpm) {
        return figures.bare(rpm, Shown.SPEED);
    }

    private String power(OptionalDouble kilowatt) {
        return kilowatt.isPresent() ? figures.of(kilowatt.getAsDouble() * 1e3, Shown.POWER) : "–";
    }

    /** What to mind, one line each; no line if there is nothing. */
    List<String> remarks(List<PullFindings> pulls) {
        List<String> lines = new ArrayList<>();
        for (PullFindings pull : pulls) {
            pull.flags().forEach(flag -> lines.add(pull.name() + ": " + flag));
            pull.pull().excluded().ifPresent(reason -> lines.add(pull.name() + ": excluded, " + reason));
        }
        named(pulls, pull -> !pull.comparable())
                .ifPresent(names -> lines.add("Not fit to be compared: " + names + "."));
        lines.addAll(NotLogged.sentences(pulls));
        return lines;
    }

    private static Optional<String> named(List<PullFindings> pulls, Predicate<PullFindings> wanted) {
        String names = pulls.stream().filter(wanted).map(PullFindings::name).collect(Collectors.joining(", "));
        return names.isEmpty() ? Optional.empty() : Optional.of(names);
    }

    String curveTitle(PullFindings pull) {
        String corrected = pull.factor().isPresent()
                ? "corrected to " + pull.standardWords()
                : pull.pull().correctedAlready().isPresent()
                        ? "the file's figures are on " + pull.standardWords() + " and are not corrected again"
                        : "not corrected, for the pull has no air of its day";
        return "Power at the wheels, smoothed over " + PowerCurve.SMOOTHING + " rpm, every 100 rpm; " + corrected + ".";
    }

    Table curve(PullFindings pull) {
        Table table = new Table()
                .figures("rpm")
                .figures("measured")
                .figures("corrected")
                .figures("torque measured");
        PowerCurve curve = pull.curve();
        IntStream.range(0, curve.size())
                .filter(i -> curve.rpm(i) % 100 == 0)
                .forEach(i -> table.row(
                        speed(curve.rpm(i)),
                        figures.of(curve.watt(i), Shown.POWER),
                        pull.factor()
                                .map(factor -> figures.of(curve.watt(i) * factor.value(), Shown.POWER))
                                .orElse("–"),
                        figures.of(curve.newtonMetre(i), Shown.TORQUE)));
        return table;
    }
}
