package org.pullproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.pullproof.report.ReportMaker;
import org.pullproof.testing.GreyCoupe;
import org.pullproof.testing.Tools;

class ReportJsonTest {
    @Test
    void everyAnswerHasItsKey() throws JsonProcessingException {
        assertThat(json().findValues("answers").get(0).findValuesAsText("key"))
                .containsExactly("sound", "inTune", "changes", "worth");
    }

    @Test
    void figuresAreNumbersUnderTheUnitOfTheirKey() throws JsonProcessingException {
        JsonNode timing = json().findValue("changes").get(0);

        assertThat(timing.path("differencePercent").doubleValue()).isEqualTo(3.1);
        assertThat(timing.path("beforeKw").doubleValue()).isEqualTo(150);
    }

    @Test
    void whatWasNotRecordedIsAbsent() throws JsonProcessingException {
        assertThat(json().findValue("cylinders").get(0).has("wetKpa")).isFalse();
    }

    @Test
    void thePullsOfAllDaysStandInOneList() throws JsonProcessingException {
        assertThat(json().findValue("pulls")).hasSize(4);
    }

    private static JsonNode json() throws JsonProcessingException {
        LocalDateTime made = LocalDateTime.of(2026, 6, 14, 17, 10);
        return new ObjectMapper()
                .readTree(ReportJson.of(new ReportMaker(Tools.cautions()).make(GreyCoupe.appraisal(), made))
                        .toString());
    }
}
