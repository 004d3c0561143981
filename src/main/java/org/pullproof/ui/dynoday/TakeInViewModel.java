package org.pullproof.ui.dynoday;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.pullproof.app.ForeignTable;
import org.pullproof.dyno.ColumnChoice;
import org.pullproof.session.Problem;
import org.pullproof.ui.dynoday.DynoActs.Taking;
import org.pullproof.ui.shell.SessionViewModel;

/** Taking in pull files: for which setup, how far it is, what was left out, and the file whose columns have to be told. */
public final class TakeInViewModel {
    private final SessionViewModel model;
    private final DynoActs acts;
    private final Executor screen;
    private final StringProperty setup = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper progress = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Optional<MappingViewModel>> mapping =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<Going> going = Optional.empty();
    private List<Problem> left = List.of();

    /**
     * @param screen runs what touches the screen
     */
    TakeInViewModel(SessionViewModel model, DynoActs acts, Executor screen) {
        this.model = model;
        this.acts = acts;
        this.screen = screen;
    }

    /** Name of the setup that files are taken in for. */
    public StringProperty setupProperty() {
        return setup;
    }

    /** Why files could not be taken in, or empty. */
    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** How far taking in is, or empty when nothing is taken in: "reading 3 of 12". */
    public ReadOnlyStringProperty progressProperty() {
        return progress.getReadOnlyProperty();
    }

    /** The file whose columns have to be told. */
    public ReadOnlyObjectProperty<Optional<MappingViewModel>> mappingProperty() {
        return mapping.getReadOnlyProperty();
    }

    /** What was left out of the files taken in last, one sentence each. */
    public List<String> leftOut() {
        return left.stream().map(Problem::toString).toList();
    }

    /** Takes in files for the setup named; why not stands at {@link #problemProperty()}. */
    public void take(List<Path> files) {
        take(files, List.of());
    }

    private void take(List<Path> files, List<ColumnChoice> columns) {
        if (files.isEmpty()) {
            return;
        }
        if (setup.get().isBlank()) {
            problem.set("Say first which setup these pulls were made on.");
            return;
        }
        problem.set("");
        left = List.of();
        mapping.set(Optional.empty());
        Going heard = new Going(files);
        going = Optional.of(heard);
        model.act(acts.addPulls(new Taking(files, setup.get().strip(), columns), heard), heard::refused);
    }

    /** Takes the files in again by the columns a person has told. */
    public void takeAsTold() {
        mapping.get().ifPresent(told -> take(told.files(), told.columns()));
    }

    /** Says why something could not be taken in. */
    void say(String why) {
        problem.set(why);
    }

    /** Leaves the file whose columns were asked for. */
    public void leave() {
        mapping.set(Optional.empty());
    }

    /** Stops what is being taken in; the session stays as it was. */
    public void stop() {
        going.ifPresent(Going::stop);
    }

    /** One act of taking in. It is told away from the screen, and shows there what it heard. */
    private final class Going implements DynoActs.Heard {
        private final List<Path> files;
        private final AtomicBoolean stopped = new AtomicBoolean();
        private volatile Optional<ForeignTable> foreign = Optional.empty();

        Going(List<Path> files) {
            this.files = List.copyOf(files);
        }

        void stop() {
            stopped.set(true);
        }

        @Override
        public boolean stopped() {
            return stopped.get();
        }

        @Override
        public void at(int done, int of) {
            screen.execute(() -> progress.set(of > 1 ? "reading " + (done + 1) + " of " + of : "reading"));
        }

        @Override
        public void left(List<Problem> problems) {
            screen.execute(() -> {
                left = List.copyOf(problems);
                progress.set("");
            });
        }

        @Override
        public void foreign(ForeignTable table) {
            foreign = Optional.of(table);
        }

        void refused(String why) {
            progress.set("");
            problem.set(why);
            mapping.set(foreign.map(table -> new MappingViewModel(table, files)));
        }
    }
}
