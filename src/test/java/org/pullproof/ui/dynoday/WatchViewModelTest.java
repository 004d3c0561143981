package org.pullproof.ui.dynoday;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.app.Ticks;
import org.pullproof.app.WatchFolder;
import org.pullproof.ui.DynoFixture;
import org.pullproof.ui.SheetFixture;

/** Clock and ticks are moved by hand. */
class WatchViewModelTest {
    private final DynoPictures.Acts acts = new DynoPictures.Acts();
    private final DynoDayViewModel day =
            DynoPictures.model(SheetFixture.model(DynoFixture.open(), DynoFixture::appraise), acts);
    private final HandTicks ticks = new HandTicks();
    private final WatchViewModel watch =
            new WatchViewModel(new WatchFolder(ticks, ticks), day.takingIn(), Runnable::run);

    @TempDir
    private Path folder;

    @BeforeEach
    void watchTheFolder() {
        watch.watch(folder);
    }

    @Test
    void aNewFileBecomesAPullOfTheSetupChosenNow() throws Exception {
        day.setupProperty().set("timing 34");
        Path file = Files.writeString(folder.resolve("run.csv"), "rpm,kW\n");

        ticks.pass(3);

        assertThat(acts.taken).containsExactly(file);
        assertThat(acts.setup).isEqualTo("timing 34");
    }

    @Test
    void stoppedItTakesNothingMore() throws Exception {
        watch.stop();
        Files.writeString(folder.resolve("run.csv"), "rpm,kW\n");

        ticks.pass(5);

        assertThat(acts.taken).isEmpty();
        assertThat(watch.folderProperty().get()).isEmpty();
    }

    @Test
    void aFolderThatIsNotThereIsSaid() {
        watch.watch(folder.resolve("nowhere"));

        assertThat(watch.folderProperty().get()).isEmpty();
        assertThat(day.problemProperty().get()).contains("nowhere");
    }

    /** A second passes at each tick. */
    private static final class HandTicks extends Clock implements Ticks {
        private Instant now = Instant.parse("2026-06-14T12:00:00Z");
        private Runnable act = () -> {};

        void pass(int seconds) {
            for (int i = 0; i < seconds; i++) {
                now = now.plusSeconds(1);
                act.run();
            }
        }

        @Override
        public Running every(Duration period, Runnable next) {
            act = next;
            return () -> act = () -> {};
        }

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }
}
