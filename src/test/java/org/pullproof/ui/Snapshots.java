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
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javax.imageio.ImageIO;
import org.testfx.util.WaitForAsyncUtils;

/** Pictures of a scene, written below {@code target/pictures} to be looked at, and what they show that should not be. */
public final class Snapshots {
    private static final double HAIR = 1.5;
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
        if (root instanceof Labeled label && !(root instanceof javafx.scene.control.Cell)) {
            shown(label)
                    .filter(left -> left.endsWith("..."))
                    .ifPresent(left -> cut.add(label.getText() + " → " + left));
        }
        root.getChildrenUnmodifiable().stream()
                .filter(Parent.class::isInstance)
                .forEach(child -> cut.addAll(cutShort((Parent) child)));
        return cut;
    }

    /**
     * What sticks out of the window or of the page that scrolls around it, so that nobody can come to see it. A list or a table
     * scrolls by itself.
     */
    public static List<String> outside(Parent root) {
        return onFx(() -> {
            List<String> found = new ArrayList<>();
            outside(root, root.localToScene(root.getLayoutBounds()), found);
            return found;
        });
    }

    private static void outside(Parent parent, Bounds page, List<String> found) {
        if (!parent.isVisible() || parent instanceof ListView || parent instanceof TableView) {
            return;
        }
        if (parent instanceof ScrollPane pane) {
            outsideScrolled(pane, page, found);
            return;
        }
        for (Node child : parent.getChildrenUnmodifiable()) {
            if (parent instanceof VBox box && child.isVisible() && child.isManaged() && widerThan(box, child)) {
                found.add(named(child) + " is " + child.getLayoutBounds().getWidth() + " wide in a column of "
                        + box.getWidth());
            }
            boolean seen = child instanceof Control || child instanceof Canvas;
            if (seen && child.isVisible() && !within(child, page)) {
                found.add(
                        named(child) + " at " + spot(child) + ", page " + page.getWidth() + " by " + page.getHeight());
            } else if (child instanceof Parent inner) {
                outside(inner, page, found);
            }
        }
    }

    private static void outsideScrolled(ScrollPane pane, Bounds page, List<String> found) {
        Bounds viewport = pane.localToScene(pane.getLayoutBounds());
        Node content = pane.getContent();
        boolean sideways = pane.getHbarPolicy() != ScrollPane.ScrollBarPolicy.NEVER;
        if (!sideways && content.getLayoutBounds().getWidth() > viewport.getWidth() + HAIR) {
            found.add(named(pane) + " is " + viewport.getWidth() + " wide, what is in it "
                    + content.getLayoutBounds().getWidth());
        }
        if (!within(pane, page)) {
            found.add(named(pane) + " at " + spot(pane));
        }
        if (content instanceof Parent inner) {
            outside(inner, content.localToScene(content.getLayoutBounds()), found);
        }
    }

    /** What is wider than its column lies over what stands beside it. */
    private static boolean widerThan(VBox box, Node child) {
        return child instanceof Region && child.getLayoutBounds().getWidth() > box.getWidth() + HAIR;
    }

    private static boolean within(Node node, Bounds page) {
        Bounds at = node.localToScene(node.getLayoutBounds());
        return at.isEmpty()
                || (at.getMinX() >= page.getMinX() - HAIR
                        && at.getMaxX() <= page.getMaxX() + HAIR
                        && at.getMinY() >= page.getMinY() - HAIR
                        && at.getMaxY() <= page.getMaxY() + HAIR);
    }

    private static String spot(Node node) {
        Bounds at = node.localToScene(node.getLayoutBounds());
        return Math.round(at.getMinX()) + "…" + Math.round(at.getMaxX()) + " by " + Math.round(at.getMinY()) + "…"
                + Math.round(at.getMaxY());
    }

    private static String named(Node node) {
        String words = node instanceof Labeled label ? label.getText() : node.getAccessibleText();
        return node.getClass().getSimpleName() + " " + node.getStyleClass() + " \"" + words + "\"";
    }

    /** Entries that stand in fields too narrow for them. */
    public static List<String> tooLong(Parent root) {
        return onFx(() -> root.lookupAll(".text-field").stream()
                .map(TextField.class::cast)
                .filter(field -> field.getWidth() > 0 && !field.isFocused() && field.getScene() != null)
                .filter(field -> wide(field) > field.getWidth() - insets(field) + HAIR)
                .map(field -> field.getAccessibleText() + " \"" + field.getText() + "\"")
                .toList());
    }

    private static double wide(TextField field) {
        Text text = new Text(field.getText());
        text.setFont(field.getFont());
        return text.getLayoutBounds().getWidth();
    }

    private static double insets(TextField field) {
        return field.snappedLeftInset() + field.snappedRightInset();
    }

    private static Optional<String> shown(Labeled label) {
        return label.getChildrenUnmodifiable().stream()
                .filter(Text.class::isInstance)
                .map(text -> ((Text) text).getText())
                .filter(text -> !text.equals(label.getText()))
                .findFirst();
    }
}
