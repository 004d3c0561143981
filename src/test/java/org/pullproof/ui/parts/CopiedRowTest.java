package org.pullproof.ui.parts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CopiedRowTest {
    /** CWE-1236: a cell that begins with =, +, - or @ is taken for a formula by a spreadsheet. */
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1+cmd|' /C calc'!A0", "-2+3", "@SUM(A1)", "-", "\uFF1D1", "+1.5;=2"})
    void whatASpreadsheetWouldComputeIsTakenAsWords(String cell) {
        assertThat(CopiedRow.of("a", cell)).isEqualTo("a\t'" + cell);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-3.2", "+1.4", "+2,2 %", "-8\u00a0hp", "12", "jets up", "a=b", ""})
    void figuresAndPlainWordsStayAsTheyAre(String cell) {
        assertThat(CopiedRow.of(cell, "b")).isEqualTo(cell + "\tb");
    }

    @Test
    void aCellStaysOneCell() {
        assertThat(CopiedRow.of("a\tb\nc\r=1", "d")).isEqualTo("a b c =1\td");
    }
}
