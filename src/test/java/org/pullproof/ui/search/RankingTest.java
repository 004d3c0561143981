package org.pullproof.ui.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pullproof.units.Sentence.Part;

class RankingTest {
    private static final Found PRINT = found(Group.DO, "Print a tally sheet", "for leak-down");
    private static final Found LEAK_SIX = found(Group.SESSION, "Cylinder 6: leak-down 93 %", "typed 14:02");
    private static final Found LEAK_TWO = found(Group.SESSION, "Cylinder 2: leak-down 4 %", "typed 14:06");
    private static final Found DRY_SIX = found(Group.SESSION, "Cylinder 6: dry 146 psi", "typed 14:01");
    private static final Found COUPE = found(Group.SESSION, "Grey coupé", "told");
    private static final List<Found> ALL = List.of(PRINT, LEAK_TWO, DRY_SIX, LEAK_SIX, COUPE);

    private static Found found(Group group, String title, String detail) {
        return new Found(group, title, detail, "", () -> {});
    }

    @Test
    void everyWordOfTheQuestionHasToStandThere() {
        assertThat(Ranking.of(ALL, "leak 6")).containsExactly(LEAK_SIX);
    }

    @Test
    void aFigureIsNotFoundInsideAnother() {
        assertThat(Ranking.of(ALL, "46")).isEmpty();
        assertThat(Ranking.of(ALL, "6")).containsExactly(DRY_SIX, LEAK_SIX);
    }

    @Test
    void theTitleAnswersBeforeTheDetailAndItsGroupStandsFirst() {
        assertThat(Ranking.of(ALL, "leak")).containsExactly(LEAK_TWO, LEAK_SIX, PRINT);
    }

    @Test
    void capitalsAndAccentsDoNotMatter() {
        assertThat(Ranking.of(ALL, "COUPE")).containsExactly(COUPE);
        assertThat(Ranking.of(ALL, "coupé")).containsExactly(COUPE);
    }

    @Test
    void aTitleThatBeginsWithTheQuestionComesFirst() {
        Found go = found(Group.DO, "Sheet of paper", "");
        assertThat(Ranking.of(List.of(PRINT, go), "sheet")).containsExactly(go, PRINT);
    }

    @Test
    void noQuestionIsAnsweredWithWhatCanBeDone() {
        assertThat(Ranking.of(ALL, "  ")).containsExactly(PRINT);
    }

    @Test
    void theWordsOfTheQuestionAreMarkedInTheTitle() {
        assertThat(Highlight.of("Leak-down, cylinder 6", "leak 6"))
                .containsExactly(new Part("Leak", true), new Part("-down, cylinder ", false), new Part("6", true));
    }
}
