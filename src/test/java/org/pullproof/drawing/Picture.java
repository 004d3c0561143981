package org.pullproof.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.pullproof.drawing.Shape.Box;
import org.pullproof.drawing.Shape.Circle;
import org.pullproof.drawing.Shape.Line;
import org.pullproof.drawing.Shape.Path;
import org.pullproof.drawing.Shape.Text;

/** Looks at a finished drawing the way a reader does: what stands where, and does anything stand on something else. */
final class Picture {
    private final Drawing drawing;

    Picture(Drawing drawing) {
        this.drawing = drawing;
    }

    /** The place a shape takes. */
    record Place(String what, double left, double top, double right, double bottom) {
        boolean overlaps(Place other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    List<Text> texts() {
        return drawing.shapes().stream()
                .filter(Text.class::isInstance)
                .map(Text.class::cast)
                .toList();
    }

    List<String> words() {
        return texts().stream().map(Text::words).toList();
    }

    Text text(String words) {
        return texts().stream()
                .filter(text -> text.words().equals(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("\"" + words + "\" is not among " + words()));
    }

    <T extends Shape> List<T> all(Class<T> kind) {
        return drawing.shapes().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    void hasNothingOutside() {
        for (Shape shape : drawing.shapes()) {
            Place place = place(shape);
            assertThat(place.left).as(place.what).isGreaterThanOrEqualTo(-0.5);
            assertThat(place.top).as(place.what).isGreaterThanOrEqualTo(-0.5);
            assertThat(place.right).as(place.what).isLessThanOrEqualTo(drawing.width() + 0.5);
            assertThat(place.bottom).as(place.what).isLessThanOrEqualTo(drawing.height() + 0.5);
        }
    }

    void hasNoWordsOnWords() {
        List<Place> places = new ArrayList<>();
        for (Text text : texts()) {
            Place place = place(text);
            assertThat(places).as(place.what).noneMatch(place::overlaps);
            places.add(place);
        }
    }

    static Place place(Shape shape) {
        if (shape instanceof Text text) {
            return place(text);
        }
        if (shape instanceof Line line) {
            return new Place(
                    line.toString(),
                    Math.min(line.x1(), line.x2()),
                    Math.min(line.y1(), line.y2()),
                    Math.max(line.x1(), line.x2()),
                    Math.max(line.y1(), line.y2()));
        }
        if (shape instanceof Box box) {
            return new Place(box.toString(), box.x(), box.y(), box.x() + box.width(), box.y() + box.height());
        }
        if (shape instanceof Circle circle) {
            return new Place(
                    circle.toString(),
                    circle.x() - circle.radius(),
                    circle.y() - circle.radius(),
                    circle.x() + circle.radius(),
                    circle.y() + circle.radius());
        }
        Path path = (Path) shape;
        return new Place(
                path.toString(),
                path.points().stream().mapToDouble(Shape.Point::x).min().orElse(0),
                path.points().stream().mapToDouble(Shape.Point::y).min().orElse(0),
                path.points().stream().mapToDouble(Shape.Point::x).max().orElse(0),
                path.points().stream().mapToDouble(Shape.Point::y).max().orElse(0));
    }

    private static Place place(Text text) {
        double width = TextWidth.of(text.words(), text.face(), text.size(), text.weight());
        double left = switch (text.anchor()) {
            case START -> text.x();
            case MIDDLE -> text.x() - width / 2;
            case END -> text.x() - width;
        };
        return new Place(text.words(), left, text.y() - 0.72 * text.size(), left + width, text.y() + 0.2 * text.size());
    }
}
