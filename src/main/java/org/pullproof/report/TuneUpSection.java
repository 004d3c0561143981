package org.pullproof.report;

import static org.pullproof.report.Block.Column.figures;
import static org.pullproof.report.Block.Column.words;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pullproof.advice.Appraisal;
import org.pullproof.report.ReportModel.Section;
import org.pullproof.tuneup.Step;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.tuneup.TuneUpFindings.OffCar;
import org.pullproof.tuneup.TuneUpFindings.PlugFinding;
import org.pullproof.tuneup.TuneUpFindings.State;
import org.pullproof.tuneup.TuneUpFindings.StepState;
import org.pullproof.units.Shown;
import org.pullproof.units.Unit;

/** The tune-up as done, what is off the car, what blocks the start, and the plugs. */
record TuneUpSection(Appraisal appraisal, Wording wording) {
    /** Nothing before the first tick and without a plug. */
    Optional<Section> section() {
        TuneUpFindings found = appraisal.tuneUp();
        if (found.doneCount() == 0
                && found.plugs().isEmpty()
                && found.offCar().isEmpty()
                && found.settings().told().isEmpty()
                && found.afterwards().fullLoadLock().isEmpty()) {
            return Optional.empty();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(gate(found));
        if (!found.offCar().isEmpty()) {
            blocks.add(offCar(found.offCar()));
        }
        if (!found.leftOff().isEmpty()) {
            blocks.add(new Block.Points(
                    "leftOff",
                    "Left off on purpose (local law says which parts of the emission control may be removed)",
                    found.leftOff(),
                    false));
        }
        blocks.add(steps(found.steps()));
        if (!found.wireRemarks().isEmpty()) {
            blocks.add(new Block.Points("wires", "Plug wires", found.wireRemarks(), false));
        }
        if (!found.plugs().isEmpty()) {
            blocks.add(plugs(found.plugs()));
        }
        blocks.addAll(new TuneUpRest(found, wording).blocks());
        cautions(found.steps()).ifPresent(blocks::add);
        String caption = found.doneCount() + " of " + found.steps().size() + " steps done";
        return Optional.of(new Section("tuneUp", "Tune-up", caption, blocks));
    }

    private static Block gate(TuneUpFindings found) {
        return found.startIsOpen()
                ? new Block.Points(
                        "startBlockedBy",
                        "Start gate: open",
                        List.of("Nothing stands in the way of starting the engine."),
                        false)
                : new Block.Points("startBlockedBy", "Start gate: closed by", whatBlocks(found), false);
    }

    private static List<String> whatBlocks(TuneUpFindings found) {
        return found.startBlockedBy().stream().map(TuneUpFindings.Block::what).toList();
    }

    private static Block offCar(List<OffCar> parts) {
        List<String> points = parts.stream().map(TuneUpSection::offWords).toList();
        return new Block.Points("offCar", "Off the car now", points, false);
    }

    private static String offWords(OffCar part) {
        String fitted = part.fitted()
                .filter(cylinders -> !cylinders.isEmpty())
                .map(cylinders -> ", back on cylinders "
                        + cylinders.stream().map(String::valueOf).collect(Collectors.joining(", ")) + " only")
                .orElse("");
        return part.part() + fitted + ", since " + Wording.minute(part.since())
                + (part.note().isEmpty() ? "" : ": " + part.note())
                + part.stays().map(why -> "; stays off: " + why).orElse("");
    }

    private Block steps(List<StepState> steps) {
        return new Block.Table(
                "steps",
                "Steps in order",
                List.of(
                        words("title", "Step"),
                        words("state", "State"),
                        words("done", "Done"),
                        figures("minutes", "Typical, min")),
                steps.stream().map(this::row).toList());
    }

    private List<Cell> row(StepState step) {
        Optional<LocalDateTime> done = Optional.ofNullable(
                appraisal.session().tuneUp().done().get(step.step().id()));
        return List.of(
                Cell.words(step.step().title()),
                Cell.words(state(step)),
                Cell.words(done.map(Wording::minute)),
                Cell.figure(String.valueOf(step.step().minutes()), step.step().minutes()));
    }

    private String state(StepState step) {
        return step.state() == State.WAITS && step.step().kind() == Step.Kind.WORK
                ? step.waitsFor().stream().map(this::title).collect(Collectors.joining(", ", "waits for: ", ""))
                : step.words();
    }

    private String title(String id) {
        return appraisal.tuneUp().steps().stream()
                .map(StepState::step)
                .filter(step -> step.id().equals(id))
                .map(step -> step.title())
                .findFirst()
                .orElse(id);
    }

    private Block plugs(List<PlugFinding> plugs) {
        String gap = wording.unit(Shown.GAP);
        return new Block.Table(
                "plugs",
                "Plugs",
                List.of(
                        figures("cylinder", "Cylinder"),
                        figures("oldGapMm", "Gap as found, " + gap),
                        figures("newGapMm", "Gap as set, " + gap),
                        figures("torqueNm", "Tightened, " + wording.unit(Shown.TORQUE)),
                        words("heatRange", "Heat range"),
                        words("remark", "Remark")),
                plugs.stream().map(this::row).toList());
    }

    private List<Cell> row(PlugFinding finding) {
        return List.of(
                Cell.figure(
                        String.valueOf(finding.plug().cylinder()),
                        finding.plug().cylinder()),
                wording.bare(finding.plug().oldGap(), Shown.GAP, Unit.MM),
                wording.bare(finding.plug().newGap(), Shown.GAP, Unit.MM),
                wording.bare(finding.plug().torque(), Shown.TORQUE, Unit.NM),
                Cell.words(Optional.of(finding.plug().heatRange()).filter(marked -> !marked.isEmpty())),
                Cell.words(finding.remark()));
    }

    /** The cautions of the steps still to do. */
    private static Optional<Block> cautions(List<StepState> steps) {
        List<String> due = steps.stream()
                .filter(step -> step.state() != State.DONE)
                .flatMap(step -> step.step().cautions().stream())
                .distinct()
                .toList();
        return due.isEmpty()
                ? Optional.empty()
                : Optional.of(new Block.Points("cautions", "Cautions for the steps to come", due, true));
    }
}
