package org.pullproof.report;

import static org.pullproof.report.Block.Column.figures;
import static org.pullproof.report.Block.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.pullproof.advice.Appraisal;
import org.pullproof.dyno.PullFindings;
import org.pullproof.health.Reading;
import org.pullproof.report.ReportModel.Section;
import org.pullproof.units.Figures;

/** What everything else is computed from: every reading as typed with how it was made, the files of the pulls, what the fit leaves over of each. */
record RawSection(Appraisal appraisal, Wording wording) {
    private static final int DIGEST_SHOWN = 12;

    /** Nothing where nothing was read and nothing pulled. */
    Optional<Section> section() {
        List<Block> blocks = new ArrayList<>();
        if (!appraisal.session().readings().isEmpty()) {
            blocks.add(readings());
        }
        if (!distinctWays().isEmpty()) {
            blocks.add(ways());
        }
        if (!appraisal.dyno().pulls().isEmpty()) {
            blocks.add(files());
        }
        new ChangesSections(appraisal, wording).residuals().ifPresent(blocks::add);
        return blocks.isEmpty()
                ? Optional.empty()
                : Optional.of(new Section("raw", "Raw readings", "in the unit and resolution they came in", blocks));
    }

    private Block readings() {
        return new Block.Table(
                "readings",
                "Every reading as typed, in the order it came",
                List.of(
                        words("day", "Taken in"),
                        words("test", "Test"),
                        words("cylinder", "Cylinder"),
                        words("value", "Read"),
                        words("way", "Way"),
                        words("note", "Note")),
                appraisal.session().readings().stream().map(this::row).toList());
    }

    private List<Cell> row(Reading reading) {
        return List.of(
                Cell.words(Wording.day(reading.time().toLocalDate())),
                Cell.words(reading.test().words()),
                Cell.words(cylinder(reading.cylinder())),
                Cell.words(ReadingWords.value(reading)),
                Cell.words(way(reading)),
                Cell.words(reading.note()));
    }

    /** Many readings are made one way: it is told once, under a number. */
    private Block ways() {
        List<String> ways = distinctWays();
        return new Block.Table(
                "ways",
                "Ways they were made",
                List.of(words("way", "Way"), words("made", "As far as it was recorded")),
                IntStream.range(0, ways.size())
                        .mapToObj(i -> List.of(Cell.words("w" + (i + 1)), Cell.words(ways.get(i))))
                        .toList());
    }

    private List<String> distinctWays() {
        return appraisal.session().readings().stream()
                .map(ReadingWords::made)
                .filter(made -> !made.isEmpty())
                .distinct()
                .toList();
    }

    private String way(Reading reading) {
        int place = distinctWays().indexOf(ReadingWords.made(reading));
        return place < 0 ? "" : "w" + (place + 1);
    }

    private static String cylinder(OptionalInt number) {
        return number.isPresent() ? String.valueOf(number.getAsInt()) : "engine";
    }

    private Block files() {
        return new Block.Table(
                "files",
                "Files of the pulls, kept untouched in the session",
                List.of(
                        words("name", "Pull"),
                        words("made", "Made"),
                        words("file", "File as it came"),
                        figures("samples", "Samples"),
                        words("sha256", "SHA-256 begins with")),
                appraisal.dyno().pulls().stream().map(RawSection::file).toList());
    }

    private static List<Cell> file(PullFindings pull) {
        return List.of(
                Cell.words(pull.name()),
                Cell.words(Wording.minute(pull.pull().time())),
                Cell.words(pull.pull().file().original()),
                Cell.figure(Figures.number(pull.trace().size(), 0), pull.trace().size()),
                Cell.words(pull.pull().file().sha256().substring(0, DIGEST_SHOWN)));
    }
}
