package org.pullproof.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.car.Fact;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.FileTime;
import org.pullproof.dyno.HowRead;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFile;
import org.pullproof.dyno.PullTable;
import org.pullproof.dyno.Trace;
import org.pullproof.files.BadFileException;
import org.pullproof.files.FileBytes;
import org.pullproof.files.SessionFolder;
import org.pullproof.session.Edit;
import org.pullproof.session.Problem;
import org.pullproof.session.Session;
import org.pullproof.testing.FileTree;
import org.pullproof.testing.OnePull;
import org.pullproof.testing.Tools;

class SessionDeskTest {
    private static final LocalDateTime NOON = LocalDateTime.of(2026, 6, 14, 12, 0);

    /** The first byte of the file is the power in W, so that a test sees which file was read. */
    private final SessionDesk desk = new SessionDesk(
            (name, bytes, how) -> OnePull.of(firstByte(bytes)),
            Clock.fixed(NOON.toInstant(ZoneOffset.UTC), ZoneOffset.UTC));

    @TempDir
    private Path folder;

    private OpenSession open;

    @BeforeEach
    void aSession() throws Exception {
        open = desk.create(folder.resolve("car"), "car", Tools.profile("i4-distributor"));
    }

    private static byte firstByte(FileBytes bytes) throws BadFileException {
        try (InputStream in = bytes.open()) {
            return in.readNBytes(1)[0];
        } catch (IOException failure) {
            throw new BadFileException("run.csv", "", "it could not be read");
        }
    }

    private static Edit tell(Fact fact, String text) {
        return new Edit("Tell", session -> session.withCar(session.car().with(fact, text)));
    }

    private Edit addPull(byte power) throws Exception {
        PullFile file = new SessionFolder(open.folder()).keep("run.csv", new byte[] {power});
        Pull pull = new Pull("as-found", 1, file, NOON, List.of(), Optional.empty(), Optional.empty());
        DynoDay day = new DynoDay(LocalDate.of(2026, 6, 14), List.of(), List.of(pull));
        return new Edit("Add pull", session -> session.withDays(List.of(day)));
    }

    private Session onDisk() throws Exception {
        return new SessionFolder(open.folder()).read();
    }

    @Test
    void anEditIsOnDiskWhenItReturns() throws Exception {
        OpenSession next = desk.edit(open, tell(Fact.RUNS, "dies"));
        assertThat(onDisk()).isEqualTo(next.session()).isNotEqualTo(open.session());
    }

    @Test
    void aFileOfManyPullsIsReadOnceAndAPullItLacksIsNamed() throws Exception {
        PullFile file = new SessionFolder(open.folder()).keep("run.csv", new byte[] {7});
        List<Pull> pulls = IntStream.rangeClosed(1, 3)
                .mapToObj(part -> new Pull(
                        "as-found",
                        part,
                        file,
                        NOON,
                        Optional.empty(),
                        HowRead.by(List.of()).ofPart(part),
                        Optional.empty(),
                        Optional.empty()))
                .toList();
        desk.edit(
                open,
                new Edit(
                        "Add pulls",
                        session ->
                                session.withDays(List.of(new DynoDay(LocalDate.of(2026, 6, 14), List.of(), pulls)))));
        AtomicInteger read = new AtomicInteger();
        SessionDesk counting = new SessionDesk(
                (name, bytes, how) -> {
                    read.incrementAndGet();
                    Trace trace = OnePull.of(1).trace();
                    return new PullTable(
                            List.of(trace, trace), new FileTime(Optional.empty(), Optional.empty()), List.of());
                },
                Clock.systemUTC());
        OpenSession opened = counting.open(open.folder());
        assertThat(read).hasValue(1);
        assertThat(opened.traces()).containsOnlyKeys("as-found-1", "as-found-2");
        assertThat(opened.problems())
                .extracting(Problem::toString)
                .containsExactly("run.csv: pull 3 of the file is wanted, and it holds 2.");
    }

    @Test
    void undoAndRedoAreOnDiskToo() throws Exception {
        OpenSession edited = desk.edit(open, tell(Fact.RUNS, "dies"));
        OpenSession undone = desk.undo(edited);
        assertThat(onDisk()).isEqualTo(open.session());
        desk.redo(undone);
        assertThat(onDisk()).isEqualTo(edited.session());
    }

    @Test
    void aRefusedEditLeavesTheDiskAsItWas() throws Exception {
        String before = Files.readString(open.folder().resolve("session.json"));
        assertThatIllegalArgumentException().isThrownBy(() -> desk.edit(open, tell(Fact.RUNS, "maybe")));
        assertThat(Files.readString(open.folder().resolve("session.json"))).isEqualTo(before);
    }

    @Test
    void anEditThatCannotBeWrittenIsToldAndTheSessionStaysAsItWas() throws Exception {
        FileTree.delete(open.folder());
        Files.writeString(open.folder(), "a file where the folder was");
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> desk.edit(open, tell(Fact.RUNS, "dies")))
                .withMessageContaining("nothing was written: ", "save a copy elsewhere");
        assertThat(open.session().car().runs()).isEmpty();
    }

    @Test
    void figuresOfANewPullAreReadWithTheEdit() throws Exception {
        OpenSession next = desk.edit(open, addPull((byte) 7));
        assertThat(next.traces())
                .hasEntrySatisfying(
                        "as-found-1", trace -> assertThat(trace.watt(0)).isEqualTo(7));
    }

    @Test
    void afterUndoAPullOfTheSameNameShowsItsOwnFile() throws Exception {
        OpenSession first = desk.undo(desk.edit(open, addPull((byte) 7)));
        OpenSession second = desk.edit(first, addPull((byte) 9));
        assertThat(second.traces())
                .hasEntrySatisfying(
                        "as-found-1", trace -> assertThat(trace.watt(0)).isEqualTo(9));
    }

    @Test
    void aLostPullFileIsToldAndDoesNotStopTheRest() throws Exception {
        desk.edit(open, addPull((byte) 7));
        Files.delete(open.folder().resolve("pulls/run.csv"));
        OpenSession reopened = desk.open(open.folder());
        assertThat(reopened.traces()).isEmpty();
        assertThat(reopened.problems()).singleElement().asString().contains("run.csv: the kept pull file is lost");
    }

    @Test
    void checkTellsAnEditedPullFile() throws Exception {
        desk.edit(open, addPull((byte) 7));
        Files.write(open.folder().resolve("pulls/run.csv"), new byte[] {8});
        assertThat(new CheckSession(desk).check(open.folder()))
                .singleElement()
                .asString()
                .contains("run.csv: the file is not the one that was taken in");
    }

    @Test
    void aFolderWithASessionIsNotOverwritten() {
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> desk.create(open.folder(), "other", Tools.profile("i4-distributor")))
                .withMessageContaining("a session lies here already");
    }
}
