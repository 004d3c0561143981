package org.pullproof.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Rotor;

class ProfileShelfTest {
    private static final Path PROFILES = Path.of("profiles");

    @TempDir
    private Path folder;

    private BadFileException refused(String find, String replacement) throws Exception {
        String text = Files.readString(PROFILES.resolve("v8-distributor-order-a.json"));
        assertThat(text).contains(find);
        Path edited = folder.resolve("mine.json");
        Files.writeString(edited, text.replace(find, replacement));
        return catchThrowableOfType(BadFileException.class, () -> new ProfileShelf(PROFILES).find(edited.toString()));
    }

    @Test
    void everyProfileOfTheProgramCanBeRead() throws Exception {
        assertThat(new ProfileShelf(PROFILES).all()).hasSizeGreaterThanOrEqualTo(12);
    }

    @Test
    void aProfileIsFoundByItsId() throws Exception {
        EngineProfile profile = new ProfileShelf(PROFILES).find("v8-distributor-order-a");
        assertThat(profile.firing().cylinders()).containsExactly(1, 8, 4, 3, 6, 5, 7, 2);
        assertThat(profile.rotor()).isEqualTo(Rotor.CLOCKWISE);
        assertThat(profile.geometry().boreMetre()).isEqualTo(0.1);
    }

    /** Found by hostile words in every text: such a profile was taken, and then no session of it could be appraised. */
    @Test
    void aTuneUpThatIsNotKnownIsRefusedAtItsPlace() throws Exception {
        assertThat(refused("\"steps\": \"v-distributor\"", "\"steps\": \"v-diesel\""))
                .hasMessageContaining(
                        "mine.json, steps: \"v-diesel\" is no tune-up known here; there are v-distributor,");
    }

    @Test
    void aProfileFileOfOnesOwnIsFoundByItsPath() throws Exception {
        Path mine = Files.copy(PROFILES.resolve("i4-distributor.json"), folder.resolve("mine.json"));
        assertThat(new ProfileShelf(PROFILES).find(mine.toString()).cylinders()).isEqualTo(4);
    }

    @ParameterizedTest
    @CsvSource({
        "\"carburettor\", \"diesel\", fuel, a diesel engine has other pressures",
        "\"layout\": \"v\", \"layout\": \"rotary\", layout, a rotary engine has faces",
        "\"fuel\":, '\"cycle\": \"two-stroke\", \"fuel\":', cycle, a two-stroke engine has ports",
        "\"carburettor\", \"port injection and hybrid drive\", fuel, its voltage kills"
    })
    void anEngineOfAnotherKindIsRefusedWithTheReason(String find, String replacement, String key, String reason)
            throws Exception {
        assertThat(refused(find, replacement))
                .hasMessageContaining("mine.json, " + key)
                .hasMessageContaining("four-stroke engines with spark ignition")
                .hasMessageContaining(reason);
    }

    @ParameterizedTest(name = "{0} → {1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "[1, 8, 4, 3, 6, 5, 7, 2] | [1, 8, 4, 3, 6, 5, 7, 7] | firingOrder | must name each cylinder",
                "[1, 8, 4, 3, 6, 5, 7, 2] | [1, 8, 4, 3, 6, 5, 7] | firingOrder | must name each cylinder",
                "[90, 90, 90, 90, 90, 90, 90, 90] | [90, 90, 90, 90, 90, 90, 90, 80] | intervals | sum to 710°",
                "\"clockwise\" | \"sideways\" | rotor | clockwise, counterclockwise, none",
                "\"bore\": | \"boor\": | '' | the keys are format, id",
                "\"100.0 mm\" | \"100.0\" | bore | has no unit",
                "\"100.0 mm\" | 100 | bore | a text in \" \" belongs here",
                "\"format\": 1 | \"format\": 2 | format | has format 2; this version reads 1",
            })
    void aWrongEntryIsToldWithFileAndPlace(String find, String replacement, String place, String words)
            throws Exception {
        BadFileException bad = refused(find, replacement);
        assertThat(bad).hasMessageContaining("mine.json").hasMessageContaining(words);
        assertThat(bad.problems().get(0).place()).contains(place);
    }

    @Test
    void aCutOffFileIsToldWithLineAndColumn() throws Exception {
        Files.writeString(folder.resolve("cut.json"), "{\n  \"format\": 1,\n  \"id\": ");
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> new ProfileShelf(PROFILES)
                        .find(folder.resolve("cut.json").toString()))
                .withMessageContaining("line 3, column 9")
                .withMessageContaining("cut off");
    }

    @Test
    void anUnknownIdIsToldWithTheIdsThereAre() {
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> new ProfileShelf(PROFILES).find("v9"))
                .withMessageContaining("i4-distributor, ");
    }

    @Test
    void anIdThatIsNotTheFilesNameIsRefusedOnTheShelf() throws Exception {
        Files.copy(PROFILES.resolve("i4-distributor.json"), folder.resolve("other.json"));
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> new ProfileShelf(folder).all())
                .withMessageContaining("other.json, id");
    }
}
