package org.pullproof.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.car.Fact;
import org.pullproof.files.BadFileException;
import org.pullproof.files.KeptVersion;
import org.pullproof.files.SessionFolder;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;
import org.pullproof.testing.FileTree;
import org.pullproof.testing.OnePull;
import org.pullproof.testing.Tools;

class KeptSittingsTest {
    /** A clock that a test can set, also back. */
    private static final class SetClock extends Clock {
        private Instant now = Instant.parse("2026-06-14T12:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            throw new UnsupportedOperationException("One zone is enough here");
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    private final SetClock clock = new SetClock();
    private final SessionDesk desk = new SessionDesk((name, bytes, how) -> OnePull.of(1), clock);
    private final KeptSittings kept = new KeptSittings(desk);

    @TempDir
    private Path folder;

    @BeforeEach
    void aSession() throws Exception {
        desk.create(folder, "car", Tools.profile("i4-distributor"));
    }

    private static Edit odometer(int miles) {
        return new Edit("Tell", session -> session.withCar(session.car().with(Fact.ODOMETER, miles + "mi")));
    }

    private OpenSession sitting(int... miles) throws Exception {
        OpenSession open = desk.open(folder);
        for (int each : miles) {
            open = desk.edit(open, odometer(each));
        }
        return open;
    }

    private List<String> names() throws Exception {
        return FileTree.names(folder.resolve("kept"));
    }

    @Test
    void oneIsKeptEachSittingAsItWasBeforeTheFirstEdit() throws Exception {
        String before = Files.readString(folder.resolve("session.json"));
        sitting(1, 2, 3);
        assertThat(names()).containsExactly("0001_2026-06-14_120000.json");
        assertThat(folder.resolve("kept/0001_2026-06-14_120000.json")).hasContent(before);
    }

    @Test
    void lookingWithoutAnEditKeepsNothing() throws Exception {
        desk.open(folder);
        assertThat(names()).isEmpty();
    }

    @Test
    void undoingEverythingBeginsNoNewSitting() throws Exception {
        OpenSession undone = desk.undo(sitting(1));
        desk.edit(undone, odometer(2));
        assertThat(names()).hasSize(1);
    }

    @Test
    void onTheEleventhDayTheOldestGoes() throws Exception {
        for (int day = 1; day <= 11; day++) {
            clock.now = Instant.parse("2026-06-01T12:00:00Z").plus(day, ChronoUnit.DAYS);
            sitting(day);
        }
        assertThat(names()).hasSize(10).first().asString().startsWith("0002_");
    }

    @Test
    void aRowOfCommandsDoesNotPushOutTheDaysBefore() throws Exception {
        for (int day = 1; day <= 3; day++) {
            clock.now = Instant.parse("2026-06-01T12:00:00Z").plus(day, ChronoUnit.DAYS);
            sitting(day);
        }
        for (int command = 1; command <= 20; command++) {
            clock.now = clock.now.plus(1, ChronoUnit.MINUTES);
            sitting(100 + command);
        }
        assertThat(names()).hasSize(10);
        assertThat(names().subList(0, 3)).allMatch(name -> name.endsWith("_120000.json"));
        assertThat(names().get(9)).isEqualTo("0023_2026-06-04_122000.json");
    }

    @Test
    void withTheClockSetBackTheNewestIsStillTheLastKept() throws Exception {
        sitting(1);
        clock.now = Instant.parse("2019-01-01T00:00:00Z");
        for (int miles = 2; miles <= 11; miles++) {
            sitting(miles);
        }
        assertThat(names()).hasSize(10).first().isEqualTo("0001_2026-06-14_120000.json");
        assertThat(kept.all(desk.open(folder)).get(0).version().number()).isEqualTo(11);
    }

    @Test
    void filesOfOtherNamesAreNeitherListedNorDropped() throws Exception {
        sitting(1);
        Files.writeString(folder.resolve("kept/my own copy.json"), "{}");
        Files.writeString(folder.resolve("kept/0002_2026-13-14_120000.json"), "{}");
        for (int miles = 2; miles <= 12; miles++) {
            sitting(miles);
        }
        assertThat(names()).hasSize(12).contains("my own copy.json", "0002_2026-13-14_120000.json");
        assertThat(kept.all(desk.open(folder))).hasSize(10);
    }

    @Test
    void eachSaysWhatWasDoneSince() throws Exception {
        OpenSession open = sitting(1, 2);
        assertThat(kept.all(open)).singleElement().satisfies(one -> {
            assertThat(one.difference()).isEqualTo("facts of the car changed");
            assertThat(one.version().when()).isEqualTo("2026-06-14 12:00:00");
        });
    }

    @Test
    void goingBackIsAnEditThatUndoTakesBackAndKeepsThePresent() throws Exception {
        Session first = desk.open(folder).session();
        OpenSession open = sitting(1, 2);
        OpenSession back = kept.back(open, names().get(0));
        assertThat(back.session()).isEqualTo(first);
        assertThat(new SessionFolder(folder).read()).isEqualTo(first);
        assertThat(back.history().undoName()).contains("Go back to 2026-06-14 12:00:00");
        assertThat(new SessionFolder(folder).read(newest())).isEqualTo(open.session());
        assertThat(desk.undo(back).session()).isEqualTo(open.session());
    }

    private KeptVersion newest() throws Exception {
        return new SessionFolder(folder).versions().get(0);
    }

    @Test
    void goingBackToAVersionThatIsNotKeptNamesThoseThatAre() throws Exception {
        OpenSession open = sitting(1);
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> kept.back(open, "../session.json"))
                .withMessageContaining("no version \"../session.json\" is kept")
                .withMessageContaining("0001_2026-06-14_120000.json");
    }

    @Test
    void aSpoiledVersionIsListedWithWhatIsWrongAndNotGoneBackTo() throws Exception {
        OpenSession open = sitting(1);
        Files.writeString(folder.resolve("kept").resolve(names().get(0)), "{ \"format\"");
        assertThat(kept.all(open)).singleElement().satisfies(one -> {
            assertThat(one.isReadable()).isFalse();
            assertThat(one.difference()).contains("cut off");
        });
        assertThatExceptionOfType(BadFileException.class).isThrownBy(() -> kept.back(open, names().get(0)));
        assertThat(new SessionFolder(folder).says(open.session())).isTrue();
    }
}
