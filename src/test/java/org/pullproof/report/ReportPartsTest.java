package org.pullproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pullproof.advice.Appraisal;
import org.pullproof.report.ReportModel.Answer;
import org.pullproof.report.ReportModel.Section;
import org.pullproof.testing.GreyCoupe;
import org.pullproof.testing.Tools;

class ReportPartsTest {
    private static ReportModel report(Appraisal appraisal, ReportPart... parts) {
        return new ReportMaker(Tools.cautions())
                .make(appraisal, LocalDateTime.of(2026, 6, 14, 17, 10), Set.of(parts), picture -> Optional.empty());
    }

    private static List<String> sections(ReportPart... parts) {
        return report(GreyCoupe.appraisal(), parts).sections().stream()
                .map(Section::key)
                .toList();
    }

    @Test
    void theHealthSheetHasItsOwnNameAndAnswersOneQuestion() {
        ReportModel sheet = report(GreyCoupe.appraisal(), ReportPart.HEALTH);

        assertThat(sheet.name()).isEqualTo("Health sheet of an engine");
        assertThat(sheet.answers()).extracting(Answer::key).containsExactly("sound");
        assertThat(sections(ReportPart.HEALTH)).startsWith("health", "readings").doesNotContain("worth", "changes");
    }

    /** What the owner would pay, take or spend is not for the eyes of a buyer. */
    @Test
    void theHealthSheetSaysNothingOfMoney() {
        String text = new TextReport().write(report(GreyCoupe.appraisal(), ReportPart.HEALTH));

        assertThat(text).contains("V8").doesNotContain("$", "USD", "Budget", "Price");
    }

    @Test
    void moneyStandsOnItsOwnPage() {
        assertThat(new TextReport().write(report(GreyCoupe.appraisal(), ReportPart.MONEY)))
                .contains("$");
    }

    @ParameterizedTest
    @EnumSource
    void methodsAndThePrecedenceOfTheManualGoWithEveryPart(ReportPart part) {
        ReportModel report = report(GreyCoupe.appraisal(), part);

        assertThat(report.sections()).extracting(Section::key).contains("methods");
        assertThat(report.foot()).anyMatch(line -> line.contains("take precedence"));
    }

    @Test
    void theCautionsOfAPullGoWithTheDynoDays() {
        String text = new TextReport().write(report(GreyCoupe.appraisal(), ReportPart.DYNO));

        assertThat(text.replaceAll("\\s+", " ")).contains("Nobody in front of or behind the rollers");
    }

    @Test
    void rawReadingsComeLast() {
        assertThat(sections(ReportPart.values())).last().isEqualTo("raw");
    }

    /** The summary says what to do, the page on money why; no sentence stands twice. */
    @Test
    void theDecisionIsNotSaidTwice() {
        String text = new TextReport().write(report(GreyCoupe.appraisal(), ReportPart.values()));

        assertThat(text.split("nothing on the list pays", -1)).hasSize(2);
    }

    @Test
    void noHeadingStandsOverNothing() {
        assertThat(report(GreyCoupe.untouched(), ReportPart.values()).sections())
                .flatExtracting(Section::blocks)
                .allSatisfy(block -> assertThat(block instanceof Block.Points points
                                && points.points().isEmpty())
                        .isFalse());
    }
}
