package org.pullproof.report;

import static org.pullproof.report.Block.Column.figures;
import static org.pullproof.report.Block.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.advice.Appraisal;
import org.pullproof.drawing.Drawing;
import org.pullproof.drawing.PowerChart;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.dyno.NotLogged;
import org.pullproof.dyno.PullFindings;
import org.pullproof.engine.Setup;
import org.pullproof.report.ReportModel.Section;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;
import org.pullproof.weather.Factor;
import org.pullproof.weather.PullAir;
import org.pullproof.weather.Standard;

/** The dyno days: the air, every pull with its factor and flags, and the mean of each setup. */
record DynoSection(Appraisal appraisal, Wording wording) {
    private static final double CURVES_HEIGHT = 500;

    /** Nothing before the first day, unless another sheet's figure was told. */
    Optional<Section> section() {
        if (appraisal.session().days().isEmpty() && appraisal.dyno().stated().isEmpty()) {
            return Optional.empty();
        }
        DynoFindings dyno = appraisal.dyno();
        List<Block> blocks = new ArrayList<>();
        AirBlocks air = new AirBlocks(appraisal, wording);
        if (!appraisal.session().days().isEmpty()) {
            blocks.add(air.readings());
        }
        blocks.addAll(new DayBlocks(appraisal).blocks());
        if (!dyno.pulls().isEmpty()) {
            blocks.add(new Block.Picture(curves()));
            blocks.add(setups());
            appraisal.session().days().stream()
                    .filter(day -> !day.pulls().isEmpty())
                    .map(this::pulls)
                    .forEach(blocks::add);
            blocks.addAll(notLogged());
        }
        blocks.addAll(air.stated());
        return Optional.of(new Section("dyno", "Dyno days", band(), blocks));
    }

    private Drawing curves() {
        PowerChart.Content content = new PowerChart.Content(
                appraisal.dyno(),
                appraisal.session().setups(),
                Optional.empty(),
                appraisal.changes().ribbonPercent(),
                appraisal.session().standard(),
                wording.figures());
        return PowerChart.of(content, Paper.CONTENT_WIDTH, CURVES_HEIGHT);
    }

    private String band() {
        DynoFindings dyno = appraisal.dyno();
        if (dyno.bandFrom().isEmpty() || dyno.bandTo().isEmpty()) {
            return "power at the wheels";
        }
        return "power at the wheels; band power: mean over "
                + Figures.number(dyno.bandFrom().getAsInt(), 0) + " to "
                + Figures.number(dyno.bandTo().getAsInt(), 0) + " rpm"
                + (dyno.bandIsDefault() ? ", the range all pulls cover" : "");
    }

    private Block pulls(DynoDay day) {
        String power = wording.unit(Shown.POWER);
        return new Block.Table(
                "pulls",
                "Pulls of " + Wording.day(day.date()) + " in order of time",
                List.of(
                        words("name", "Pull"),
                        words("time", "Time"),
                        words("air", "Air read"),
                        words("factor", "Factor" + standard()),
                        figures("peakMeasuredKw", "Peak measured, " + power),
                        figures("peakMeasuredRpm", "at rpm"),
                        figures("bandMeasuredKw", "Band measured, " + power),
                        figures("bandCorrectedKw", "Band corrected, " + power + standard()),
                        Block.Column.line("flags", "To mind")),
                appraisal.dyno().pulls().stream()
                        .filter(found -> day.pulls().contains(found.pull()))
                        .map(this::row)
                        .toList());
    }

    /** Every factor is of the session's standard, so its name stands once, in the head. */
    private String standard() {
        Standard standard = appraisal.session().standard();
        return standard == Standard.NONE ? "" : ", " + standard.words();
    }

    private List<Cell> row(PullFindings pull) {
        return List.of(
                Cell.words(pull.name()),
                Cell.words(Wording.clock(pull.pull().time())),
                Cell.words(pull.air().map(PullAir::words)),
                factor(pull),
                wording.power(OptionalDouble.of(pull.peakMeasuredKw())),
                Wording.number(OptionalDouble.of(pull.peakMeasuredRpm()), 0),
                wording.power(pull.bandMeasuredKw()),
                wording.power(pull.bandCorrectedKw()),
                Cell.words(flags(pull)));
    }

    private static Cell factor(PullFindings pull) {
        Optional<String> already =
                pull.pull().correctedAlready().map(standard -> "the file is corrected already, " + standard.words());
        return pull.factor().map(DynoSection::factor).orElseGet(() -> Cell.words(already.orElse("no air was read")));
    }

    private static Cell factor(Factor factor) {
        return Cell.figure(Wording.bareFactor(factor), factor.value());
    }

    private static String flags(PullFindings pull) {
        List<String> flags = new ArrayList<>();
        pull.pull().excluded().ifPresent(why -> flags.add("excluded: " + why));
        flags.addAll(pull.flags());
        return String.join("; ", flags);
    }

    private List<Block> notLogged() {
        List<String> sentences = NotLogged.sentences(appraisal.dyno().pulls());
        return sentences.isEmpty()
                ? List.of()
                : List.of(new Block.Points("notLogged", "What was not logged", sentences, false));
    }

    private Block setups() {
        return new Block.Table(
                "setups",
                "Mean band power of each setup; what may be said of a difference stands under Changes",
                List.of(
                        words("setup", "Setup"),
                        words("levels", "Settings"),
                        figures("pulls", "Pulls that count"),
                        figures("meanKw", "Mean, " + wording.unit(Shown.POWER)),
                        words("standard", "Standard")),
                appraisal.dyno().setups().stream().map(this::row).toList());
    }

    private List<Cell> row(DynoFindings.SetupPower power) {
        Optional<Setup> setup = appraisal.session().setup(power.setup());
        String standard = power.corrected() ? appraisal.session().standard().words() : "as measured";
        return List.of(
                Cell.words(setup.map(Setup::name)),
                Cell.words(setup.map(DynoSection::levels)),
                Cell.figure(String.valueOf(power.pulls()), power.pulls()),
                wording.power(OptionalDouble.of(power.meanKw())),
                Cell.words(standard));
    }

    private static String levels(Setup setup) {
        return String.join(
                ", ",
                setup.levels().entrySet().stream()
                        .map(level -> level.getKey() + " " + Wording.typed(level.getValue()))
                        .sorted()
                        .toList());
    }
}
