package org.pullproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.advice.Appraisal;
import org.pullproof.testing.GreyCoupe;
import org.pullproof.testing.Tools;

class TextReportTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Is this engine sound?\n    Yes. All eight cylinders agree within 5 %",
                "Is it in tune?\n    Not yet. One of two steps is done",
                "Which adjustment made power?\n    Timing at 32°, +3.1 % (+2.2 to +4.0).",
                "Is it worth more money?\n    Stop spending: nothing on the list pays."
            })
    void everyQuestionStandsWithItsAnswer(String words) {
        assertThat(text(GreyCoupe.appraisal())).contains(words);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lowest 154 psi",
                "common practice",
                "battery lead, since 13 Jun 2026",
                "station pressure 98.6",
                "0123456789ab",
                "excluded",
                "What would flip it",
                "Tests before deciding",
                "Options, best first",
                "1.0330 ± 0.0030",
                "! Exhaust gas kills indoors",
                "Battery on the charger"
            })
    void theEvidenceIsTold(String words) {
        assertThat(text(GreyCoupe.appraisal())).contains(words);
    }

    @Test
    void noLineIsLongerThanEightyCharacters() {
        assertThat(text(GreyCoupe.appraisal()).lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void noLineIsLongerThanEightyCharactersWhateverPeopleTyped() {
        assertThat(text(GreyCoupe.appraisalSaying("x".repeat(300))).lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void theManualComesFirst() {
        assertThat(text(GreyCoupe.untouched()).replace('\n', ' '))
                .contains("The maker's service manual and a licensed professional take precedence");
    }

    @Test
    void anUntouchedCarHasNoEmptyTables() {
        assertThat(text(GreyCoupe.untouched())).doesNotContain("Dyno days").doesNotContain("Every reading");
    }

    @Test
    void whatSteersATerminalIsTakenOut() {
        assertThat(text(GreyCoupe.appraisalSaying("red\u001b[31m\rover"))).doesNotContain("\u001b", "\r");
    }

    private static String text(Appraisal appraisal) {
        return new TextReport()
                .write(new ReportMaker(Tools.cautions()).make(appraisal, LocalDateTime.of(2026, 6, 14, 17, 10)));
    }
}
