package org.pullproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.Cautions;
import org.pullproof.health.TestKind;
import org.pullproof.report.ReportModel.Section;
import org.pullproof.session.Picture;

/** The sections of the parts wanted, first things first; cautions, methods and standards go with every part. */
final class ChosenSections {
    private final Appraisal appraisal;
    private final Wording wording;
    private final Set<ReportPart> parts;
    private final Cautions cautions;
    private final Function<Picture, Optional<byte[]>> small;
    private final List<Section> sections = new ArrayList<>();

    ChosenSections(
            Appraisal appraisal,
            Wording wording,
            Set<ReportPart> parts,
            Cautions cautions,
            Function<Picture, Optional<byte[]>> small) {
        this.appraisal = appraisal;
        this.wording = wording;
        this.parts = parts;
        this.cautions = cautions;
        this.small = small;
    }

    List<Section> all() {
        HealthSections health = new HealthSections(appraisal, wording);
        ChangesSections changes = new ChangesSections(appraisal, wording);
        add(ReportPart.HEALTH, () -> Optional.of(health.inShort()));
        add(ReportPart.CHANGES, changes::inShort);
        add(ReportPart.SUMMARY, () -> Optional.of(NextSection.of(appraisal)));
        add(ReportPart.HEALTH, health::inFull);
        add(ReportPart.TUNE_UP, () -> new TuneUpSection(appraisal, wording).section());
        add(ReportPart.DYNO, () -> new DynoSection(appraisal, wording).section());
        add(ReportPart.CHANGES, changes::inFull);
        if (parts.contains(ReportPart.MONEY)) {
            sections.addAll(new WorthSection(appraisal, wording).sections());
        }
        add(ReportPart.CAR, () -> Optional.of(new CarSection(appraisal, wording).section()));
        add(ReportPart.CAR, this::topDeadCentre);
        add(ReportPart.PICTURES, () -> new PicturesSection(appraisal.session(), small).section());
        new CautionsSection(appraisal, cautions, parts).section().ifPresent(sections::add);
        sections.add(new MethodsSection(appraisal, parts).section());
        add(ReportPart.READINGS, () -> new RawSection(appraisal, wording).section());
        return sections;
    }

    private void add(ReportPart part, Supplier<Optional<Section>> section) {
        if (parts.contains(part)) {
            section.get().ifPresent(sections::add);
        }
    }

    /** Wanted as long as a leak-down test may be made, or was. */
    private Optional<Section> topDeadCentre() {
        boolean read = appraisal.session().readings().stream().anyMatch(reading -> reading.test() == TestKind.LEAKDOWN);
        return read || appraisal.health().missing().contains(TestKind.LEAKDOWN)
                ? Optional.of(new TdcSection(appraisal.session().profile()).section())
                : Optional.empty();
    }
}
