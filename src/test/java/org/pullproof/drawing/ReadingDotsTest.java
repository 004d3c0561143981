package org.pullproof.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The dry readings are those of the healthy V8 and of its low sixth cylinder in the stories of the design. */
class ReadingDotsTest {
    private static Drawing dry(Set<Integer> low, double... psi) {
        List<OptionalDouble> figures = Stream.concat(
                        DoubleStream.of(psi).mapToObj(OptionalDouble::of), Stream.of(OptionalDouble.empty()))
                .toList();
        return ReadingDots.of(new ReadingDots.Test("Dry", "psi, 6 strokes", false, figures, low), 400, 140);
    }

    private static <T extends Shape> Stream<T> shapes(Drawing drawing, Class<T> kind) {
        return drawing.shapes().stream().filter(kind::isInstance).map(kind::cast);
    }

    @Test
    void everyReadCylinderHasADotAndTheOthersADash() {
        Drawing drawing = dry(Set.of(), 158, 162, 155);

        assertThat(shapes(drawing, Shape.Circle.class)).hasSize(3);
        assertThat(shapes(drawing, Shape.Text.class).map(Shape.Text::words)).contains("1", "2", "3", "4", "–");
    }

    @Test
    void theHighestReadingStandsHighest() {
        List<Shape.Circle> dots =
                shapes(dry(Set.of(), 158, 162, 155), Shape.Circle.class).toList();

        assertThat(dots.get(1).y()).isLessThan(dots.get(0).y());
        assertThat(dots.get(2).y()).isGreaterThan(dots.get(0).y());
    }

    @Test
    void aLowOneIsRingedInRedAndWrittenOut() {
        Drawing drawing = dry(Set.of(2), 158, 92, 155);

        assertThat(shapes(drawing, Shape.Circle.class)
                        .filter(circle -> circle.stroke()
                                .filter(stroke -> stroke.ink() == Ink.RED)
                                .isPresent()))
                .hasSize(1);
        assertThat(shapes(drawing, Shape.Text.class).map(Shape.Text::words)).contains("92");
    }

    @Test
    void theSameIsSaidToWhoCannotSeeIt() {
        assertThat(dry(Set.of(), 158, 162).title()).isEqualTo("Dry, psi, 6 strokes: 1 158; 2 162; 3 not read");
    }

    @Test
    void withoutReadingsItSaysSo() {
        assertThat(shapes(dry(Set.of()), Shape.Text.class).map(Shape.Text::words))
                .contains("not read yet");
    }
}
