package org.pullproof.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.Pull;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Note;
import org.pullproof.testing.Tools;
import org.pullproof.units.Quantity;
import org.pullproof.units.RpmRange;
import org.pullproof.units.Unit;
import org.pullproof.weather.Readings;
import org.pullproof.weather.Standard;

/** Air and pulls as a person takes them in, on a real folder. */
class DynoActsTest {
    private static final LocalDateTime AFTERNOON = LocalDateTime.parse("2026-06-14T13:40");

    private final Toolbox tools = Tools.ofTheProgram();

    @TempDir
    private Path place;

    private OpenSession open;

    @BeforeEach
    void aSession() throws Exception {
        open = tools.desk().create(place.resolve("car"), "grey coupé", Tools.profile("v8-distributor-order-a"));
    }

    @Test
    void airIsKeptWithItsDayAsTyped() throws Exception {
        OpenSession next = tools.recordAir()
                .record(open, Readings.air("98.20kPa", "30C", "60%"))
                .open();
        assertThat(next.session().days())
                .containsExactly(new DynoDay(
                        LocalDate.of(2026, 6, 14), List.of(Readings.air("98.20kPa", "30C", "60%")), List.of()));
    }

    @Test
    void airThatCannotBeAtTheGarageIsRefusedAndNotKept() throws Exception {
        OpenSession hill = tools.setFacts().set(open, Map.of("elevation", "600m"));
        assertThatThrownBy(() -> tools.recordAir().record(hill, Readings.air("101.3kPa", "30C", "60%")))
                .isInstanceOf(BadFileException.class)
                .hasMessageContaining("looks like an altimeter setting");
        assertThat(tools.desk().open(hill.folder()).session().days()).isEmpty();
    }

    @Test
    void pullsAreNumberedInTheOrderOfTheFiles() throws Exception {
        OpenSession next =
                add(wanted("base", file("b.csv", 100), file("a.csv", 101))).open();
        assertThat(pulls(next))
                .extracting(pull -> pull.id() + " " + pull.file().original())
                .containsExactly("base-1 b.csv", "base-2 a.csv");
    }

    @Test
    void aNewSetupIsReachedByAChangeFromThePresentOne() throws Exception {
        OpenSession next = add(wanted("timing 32", file("a.csv", 100))).open();
        assertThat(next.session().present().name()).isEqualTo("timing 32");
        assertThat(next.session().changes()).singleElement().satisfies(change -> {
            assertThat(change.from()).isEqualTo("as-found");
            assertThat(change.to()).isEqualTo(next.session().presentSetup());
            assertThat(change.time()).isEqualTo(AFTERNOON);
        });
    }

    @Test
    void withoutASetupThePresentOneIsMeant() throws Exception {
        OpenSession next = add(AddPulls.Wanted.of(List.of(file("a.csv", 100)), Optional.empty()))
                .open();
        assertThat(pulls(next)).extracting(Pull::setup).containsExactly("as-found");
        assertThat(next.session().changes()).isEmpty();
    }

    @Test
    void levelsAreKeptWithTheSetup() throws Exception {
        Quantity timing = Quantity.of("32", Unit.DEGREE);
        Quantity jet = Quantity.parse("72");
        AddPulls.Wanted levelled = new AddPulls.Wanted(
                List.of(file("a.csv", 100)),
                Optional.of("timing 32"),
                Optional.of(AFTERNOON),
                Map.of("timing", timing, "jet", jet),
                List.of(),
                Optional.empty());
        Path folder = add(levelled).open().folder();
        assertThat(tools.desk().open(folder).session().present().levels())
                .containsOnly(Map.entry("timing", timing), Map.entry("jet", jet));
    }

    @Test
    void theFileIsKeptByteForByte() throws Exception {
        Path file = file("a.csv", 100);
        OpenSession next = add(wanted("base", file)).open();
        assertThat(next.folder()
                        .resolve("pulls")
                        .resolve(pulls(next).get(0).file().kept()))
                .hasSameBinaryContentAs(file);
    }

    @Test
    void thePullsFiguresAreThereAtOnceAndAfterOpeningAgain() throws Exception {
        OpenSession next = add(wanted("base", file("a.csv", 100))).open();
        assertThat(next.traces()).containsOnlyKeys("base-1");
        assertThat(tools.desk().open(next.folder()).traces()).containsOnlyKeys("base-1");
    }

    @Test
    void oneBadFileAndNothingIsTakenIn() throws Exception {
        Path good = file("a.csv", 100);
        Path bad = Files.writeString(place.resolve("bad.csv"), "time,boost\n1,2\n2,3\n");
        assertThatThrownBy(() -> add(wanted("base", good, bad)))
                .isInstanceOf(BadFileException.class)
                .hasMessage(bad + ", line 1: the file has no rpm column; columns found: time, boost."
                        + " If one of them is it, say --column rpm=HEADER.");
        assertThat(tools.desk().open(open.folder()).session()).isEqualTo(open.session());
        assertThat(open.folder().resolve("pulls")).doesNotExist();
    }

    @Test
    void everyBadFileIsNamedAtOnce() throws Exception {
        Path bad = Files.writeString(place.resolve("bad.csv"), "time,boost\n1,2\n2,3\n");
        Path lost = place.resolve("lost.csv");
        assertThatThrownBy(() -> add(wanted("base", bad, lost)))
                .isInstanceOfSatisfying(
                        BadFileException.class,
                        both -> assertThat(both.problems()).hasSize(2))
                .hasMessageContaining("lost.csv");
    }

    @Test
    void aStandardToldIsKeptButNoCorrectionIsNone() throws Exception {
        assertThat(corrected(Standard.SAE_J607)).contains(Standard.SAE_J607);
        assertThat(corrected(Standard.NONE)).isEmpty();
    }

