package org.pullproof.ui.kept;

import java.util.List;
import javafx.beans.property.ReadOnlyListProperty;
import javafx.beans.property.ReadOnlyListWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import org.pullproof.app.BackgroundRunner;
import org.pullproof.app.KeptSittings;
import org.pullproof.app.KeptSittings.Sitting;
import org.pullproof.app.OpenSession;
import org.pullproof.ui.shell.SessionViewModel;

/** State and decisions of the page of what is kept of earlier sittings. */
public final class KeptViewModel {
    private final SessionViewModel model;
    private final KeptSittings kept;
    private final BackgroundRunner runner;
    private final ReadOnlyListWrapper<Sitting> sittings =
            new ReadOnlyListWrapper<>(FXCollections.observableArrayList());
    private final ReadOnlyStringWrapper answer = new ReadOnlyStringWrapper("");

    public KeptViewModel(SessionViewModel model, KeptSittings kept, BackgroundRunner runner) {
        this.model = model;
        this.kept = kept;
        this.runner = runner;
        list();
    }

    private void list() {
        OpenSession open = model.open();
        runner.run(() -> kept.all(open), this::show, failure -> answer.set(String.valueOf(failure.getMessage())));
    }

    private void show(List<Sitting> all) {
        sittings.setAll(all);
        answer.set(
                all.isEmpty()
                        ? "Nothing is kept yet: the first edit of a sitting keeps the session as it was before."
                        : "The session as it was before each of the last sittings; ten are kept. Going back keeps the present one too.");
    }

    /** Puts a kept session in the place of the present one; {@link #answerProperty()} says why if it cannot be done. */
    public void back(Sitting sitting) {
        if (!sitting.isReadable()) {
            answer.set("This one cannot be read: " + sitting.difference());
            return;
        }
        String name = sitting.version().name();
        model.act(open -> kept.back(open, name), answer::set, after -> list());
    }

    /** The newest first. */
    public ReadOnlyListProperty<Sitting> sittingsProperty() {
        return sittings.getReadOnlyProperty();
    }

    /** One sentence above the list. */
    public ReadOnlyStringProperty answerProperty() {
        return answer.getReadOnlyProperty();
    }
}
