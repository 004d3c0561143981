package org.pullproof.files;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.car.Fact;
import org.pullproof.dyno.PullFile;
import org.pullproof.engine.EngineProfile;
import org.pullproof.session.Session;
import org.pullproof.testing.Tools;

class SessionFolderTest {
    private final Session rich = RichSession.made();

    @TempDir
    private Path path;

    private SessionFolder folder() {
        return new SessionFolder(path);
    }

    private Path document() {
        return path.resolve("session.json");
    }

    private static Stream<EngineProfile> profiles() throws BadFileException {
        return Tools.ofTheProgram().profiles().all().stream();
    }

    @Test
    void whatWasWrittenIsReadBackTheSame() throws Exception {
        folder().write(rich);
        assertThat(folder().read()).isEqualTo(rich);
    }

    @ParameterizedTest
    @MethodSource("profiles")
    void everyProfileOfTheProgramComesBackTheSameFromASession(EngineProfile profile) throws Exception {
        folder().write(Session.begin("car", profile));
        assertThat(folder().read().profile()).isEqualTo(profile);
    }

    @Test
    void quantitiesAreWrittenAsTyped() throws Exception {
        folder().write(rich);
        assertThat(Files.readString(document()))
                .contains("\"98.20 kPa\"", "\"250,0 m\"", "\"0.040 in\"", "\"158 psi\"");
    }

    @Test
    void theDocumentTellsItsFormatAndWhoWroteIt() throws Exception {
        folder().write(rich);
        assertThat(Files.readString(document()))
                .startsWith("{\n  \"format\": 2,\n  \"writtenBy\": \"Pullproof " + ProgramVersion.text() + "\"");
    }

    @Test
    void theVersionIsTheOneOfTheBuild() {
        assertThat(ProgramVersion.text()).matches("\\d+\\.\\d+\\.\\d+.*");
    }

    @Test
    void aMoveThatFailsLeavesTheOldDocumentAndNothingElse() throws Exception {
        folder().write(rich);
        String before = Files.readString(document());
        SessionFolder failing = new SessionFolder(path, new WholeFile((from, to) -> {
            throw new IOException("No space left on device");
        }));
        Session next = rich.withCar(rich.car().with(Fact.RUNS, "no"));
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> failing.write(next))
                .withMessageContaining("session.json: the disk is full; the session on disk is as it was");
        assertThat(Files.readString(document())).isEqualTo(before);
        assertThat(path).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void theNewDocumentIsCompleteBeforeItIsMovedOverTheOldOne() throws Exception {
        folder().write(rich);
        Session next = rich.withCar(rich.car().with(Fact.RUNS, "no"));
        SessionFolder watched = new SessionFolder(path, new WholeFile((from, to) -> {
            assertThat(Files.readString(from)).contains("\"runs\": \"no\"").endsWith("}\n");
            assertThat(Files.readString(to)).doesNotContain("\"runs\"");
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        }));
        watched.write(next);
        assertThat(folder().read()).isEqualTo(next);
    }

    @Test
    void othersMayReadTheDocumentAsTheSystemAllowsForNewFiles() throws Exception {
        folder().write(rich);
        Path plain = Files.createFile(path.resolve("plain"));
        assertThat(Files.getPosixFilePermissions(document()))
                .isEqualTo(Files.getPosixFilePermissions(plain))
                .contains(PosixFilePermission.OWNER_WRITE);
    }

