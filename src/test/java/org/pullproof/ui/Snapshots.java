package org.pullproof.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.image.WritableImage;
import javafx.scene.text.Text;
import javax.imageio.ImageIO;
import org.testfx.util.WaitForAsyncUtils;

/** Pictures of a scene, written below {@code target/pictures} to be looked at, and what they show that should not be. */
public final class Snapshots {
    private static final Path FOLDER = Path.of("target", "pictures");

    private Snapshots() {}

    /** Makes something where the screen may be touched. */
    public static <T> T onFx(Callable<T> made) {
        try {
            return WaitForAsyncUtils.waitForAsyncFx(TimeUnit.SECONDS.toMillis(20), made);
        } finally {
            WaitForAsyncUtils.waitForFxEvents();
        }
    }

    /** Writes the scene as it stands to {@code target/pictures/NAME.png}. */
    public static void write(Scene scene, String name) {
        WritableImage image = onFx(() -> scene.snapshot(null));
        try {
            Files.createDirectories(FOLDER);
            ImageIO.write(
                    SwingFXUtils.fromFXImage(image, null),
                    "png",
                    FOLDER.resolve(name + ".png").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Words that are cut short on the screen, each with what is left of it. */
    public static List<String> cutShort(Parent root) {
        List<String> cut = new ArrayList<>();
        if (!root.isVisible()) {
            return cut;
        }
        if (root instanceof Labeled label && !label.isWrapText()) {
            shown(label)
                    .filter(left -> left.endsWith("..."))
                    .ifPresent(left -> cut.add(label.getText() + " → " + left));
        }
        root.getChildrenUnmodifiable().stream()
                .filter(Parent.class::isInstance)
                .forEach(child -> cut.addAll(cutShort((Parent) child)));
        return cut;
    }

    private static Optional<String> shown(Labeled label) {
        return label.getChildrenUnmodifiable().stream()
                .filter(Text.class::isInstance)
                .map(text -> ((Text) text).getText())
                .filter(text -> !text.equals(label.getText()))
                .findFirst();
    }
}
