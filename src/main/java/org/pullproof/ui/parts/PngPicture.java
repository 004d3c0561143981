package org.pullproof.ui.parts;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.SnapshotParameters;
import javafx.scene.canvas.Canvas;
import javafx.scene.image.WritableImage;
import javafx.scene.transform.Transform;
import javax.imageio.ImageIO;
import org.pullproof.drawing.Drawing;
import org.pullproof.drawing.Ink;

/** A drawing as a picture of dots, always on paper. Painted on the FX thread; its bytes may be made on any. */
public final class PngPicture {
    /** Dots for each px of the drawing, so that it stands being printed. */
    private static final double FINENESS = 2;

    private final WritableImage image;

    private PngPicture(WritableImage image) {
        this.image = image;
    }

    /** Paints it; on the FX thread only. */
    public static PngPicture of(Drawing drawing) {
        Canvas canvas = new Canvas(drawing.width(), drawing.height());
        new CanvasPainter(canvas.getGraphicsContext2D(), Palette.paper()).paint(drawing);
        SnapshotParameters fine = new SnapshotParameters();
        fine.setTransform(Transform.scale(FINENESS, FINENESS));
        fine.setFill(Palette.paper().of(Ink.SHEET));
        return new PngPicture(canvas.snapshot(fine, null));
    }

    /** The bytes of a PNG file. */
    public byte[] bytes() {
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            ImageIO.write(SwingFXUtils.fromFXImage(image, null), "png", bytes);
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
