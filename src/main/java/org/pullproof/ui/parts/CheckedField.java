package org.pullproof.ui.parts;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;

/**
 * A field whose entry is read when it is left or on Enter. An entry that is refused stays as typed, gets a red border and the
 * sentence below, and the focus may move on. Escape brings the last good text back.
 *
 * @param <T> what an entry is read to
 */
public class CheckedField<T> extends VBox {
    private static final PseudoClass REFUSED = PseudoClass.getPseudoClass("refused");

    private final TextField field = new TextField();
    private final Label sentence = new Label();
    private final ReadOnlyObjectWrapper<Optional<T>> value = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final Function<String, T> reader;
    private Consumer<T> onTaken = taken -> {};
    private Runnable onForgotten = () -> {};
    private Optional<Function<T, String>> dress = Optional.empty();
    private Optional<String> dressed = Optional.empty();
    private String kept = "";
    private String judged = "";

    /**
     * @param name what is asked, for people who cannot see the label beside it
     * @param reader reads an entry that is not blank; an {@link IllegalArgumentException} refuses it with its message
     */
    public CheckedField(String name, Function<String, T> reader) {
        this.reader = reader;
        getStyleClass().add("checked-field");
        field.setAccessibleText(name);
        sentence.getStyleClass().add("refusal");
        sentence.setWrapText(true);
        sentence.setMinHeight(USE_PREF_SIZE);
        getChildren().add(field);
        field.setOnAction(entered -> take());
        field.focusedProperty().addListener((of, before, focused) -> {
            if (focused) {
                undress();
            } else {
                if (!typed().equals(judged)) {
                    take();
                }
                dress();
            }
        });
        field.addEventHandler(KeyEvent.KEY_PRESSED, this::escape);
    }

    /**
     * How a good entry reads while nobody edits it, such as {@code 84,300 mi} for {@code 84300mi}; with the keyboard in the field
     * it stands as typed.
     *
     * @param words makes the words from what an entry was read to
     */
    public final void readsAtRest(Function<T, String> words) {
        dress = Optional.of(words);
        dress();
    }

    private void dress() {
        if (!field.isFocused() && !isRefused() && typed().equals(kept)) {
            dressed = value.get().flatMap(read -> dress.map(words -> words.apply(read)));
            dressed.ifPresent(field::setText);
        }
    }

    private void undress() {
        if (dressed.isPresent() && typed().equals(kept)) {
            field.setText(kept);
        }
        dressed = Optional.empty();
    }

    /** What stands in the field, as it was typed. */
    private String typed() {
        return dressed.filter(field.getText()::equals)
                .map(words -> kept)
                .orElseGet(() -> field.getText().strip());
    }

    private void escape(KeyEvent key) {
        if (key.getCode() == KeyCode.ESCAPE && (isRefused() || !typed().equals(kept))) {
            show(kept);
            key.consume();
        }
    }

    /** Shows a text that is known to be good, and forgets a refusal. */
    public final void show(String text) {
        kept = text;
        judged = text;
        dressed = Optional.empty();
        field.setText(text);
        accept();
        value.set(text.isBlank() ? Optional.empty() : Optional.of(reader.apply(text)));
        dress();
    }

    /** What happens with an entry that was changed and could be read. */
    public final void onTaken(Consumer<T> act) {
        onTaken = act;
    }

    /** What happens when the entry was emptied. */
    public final void onForgotten(Runnable act) {
        onForgotten = act;
    }

    /** Reads the entry now; returns whether it stands. */
    public final boolean take() {
        String text = typed();
        judged = text;
        if (text.equals(kept)) {
            accept();
            return true;
        }
        try {
            Optional<T> read = text.isEmpty() ? Optional.empty() : Optional.of(reader.apply(text));
            kept = text;
            accept();
            value.set(read);
            read.ifPresentOrElse(onTaken, onForgotten);
            return true;
        } catch (IllegalArgumentException refused) {
            refuse(String.valueOf(refused.getMessage()));
            return false;
        }
    }

    /** Marks the entry as refused and says why; it stays as typed, and refused until it is taken again. */
    public final void refuse(String why) {
        judged = typed();
        sentence.setText(why);
        if (!getChildren().contains(sentence)) {
            getChildren().add(sentence);
        }
        field.pseudoClassStateChanged(REFUSED, true);
        field.setAccessibleHelp(why);
    }

    private void accept() {
        getChildren().remove(sentence);
        field.pseudoClassStateChanged(REFUSED, false);
        field.setAccessibleHelp("");
    }

    /** Whether something is typed that has not been read yet. */
    public final boolean isChanged() {
        return !typed().equals(kept);
    }

    public final boolean isRefused() {
        return getChildren().contains(sentence);
    }

    /** What the entry was last read to. */
    public final ReadOnlyObjectProperty<Optional<T>> valueProperty() {
        return value.getReadOnlyProperty();
    }

    public final Optional<T> value() {
        return value.get();
    }

    /** The field itself, for its width, prompt and focus. */
    public final TextField field() {
        return field;
    }
}
