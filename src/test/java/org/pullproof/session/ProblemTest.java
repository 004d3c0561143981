package org.pullproof.session;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ProblemTest {
    /** ESC [ steers a terminal (ECMA-48); U+202E turns the direction of reading (Unicode, UAX #9). */
    @Test
    void whatIsQuotedFromAFileSteersNothing() {
        Problem problem = new Problem("a\u202egpj.csv", "row 1\r", "There is no column \"\u001b[2J\".");
        assertThat(problem.toString()).isEqualTo("a\uFFFDgpj.csv, row 1 : There is no column \"\uFFFD[2J\".");
    }
}
