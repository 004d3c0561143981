package org.pullproof.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pullproof.drawing.Shape.Text;
import org.pullproof.engine.FiringOrder;
import org.pullproof.engine.Layout;

class FiringStripTest {
    /** An odd-fire V6 of 90°: intervals 150° and 90° in turn (common practice, no source). */
    private static final FiringOrder ODD =
            new FiringOrder(List.of(1, 6, 5, 4, 3, 2), List.of(150, 90, 150, 90, 150, 90));

    @Test
    void eachCylinderStandsAtItsOwnAngle() {
        Picture strip = new Picture(FiringStrip.of(ODD, 748, 52));

        assertThat(strip.text("6").x()).isEqualTo(14 + 150);
        assertThat(strip.text("5").x()).isEqualTo(14 + 240);
    }

    @Test
    void theFirstCylinderComesAgainAfter720Degrees() {
        Picture strip = new Picture(FiringStrip.of(ODD, 748, 52));

        List<Text> ones =
                strip.texts().stream().filter(text -> text.words().equals("1")).toList();
        assertThat(ones).extracting(Text::x).containsExactly(14.0, 734.0);
    }

    @Test
    void twelveCylindersFitWithoutWordsOnWords() {
        Picture strip = new Picture(FiringStrip.of(Engines.of(Layout.V, 12).firing(), 420, 52));

        strip.hasNothingOutside();
        strip.hasNoWordsOnWords();
    }

    @Test
    void oddIntervalsAreSaidInWords() {
        assertThat(FiringStrip.words(ODD)).isEqualTo("fires 1 6 5 4 3 2, by 150° and 90°");
        assertThat(FiringStrip.words(Engines.v8().firing())).isEqualTo("fires 1 8 4 3 6 5 7 2, every 90°");
    }
}
