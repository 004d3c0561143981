package org.pullproof.ui.parts;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.Toggle;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import org.jspecify.annotations.Nullable;

/**
 * Two to five answers side by side, at most one chosen. It is one stop of Tab; arrows go from answer to answer, Space chooses.
 *
 * @param <T> the answers
 */
public final class Choice<T> extends HBox {
    private final ToggleGroup group = new ToggleGroup();
    private final List<T> answers;
    private Consumer<T> onChosen = chosen -> {};
    private boolean tabbed = true;

    /**
     * @param name what is asked, for people who cannot see it
     * @param answers in the order shown
     * @param words how an answer reads
     */
    public Choice(String name, List<T> answers, Function<T, String> words) {
        this.answers = List.copyOf(answers);
        getStyleClass().add("choice");
        setAccessibleText(name);
        this.answers.forEach(answer -> getChildren().add(button(name, answer, words.apply(answer))));
        group.selectedToggleProperty().addListener((of, before, chosen) -> stopAt(chosen));
        stopAt(null);
    }

    /** Leaves the answers to the mouse and to keys of their own: Tab passes them by. */
    public void takesNoTab() {
        tabbed = false;
        getChildren().forEach(button -> button.setFocusTraversable(false));
    }

    /** Words the answers anew, such as with another count. */
    public void say(Function<T, String> words) {
        for (int i = 0; i < answers.size(); i++) {
            ToggleButton button = (ToggleButton) getChildren().get(i);
            button.setText(words.apply(answers.get(i)));
            button.setAccessibleText(getAccessibleText() + " " + button.getText());
        }
    }

    private void stopAt(@Nullable Toggle chosen) {
        Object stop = chosen == null ? getChildren().get(0) : chosen;
        getChildren().forEach(button -> button.setFocusTraversable(tabbed && button.equals(stop)));
    }

    private void arrow(KeyEvent key) {
        int step = key.getCode() == KeyCode.RIGHT ? 1 : key.getCode() == KeyCode.LEFT ? -1 : 0;
        if (step != 0) {
            int next = getChildren().indexOf((Node) key.getSource()) + step;
            getChildren()
                    .get(Math.max(0, Math.min(getChildren().size() - 1, next)))
                    .requestFocus();
            key.consume();
        }
    }

    private ToggleButton button(String name, T answer, String words) {
        ToggleButton button = new ToggleButton(words);
        button.setAccessibleText(name + " " + words);
        button.setMinWidth(USE_PREF_SIZE);
        button.setToggleGroup(group);
        button.addEventFilter(KeyEvent.KEY_PRESSED, this::arrow);
        button.setUserData(answer);
        button.setOnAction(pressed -> {
            // pressing the chosen answer again does not take it away
            group.selectToggle(button);
            onChosen.accept(answer);
        });
        return button;
    }

    /** Shows an answer as chosen, or none; nothing else happens. */
    public void show(Optional<T> chosen) {
        group.selectToggle(null);
        chosen.map(answers::indexOf)
                .filter(index -> index >= 0)
                .ifPresent(index -> group.selectToggle(group.getToggles().get(index)));
    }

    /** What happens when a person chooses. */
    public void onChosen(Consumer<T> act) {
        onChosen = act;
    }
}