    private Optional<Standard> corrected(Standard told) throws Exception {
        AddPulls.Wanted wanted = new AddPulls.Wanted(
                List.of(file("a.csv", 100)),
                Optional.of("base"),
                Optional.of(AFTERNOON),
                Map.of(),
                List.of(),
                Optional.of(told));
        AddPulls.Outcome outcome = add(wanted);
        tools.desk().undo(outcome.open());
        return outcome.added().get(0).correctedAlready();
    }

    @Test
    void takingPullsInIsOneEditToUndo() throws Exception {
        OpenSession next =
                add(wanted("base", file("a.csv", 100), file("b.csv", 101))).open();
        assertThat(next.history().undoName()).contains("Add 2 pulls on base");
        assertThat(tools.desk().undo(next).session()).isEqualTo(open.session());
    }

    @Test
    void anExcludedPullIsKeptWithItsReason() throws Exception {
        OpenSession next = add(wanted("base", file("a.csv", 100))).open();
        OpenSession excluded = tools.excludePull().exclude(next, "base-1", "wheel spin");
        assertThat(pulls(excluded))
                .singleElement()
                .satisfies(pull -> assertThat(pull.excluded()).contains("wheel spin"));
        assertThat(tools.excludePull().countAgain(excluded, "base-1").session()).isEqualTo(next.session());
    }

    @Test
    void excludingNeedsAReasonAndAPull() throws Exception {
        OpenSession next = add(wanted("base", file("a.csv", 100))).open();
        assertThatThrownBy(() -> tools.excludePull().exclude(next, "base-1", " "))
                .hasMessageContaining("with a reason");
        assertThatThrownBy(() -> tools.excludePull().exclude(next, "base-9", "wheel spin"))
                .hasMessage("There is no pull \"base-9\" in this session.");
    }

    @Test
    void stoppedHalfWayNothingIsTakenInAndHowFarItWasIsTold() throws Exception {
        List<String> heard = new ArrayList<>();
        Progress stopsAtTheSecond = new Progress() {
            @Override
            public void at(int done, int of) {
                heard.add(done + " of " + of);
            }

            @Override
            public boolean stopped() {
                return heard.size() == 2;
            }
        };
        AddPulls.Wanted three = wanted("base", file("a.csv", 100), file("b.csv", 101), file("c.csv", 102));
        assertThatThrownBy(() -> tools.addPulls().add(open, three, stopsAtTheSecond))
                .hasMessage("Stopped: no pull was taken in, the session is as it was.");
        assertThat(heard).containsExactly("0 of 3", "1 of 3");
        assertThat(tools.desk().open(open.folder()).session().days()).isEmpty();
        assertThat(open.folder().resolve("pulls")).doesNotExist();
    }

    /** A table of several megabytes; whoever stops it is asked many times while it is read. */
    @Test
    void aLargeFileIsStoppedInItsMiddle() throws Exception {
        Path large = place.resolve("large.csv");
        try (BufferedWriter lines = Files.newBufferedWriter(large)) {
            lines.write("rpm,power kW\n");
            for (int row = 0; row < 200_000; row++) {
                lines.write((2000 + row % 4000) + ",40.25\n");
            }
        }
        AtomicInteger asked = new AtomicInteger();
        Progress stopsLater = new Progress() {
            @Override
            public void at(int done, int of) {}

            @Override
            public boolean stopped() {
                return asked.incrementAndGet() > 50;
            }
        };
        assertThatThrownBy(() -> tools.addPulls().add(open, wanted("base", large), stopsLater))
                .hasMessage("Stopped: no pull was taken in, the session is as it was.");
        assertThat(asked.get()).isLessThan(60);
        assertThat(open.folder().resolve("pulls")).doesNotExist();
    }

    @Test
    void theBandStaysOnceItIsToldAndPulledUnlessAReasonIsGiven() throws Exception {
        OpenSession pulled = add(wanted("base", file("a.csv", 100))).open();
        OpenSession told = tools.setFacts().set(pulled, Map.of("band", "2600-5000rpm"));
        assertThatThrownBy(() -> tools.setFacts().set(told, Map.of("band", "2600-5200rpm")))
                .hasMessageContaining("fixed at 2600-5000rpm")
                .hasMessageContaining("semicolon");
        OpenSession changed = tools.setFacts().set(told, Map.of("band", "2600-5200rpm; the new cam pulls higher"));
        assertThat(changed.session().car().band()).contains(new RpmRange(2600, 5200));
        assertThat(changed.session().notes())
                .extracting(Note::words)
                .containsExactly("Band changed from 2600-5000rpm to 2600-5200rpm: the new cam pulls higher");
    }

    private AddPulls.Outcome add(AddPulls.Wanted wanted) throws BadFileException {
        return tools.addPulls().add(open, wanted);
    }

    private static AddPulls.Wanted wanted(String setup, Path... files) {
        return new AddPulls.Wanted(
                List.of(files), Optional.of(setup), Optional.of(AFTERNOON), Map.of(), List.of(), Optional.empty());
    }

    private Path file(String name, int kilowatt) throws IOException {
        StringBuilder text = new StringBuilder("rpm,power_kW\n");
        for (int rpm = 2000; rpm <= 6000; rpm += 25) {
            text.append(rpm).append(',').append(kilowatt).append('\n');
        }
        return Files.writeString(place.resolve(name), text);
    }

    private static List<Pull> pulls(OpenSession open) {
        return open.session().days().stream()
                .flatMap(day -> day.pulls().stream())
                .toList();
    }
}
