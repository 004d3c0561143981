package org.pullproof.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pullproof.drawing.Drawing;
import org.pullproof.drawing.Ink;
import org.pullproof.drawing.Shape;
import org.pullproof.drawing.Shape.Anchor;
import org.pullproof.drawing.Shape.Point;
import org.pullproof.drawing.Shape.Stroke;
import org.pullproof.drawing.Typeface;
import org.pullproof.testing.Xml;

class SvgPainterTest {
    private final SvgPainter painter = new SvgPainter(Palette.paper());

    @Test
    void aLineKeepsItsEndsWithOneDecimal() {
        String svg = paint(new Shape.Line(1, 2.26, 3, -0.01, Stroke.of(Ink.INK, 1.2)));

        assertThat(svg).contains("<line x1=\"1.0\" y1=\"2.3\" x2=\"3.0\" y2=\"0.0\" stroke=\"#17212c\"");
    }

    @Test
    void aDashedPathNamesItsDashes() {
        String svg = paint(new Shape.Path(
                List.of(new Point(0, 0), new Point(5, 5)),
                false,
                Optional.of(Stroke.dashed(Ink.INK2, 0.8, 14.0, 3.0)),
                Optional.empty()));

        assertThat(svg).contains("d=\"M0.0 0.0L5.0 5.0\"").contains("stroke-dasharray=\"14.0 3.0\"");
    }

    @Test
    void aClosedPathIsFilled() {
        String svg = paint(new Shape.Path(
                List.of(new Point(0, 0), new Point(5, 5)), true, Optional.empty(), Optional.of(Ink.INK)));

        assertThat(svg).contains("5.0Z\"").contains("fill=\"#17212c\"");
    }

    @Test
    void aHaloStandsBehindItsWords() {
        String svg = paint(words("base", true));

        assertThat(svg.indexOf("<rect")).isBetween(0, svg.indexOf("<text"));
    }

    @Test
    void hostileWordsStayWords() {
        String svg = paint(words("</text><script>\"&'\u0000\u202e", false));

        assertThat(Xml.parse(svg).getElementsByTagName("script").getLength()).isZero();
        assertThat(Xml.parse(svg).getElementsByTagName("text").item(0).getTextContent())
                .isEqualTo("</text><script>\"&'\ufffd\ufffd");
    }

    @Test
    void everyShapeMakesWellFormedSvg() {
        String svg = painter.file(new Drawing(
                100,
                50,
                "A < B & C",
                List.of(
                        new Shape.Line(0, 0, 1, 1, Stroke.of(Ink.GRID, 1)),
                        new Shape.Box(0, 0, 9, 9, 2, Optional.of(Stroke.of(Ink.RULE, 1)), Optional.empty()),
                        new Shape.Circle(5, 5, 3, Optional.empty(), Optional.of(Ink.WELL)),
                        words("λ ± 1°", true))));

        assertThat(Xml.parse(svg).getDocumentElement().getTagName()).isEqualTo("svg");
        assertThat(svg).contains("A &lt; B &amp; C");
    }

    @Test
    void onPrintNoPencilIsNeeded() {
        assertThat(Palette.print().of(Ink.BLUE)).isEqualTo(Palette.print().of(Ink.INK));
        assertThat(Palette.print().of(Ink.RED)).isEqualTo(Palette.print().of(Ink.INK));
    }

    @Test
    void aPaletteWithoutAnInkIsRefused() {
        assertThatThrownBy(() -> new Palette(Map.of(Ink.INK, "#000000")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("#rrggbb");
    }

    private String paint(Shape shape) {
        return painter.paint(new Drawing(100, 50, "a drawing", List.of(shape)));
    }

    private static Shape.Text words(String words, boolean halo) {
        return new Shape.Text(words, 10, 20, Anchor.MIDDLE, Typeface.NARROW, 12, 400, Ink.INK, halo);
    }
}
