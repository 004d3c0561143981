package org.pullproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.pullproof.advice.Appraisal;
import org.pullproof.report.ReportModel.Section;
import org.pullproof.units.Figures;
import org.pullproof.weather.Standard;
import org.pullproof.weather.StandardNote;

/** By which methods and standards the figures above were made; only those that were used. */
record MethodsSection(Appraisal appraisal, Set<ReportPart> parts) {
    Section section() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Points("methods", "Methods", methods(), false));
        if (!edited().isEmpty()) {
            blocks.add(new Block.Points(
                    "judgement", "Judged by values of this session's own, not the program's", edited(), false));
        }
        blocks.add(new Block.Points(
                "profileSources",
                "Sources of the engine's profile",
                appraisal.session().profile().sources(),
                false));
        return new Section("methods", "Methods and standards", "", blocks);
    }

    private List<String> edited() {
        return appraisal.session().judgement().edited().entrySet().stream()
                .map(value -> value.getKey() + " = " + Figures.plain(value.getValue()))
                .toList();
    }

    private List<String> methods() {
        List<String> methods = new ArrayList<>();
        methods.add(
                "Readings are kept as they were typed, in their unit and resolution; everything else is computed from"
                        + " them each time. What was not recorded is shown as “–”, never as a default.");
        if (wanted(ReportPart.HEALTH) && !appraisal.health().rules().isEmpty()) {
            methods.add(
                    "Compression: readings are compared where they were made the same way; each rule stands with its"
                            + " source. Spread is the highest less the lowest, over the highest.");
        }
        if (power() && appraisal.dyno().latestFactor().isPresent()) {
            methods.add(correction(appraisal.session().standard()));
        }
        if (power() && !appraisal.dyno().pulls().isEmpty()) {
            methods.add("Band power is the mean of power at the wheels over the band, straight between the samples as"
                    + " measured; nothing is shown at speeds a pull did not cover.");
        }
        if (wanted(ReportPart.CHANGES) && !appraisal.changes().changes().isEmpty()) {
            methods.add("Differences between setups: generalised least squares (Aitken) on 100 times the logarithm of"
                    + " band power, with a steady drift from pull to pull; until the pulls say otherwise a scatter of"
                    + " 0.6 % is assumed, worth four pulls. “Holds allowing for all” is Holm's correction for the"
                    + " number of changes tried.");
        }
        return methods;
    }

    private boolean wanted(ReportPart part) {
        return parts.contains(part) || parts.contains(ReportPart.SUMMARY);
    }

    private boolean power() {
        return wanted(ReportPart.CHANGES) || parts.contains(ReportPart.DYNO);
    }

    private String correction(Standard standard) {
        if (standard == Standard.NONE) {
            return "Power is shown as measured, without a correction for the air.";
        }
        StandardNote note = StandardNote.of(standard);
        boolean charged = appraisal.session().profile().charged();
        return "Power is corrected to " + standard.words() + " (reference air " + note.reference() + "; form "
                + note.form() + "; made for " + note.range() + "; " + note.status()
                + "): measured power times the factor beside each pull. ± beside a factor is what the resolution of the"
                + " readings of the air leaves open. " + StandardNote.AT_THE_WHEELS
                + (charged ? " " + StandardNote.CHARGED : "");
    }
}