    @Test
    void aFolderWithoutADocumentSaysHowToMakeOne() {
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> folder().read())
                .withMessageContaining(path.toString())
                .withMessageContaining("pullproof new");
    }

    @Test
    void aNewerFormatIsRefused() throws Exception {
        folder().write(rich);
        edit("\"format\": 2,", "\"format\": 7,");
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> folder().read())
                .withMessageContaining("session.json, format: the file has format 7; this version reads 1 to 2.");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.5, 0.9, 0.999})
    void aCutOffDocumentIsRefusedAndNotTouched(double share) throws Exception {
        folder().write(rich);
        byte[] whole = Files.readAllBytes(document());
        byte[] cut = Arrays.copyOf(whole, (int) (whole.length * share));
        Files.write(document(), cut);
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> folder().read())
                .withMessageContaining("session.json");
        assertThat(Files.readAllBytes(document())).isEqualTo(cut);
    }

    @Test
    void aCutOffDocumentIsToldWithLineAndColumn() throws Exception {
        Files.writeString(document(), "{\n  \"format\": 1,\n  \"car\": {");
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> folder().read())
                .withMessageContaining("session.json, line 3, column 11: the file is cut off here");
    }

    @ParameterizedTest(name = "{0} → {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "\"cylinder\": 3, \"value\": \"158 psi\" | \"cylinder\": 9, \"value\": \"158 psi\" | readings[1].cylinder | cylinder 9 of 8",
                "\"value\": \"158 psi\" | \"value\": \"158\" | readings[1].value | has no unit",
                "\"value\": \"158 psi\" | \"value\": 158 | readings[1].value | a text",
                "\"throttle\": \"open\" | \"throttle\": \"ajar\" | readings[1].throttle | none of open, closed",
                "\"test\": \"balance\" | \"test\": \"balence\" | readings[0].test | none of balance",
                "\"access\": \"own-it\" | \"access\": \"borrowed\" | car.facts.access | access is one of",
                "\"from\": \"timing-32\" | \"from\": \"timing-33\" | changes[1].from | the setups are as-found, timing-32",
                "\"number\": 2, | \"number\": 1, | days[0].pulls[1].number | two pulls with number 1",
                "\"presentSetup\": \"timing-32\" | \"presentSetup\": \"x\" | presentSetup | none of the session's setups",
                "\"kept\": \"run 1.csv\" | \"kept\": \"../session.json\" | days[0].pulls[0].file.kept | no plain file name",
                "\"date\": \"2026-06-14\" | \"date\": \"14.6.2026\" | days[0].date | write 2026-06-14",
                "\"read\": \"94.2 kPa\" | \"read\": \"-273.15 kPa\" | days[0].air[1].pressure | above zero",
                "\"bankAngleDegrees\" | \"bankAngle\" | profile.bankAngle | no key known here",
            })
    void aWrongEntryIsToldWithItsPlace(String find, String replacement, String place, String words) throws Exception {
        folder().write(rich);
        edit(find, replacement);
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> folder().read())
                .withMessageContaining("session.json, " + place + ": ")
                .withMessageContaining(words);
    }

    private void edit(String find, String replacement) throws IOException {
        String text = Files.readString(document()).replaceAll("\n *", " ");
        assertThat(text).contains(find);
        Files.writeString(document(), text.replace(find, replacement));
    }

    @Test
    void aKeyToldTwiceIsRefused() throws Exception {
        folder().write(rich);
        edit("\"format\": 2,", "\"format\": 2, \"format\": 2,");
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> folder().read())
                .withMessageContaining("session.json, line 1, column ");
    }

    private byte[] bytes(PullFile kept) throws IOException {
        try (InputStream in = folder().bytes(kept).open()) {
            return in.readAllBytes();
        }
    }

    @Test
    void aPullFileIsKeptByteForByte() throws Exception {
        byte[] bytes = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF, 'r', 'p', 'm', '\r', '\n', 0, (byte) 0xFF};
        PullFile kept = folder().keep("run.csv", bytes);
        assertThat(Files.readAllBytes(path.resolve("pulls").resolve(kept.kept())))
                .isEqualTo(bytes);
        assertThat(bytes(kept)).isEqualTo(bytes);
    }

    @Test
    void aFileThatChangedSinceItWasMetIsNotKept() throws Exception {
        Path growing = Files.write(path.resolve("growing.csv"), new byte[] {1});
        LargeFile met = LargeFile.at(growing);
        Files.write(growing, new byte[] {1, 2});
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> folder().keep(met))
                .withMessageEndingWith("the file changed while it was read; take it in again once it is whole;"
                        + " the pull was not taken in.");
        assertThat(path.resolve("pulls/growing.csv")).doesNotExist();
    }

    @Test
    void aFileMetWholeIsKeptByteForByte() throws Exception {
        byte[] bytes = new byte[300_000];
        new java.util.Random(1).nextBytes(bytes);
        Path file = Files.write(path.resolve("long.csv"), bytes);
        PullFile kept = folder().keep(LargeFile.at(file));
        assertThat(Files.readAllBytes(path.resolve("pulls/long.csv"))).isEqualTo(bytes);
        assertThat(bytes(kept)).isEqualTo(bytes);
    }

    /** FIPS 180-4, example of one block: SHA-256 of "abc" (the digest printed in NIST's example values). */
    @Test
    void theDigestIsSha256() throws Exception {
        assertThat(folder().keep("abc.csv", "abc".getBytes(UTF_8)).sha256())
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void otherBytesUnderATakenNameGetANumber() throws Exception {
        PullFile first = folder().keep("run.csv", new byte[] {1});
        PullFile second = folder().keep("RUN.csv", new byte[] {2});
        assertThat(first.kept()).isEqualTo("run.csv");
        assertThat(second.kept()).isEqualTo("RUN-2.csv");
        assertThat(bytes(first)).containsExactly(1);
    }

    @Test
    void theSameBytesUnderTheSameNameAreKeptOnce() throws Exception {
        PullFile first = folder().keep("run.csv", new byte[] {1});
        assertThat(folder().keep("run.csv", new byte[] {1})).isEqualTo(first);
    }

    @ParameterizedTest
    @CsvSource(
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "../../etc/passwd,passwd",
                "C:\\dyno\\run 1.csv,run 1.csv",
                "..,pull.csv",
                ".hidden.csv,hidden.csv",
                "a<b>|c?.csv,a_b__c_.csv",
                "con.csv,_con.csv",
                "'',pull.csv",
                "läuft.csv,läuft.csv",
                "run.csv. ,run.csv",
            })
    void aHostileNameBecomesAPlainOne(String original, String kept) throws Exception {
        assertThat(folder().keep(original, new byte[] {1}).kept()).isEqualTo(kept);
        assertThat(path.resolve("pulls").resolve(kept)).isRegularFile();
    }

    @Test
    void aVeryLongNameIsCutAndKeepsItsEnding() throws Exception {
        assertThat(folder().keep("x".repeat(400) + ".csv", new byte[] {1}).kept())
                .hasSize(100)
                .endsWith(".csv");
    }

    @Test
    void aKeptFileThatWasEditedIsToldAndNotUsed() throws Exception {
        PullFile kept = folder().keep("run.csv", new byte[] {1});
        Files.write(path.resolve("pulls/run.csv"), new byte[] {2});
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> folder().bytes(kept))
                .withMessageContaining("run.csv: the file is not the one that was taken in");
    }

    @Test
    void aKeptFileThatIsLostIsTold() throws Exception {
        PullFile kept = folder().keep("run.csv", new byte[] {1});
        Files.delete(path.resolve("pulls/run.csv"));
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> folder().bytes(kept))
                .withMessageContaining("run.csv: the kept pull file is lost");
    }
}
