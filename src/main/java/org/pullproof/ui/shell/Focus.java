package org.pullproof.ui.shell;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;

/** Moves the keyboard from one part of the window to another. */
public final class Focus {
    private Focus() {}

    /** Gives the keyboard to the first control in a part; returns whether there was one. */
    public static boolean into(Node part) {
        Optional<Node> first = first(part);
        first.ifPresent(Node::requestFocus);
        return first.isPresent();
    }

    private static Optional<Node> first(Node node) {
        if (!node.isVisible() || node.isDisabled()) {
            return Optional.empty();
        }
        if (node.isFocusTraversable()) {
            return Optional.of(node);
        }
        if (!(node instanceof Parent parent)) {
            return Optional.empty();
        }
        return parent.getChildrenUnmodifiable().stream()
                .map(Focus::first)
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** Whether the keyboard is in a part. */
    public static boolean isIn(Node part) {
        Scene scene = part.getScene();
        Node owner = scene == null ? null : scene.getFocusOwner();
        while (owner != null && owner != part) {
            owner = owner.getParent();
        }
        return owner == part;
    }
}
