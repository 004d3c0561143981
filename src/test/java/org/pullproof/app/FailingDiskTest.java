package org.pullproof.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.car.Fact;
import org.pullproof.files.BadFileException;
import org.pullproof.files.SessionFolder;
import org.pullproof.files.WholeFile;
import org.pullproof.session.Edit;
import org.pullproof.session.Session;
import org.pullproof.testing.FileTree;
import org.pullproof.testing.OnePull;
import org.pullproof.testing.Tools;

/** Disks that are full, gone or written by something else: the work stays in memory and can be saved elsewhere. */
class FailingDiskTest {
    @TempDir
    private Path place;

    private Path car;
    private boolean full;
    private final SessionDesk desk = new SessionDesk(
            (name, bytes, how) -> OnePull.of(1),
            Clock.systemUTC().withZone(ZoneOffset.UTC),
            folder -> new SessionFolder(folder, new WholeFile(this::move)));
    private OpenSession open;

    /** A full disk: nothing more goes into the old folder. */
    private void move(Path from, Path to) throws IOException {
        if (full && to.startsWith(car)) {
            throw new IOException("No space left on device");
        }
        Files.move(from, to, java.nio.file.StandardCopyOption.ATOMIC_MOVE);
    }

    @BeforeEach
    void aCarWithOneEdit() throws Exception {
        car = place.resolve("car");
        desk.create(car, "car", Tools.profile("i4-distributor"));
        open = desk.edit(desk.openToEdit(car), tell("dies"));
    }

    private static Edit tell(String runs) {
        return new Edit("Tell", session -> session.withCar(session.car().with(Fact.RUNS, runs)));
    }

    private Session onDisk(Path folder) throws BadFileException {
        return new SessionFolder(folder).read();
    }

    private void refused(String... words) {
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> desk.edit(open, tell("no")))
                .satisfies(refusal -> assertThat(refusal.getMessage()).contains(words));
    }

    private void savesElsewhereAndGoesOn() throws Exception {
        Path copy = place.resolve("copy");
        OpenSession saved = desk.copyTo(open, copy);
        assertThat(onDisk(copy)).isEqualTo(open.session());
        OpenSession next = desk.edit(saved, tell("no"));
        assertThat(onDisk(copy)).isEqualTo(next.session());
        assertThat(desk.undo(next).session()).isEqualTo(open.session());
    }

    @Test
    void aFullDiskLeavesTheOldDocumentAndNoPart() throws Exception {
        full = true;
        refused("the disk is full", "the session on disk is as it was", "save a copy elsewhere");
        assertThat(onDisk(car)).isEqualTo(open.session());
        assertThat(FileTree.names(car)).containsExactly("kept", "session.json", "session.lock");
        savesElsewhereAndGoesOn();
    }

    @Test
    void aFullDiskRefusesTheFirstEditOfASittingBecauseNothingCouldBeKept() throws Exception {
        open = desk.open(car);
        full = true;
        refused("kept", "the disk is full");
        full = false;
        assertThat(desk.edit(open, tell("no")).session().car().runs()).isPresent();
    }

    @Test
    void aFolderThatVanishedIsNotMadeAnew() throws Exception {
        FileTree.delete(car);
        refused("the session is no longer here", "save a copy elsewhere");
        assertThat(car).doesNotExist();
        savesElsewhereAndGoesOn();
    }

    @Test
    void aFolderThatComesBackIsGoneOnWith() throws Exception {
        Files.move(car, place.resolve("unplugged"));
        refused("the session is no longer here");
        Files.move(place.resolve("unplugged"), car);
        assertThat(desk.edit(open, tell("no")).session()).isEqualTo(onDisk(car));
    }

    @Test
    void whatAnEditorChangedMeanwhileIsNotWrittenOverButReadAgain() throws Exception {
        Path document = car.resolve("session.json");
        Files.writeString(document, Files.readString(document).replace("\"dies\"", "\"yes\""));
        refused("something else changed the session", "Read it again", "save a copy");

        OpenSession again = desk.readAgain(open);

        assertThat(again.session()).isEqualTo(onDisk(car)).isNotEqualTo(open.session());
        OpenSession undone = desk.undo(again);
        assertThat(undone.session()).isEqualTo(open.session()).isEqualTo(onDisk(car));
        assertThat(desk.edit(undone, tell("no")).session()).isEqualTo(onDisk(car));
    }

    @Test
    void whatAnEditorChangedMeanwhileStaysWhereACopyIsSaved() throws Exception {
        Path document = car.resolve("session.json");
        Files.writeString(document, Files.readString(document).replace("\"dies\"", "\"yes\""));
        savesElsewhereAndGoesOn();
        assertThat(Files.readString(document)).contains("\"yes\"");
    }

    @Test
    void aFileOnlyLaidOutAnewIsNoOtherDocument() throws Exception {
        Path document = car.resolve("session.json");
        Files.writeString(document, Files.readString(document).replaceAll("\n *", " "));
        assertThat(desk.edit(open, tell("no")).session()).isEqualTo(onDisk(car));
    }

    @Test
    void aFileLeftHalfEditedIsNotWrittenOverAndSaysWhereItIsWrong() throws Exception {
        Files.writeString(car.resolve("session.json"), "{ \"format\": 2,");
        refused("something else changed the session");
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> desk.readAgain(open))
                .withMessageContaining("session.json, line 1, column 15: this is not JSON");
        savesElsewhereAndGoesOn();
    }

    @Test
    void nothingChangedIsNothingToReadAgain() throws Exception {
        assertThat(desk.readAgain(open)).isSameAs(open);
    }

    @Test
    void aCopyIsNotSavedOverAnotherSession() throws Exception {
        Path other = place.resolve("other");
        Session before =
                desk.create(other, "other", Tools.profile("i4-distributor")).session();
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> desk.copyTo(open, other))
                .withMessageContaining("a session lies here already");
        assertThat(onDisk(other)).isEqualTo(before);
    }

    @Test
    void theCopyHasThePullFilesAndKeptVersions() throws Exception {
        desk.keep(open, folder -> folder.keep("run.csv", new byte[] {1}));
        OpenSession saved = desk.copyTo(open, place.resolve("copy"));
        assertThat(saved.problems()).isEmpty();
        assertThat(FileTree.names(place.resolve("copy/pulls"))).containsExactly("run.csv");
        assertThat(FileTree.names(place.resolve("copy/kept"))).hasSize(1);
    }

    @Test
    void aFolderThatMayNotBeWrittenIsOpenedToBeLookedAt() throws Exception {
        desk.letGo();
        // a folder in the place of the lock cannot be opened for writing, whoever runs the test
        Files.delete(car.resolve("session.lock"));
        Files.createDirectory(car.resolve("session.lock"));
        open = desk.openToEdit(car);
        assertThat(open.session().car().runs()).isPresent();
        assertThat(open.problems()).singleElement().asString().contains("it is open to be looked at");
        refused("nothing was written: ", "save a copy elsewhere");
        savesElsewhereAndGoesOn();
    }
}
