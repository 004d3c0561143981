package org.pullproof.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SentenceTest {
    @Test
    void wordsBetweenMarksAreBold() {
        assertThat(new Sentence("**Yes.** All eight **agree**").parts())
                .containsExactly(
                        new Sentence.Part("Yes.", true),
                        new Sentence.Part(" All eight ", false),
                        new Sentence.Part("agree", true));
    }

    @Test
    void plainWordsCarryNoMarks() {
        assertThat(new Sentence("Base makes **201.1 hp**.").plain()).isEqualTo("Base makes 201.1 hp.");
    }
}
