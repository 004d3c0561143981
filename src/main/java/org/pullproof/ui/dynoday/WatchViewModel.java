package org.pullproof.ui.dynoday;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.pullproof.app.Ticks;
import org.pullproof.app.WatchFolder;
import org.pullproof.files.BadFileException;

/** The folder being watched: what comes into it becomes pulls of the setup that is named at that moment. */
public final class WatchViewModel {
    private final WatchFolder watch;
    private final TakeInViewModel takeIn;
    private final Executor screen;
    private final ReadOnlyObjectWrapper<Optional<Path>> folder = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<Ticks.Running> running = Optional.empty();

    /**
     * @param screen runs what touches the screen
     */
    public WatchViewModel(WatchFolder watch, TakeInViewModel takeIn, Executor screen) {
        this.watch = watch;
        this.takeIn = takeIn;
        this.screen = screen;
    }

    /** The folder being watched. */
    public ReadOnlyObjectProperty<Optional<Path>> folderProperty() {
        return folder.getReadOnlyProperty();
    }

    /** Watches a folder in the place of the one before; why it cannot stands where taking in says it. */
    public void watch(Path wanted) {
        stop();
        try {
            running = Optional.of(watch.watch(
                    wanted, files -> screen.execute(() -> arrived(files)), why -> screen.execute(() -> lost(why))));
            folder.set(Optional.of(wanted));
        } catch (BadFileException unreadable) {
            takeIn.say(String.valueOf(unreadable.getMessage()));
        }
    }

    private void arrived(List<Path> files) {
        if (folder.get().isPresent()) {
            takeIn.take(files);
        }
    }

    private void lost(String why) {
        stop();
        takeIn.say(why);
    }

    /** Watches no longer. */
    public void stop() {
        running.ifPresent(Ticks.Running::close);
        running = Optional.empty();
        folder.set(Optional.empty());
    }
}
