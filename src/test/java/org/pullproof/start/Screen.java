package org.pullproof.start;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Window;

/** What can be told of a JavaFX program from outside: that a part of it is to be seen, and that a frame of it is drawn. */
final class Screen {
    private Screen() {}

    /**
     * Waits, on the thread that asks, until JavaFX has started and a window shows a node.
     *
     * @param node its style class
     */
    static Scene await(String node) {
        CompletableFuture<Scene> found = new CompletableFuture<>();
        while (!found.isDone()) {
            try {
                Platform.runLater(() -> look(node, found));
                CompletableFuture<Void> asked = new CompletableFuture<>();
                Platform.runLater(() -> asked.complete(null));
                asked.join();
            } catch (IllegalStateException notStartedYet) {
                Thread.onSpinWait();
            }
            rest();
        }
        return found.join();
    }

    private static void look(String node, CompletableFuture<Scene> found) {
        Window.getWindows().stream()
                .filter(Window::isShowing)
                .map(Window::getScene)
                .filter(shown -> shown.getRoot().lookup("." + node) != null)
                .findFirst()
                .ifPresent(found::complete);
    }

    /**
     * Waits, on the thread that asks, until a frame is drawn as the scene is now, and the thread that takes input is free again:
     * a second pulse begins only when the frame of the first is on its way to the screen.
     */
    static void awaitFrame(Scene scene) {
        CompletableFuture<Void> drawn = new CompletableFuture<>();
        AtomicInteger pulses = new AtomicInteger();
        Runnable pulse = () -> {
            if (pulses.incrementAndGet() == 2) {
                Platform.runLater(() -> drawn.complete(null));
            }
            askForAnother(scene);
        };
        Platform.runLater(() -> {
            scene.addPostLayoutPulseListener(pulse);
            askForAnother(scene);
        });
        drawn.join();
        Platform.runLater(() -> scene.removePostLayoutPulseListener(pulse));
    }

    private static void askForAnother(Scene scene) {
        scene.getRoot().requestLayout();
        Platform.requestNextPulse();
    }

    private static void rest() {
        try {
            Thread.sleep(1);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
