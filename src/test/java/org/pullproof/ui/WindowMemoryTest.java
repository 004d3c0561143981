package org.pullproof.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.geometry.Rectangle2D;
import org.junit.jupiter.api.Test;
import org.pullproof.files.Preferences.WindowPlace;

class WindowMemoryTest {
    private static final Rectangle2D FIRST = new Rectangle2D(0, 0, 1920, 1080);
    private static final Rectangle2D LEFT_OF_IT = new Rectangle2D(-1280, 0, 1280, 1024);

    private static WindowPlace at(int x, int y) {
        return new WindowPlace(x, y, 1280, 800, false);
    }

    @Test
    void aPlaceOnAScreenIsTakenAgain() {
        assertThat(WindowMemory.canBeSeen(at(100, 100), List.of(FIRST))).isTrue();
        assertThat(WindowMemory.canBeSeen(at(-1200, 50), List.of(FIRST, LEFT_OF_IT)))
                .isTrue();
    }

    @Test
    void aPlaceOnAScreenThatIsGoneIsNot() {
        assertThat(WindowMemory.canBeSeen(at(-1200, 50), List.of(FIRST))).isFalse();
        assertThat(WindowMemory.canBeSeen(at(100, 1070), List.of(FIRST))).isFalse();
        assertThat(WindowMemory.canBeSeen(at(100, -60), List.of(FIRST))).isFalse();
    }
}
