package org.pullproof.dyno;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.dyno.StatedFigure.At;
import org.pullproof.weather.Standard;

class StatedFigureTest {

    @Test
    void everythingASheetMaySayIsRead() {
        StatedFigure stated = StatedFigure.parse("248hp sae-j607 wheels 98.2kPa 30C 40%; seller, March");
        assertThat(stated.power()).hasToString("248 hp");
        assertThat(stated.standard()).contains(Standard.SAE_J607);
        assertThat(stated.at()).isEqualTo(At.WHEELS);
        assertThat(stated.air().orElseThrow().words()).isEqualTo("station pressure 98.2 kPa, 30 °C, humidity 40 %");
        assertThat(stated.note()).isEqualTo("seller, March");
    }

    @Test
    void whatASheetDoesNotSayStaysUnsaid() {
        StatedFigure stated = StatedFigure.parse("248hp");
        assertThat(stated.standard()).isEmpty();
        assertThat(stated.at()).isEqualTo(At.UNKNOWN);
        assertThat(stated.air()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "248hp",
                "248.0hp sae-j607",
                "185kW iso-1585 crank",
                "248hp none wheels 29.10inHg 85F",
                "248hp sae-j607 wheels 98.2kPa 30°C 40%; seller, March"
            })
    void aFigureWrittenIsReadBackTheSame(String text) {
        StatedFigure stated = StatedFigure.parse(text);
        assertThat(stated.text()).isEqualTo(text.replace("85F", "85°F"));
        assertThat(StatedFigure.parse(stated.text())).isEqualTo(stated);
    }

    @ParameterizedTest
    @CsvSource({"sae-j607 crank 248hp", "crank 248hp sae-j607"})
    void itsWordsMayStandInAnyOrder(String text) {
        assertThat(StatedFigure.parse(text)).isEqualTo(StatedFigure.parse("248hp sae-j607 crank"));
    }

    @ParameterizedTest
    @CsvSource({
        "sae-j607 wheels, has no power with its unit",
        "248, has no power with its unit",
        "248hp j607, '\"j607\" is none of its words'",
        "248hp 250hp, tells something twice",
        "248hp wheels crank, tells something twice",
        "248hp 0.040in, tells something twice",
        "248hp 30C, needs station pressure and temperature",
        "0hp, above zero"
    })
    void whatCannotBeReadIsASentenceThatShowsTheShape(String text, String sentence) {
        assertThatThrownBy(() -> StatedFigure.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(sentence);
    }
}
