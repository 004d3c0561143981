package org.pullproof.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.units.UnitSystem;

class PreferenceFileTest {
    @TempDir
    private Path folder;

    private PreferenceFile file() {
        return new PreferenceFile(folder.resolve("pullproof"));
    }

    private static Properties properties(String... pairs) {
        Properties properties = new Properties();
        for (int i = 0; i < pairs.length; i += 2) {
            properties.setProperty(pairs[i], pairs[i + 1]);
        }
        return properties;
    }

    @Test
    void whatWasWrittenIsReadBackTheSame() throws Exception {
        Preferences chosen = Preferences.atFirst()
                .withUnits(UnitSystem.METRIC)
                .withNight(true)
                .withOpened(folder.resolve("grey coupé"))
                .withWindow(new Preferences.WindowPlace(-1920, 40, 1280, 800, true))
                .withSheet("health")
                .withHintsShut();
        file().write(chosen);
        assertThat(file().read().preferences()).isEqualTo(chosen);
        assertThat(file().read().problem()).isEmpty();
    }

    @Test
    void onTheFirstStartNothingIsChosenAndNothingIsWrong() {
        assertThat(file().read().preferences()).isEqualTo(Preferences.atFirst());
        assertThat(file().read().problem()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "{", "{\"format\": 9}", "{\"format\": 1, \"units\": \"cubits\", \"night\": true}", "\u0000"})
    void aDamagedFileIsSetAsideAndSaid(String text) throws Exception {
        Files.createDirectories(folder.resolve("pullproof"));
        Path damaged = folder.resolve("pullproof/preferences.json");
        Files.writeString(damaged, text);
        PreferenceFile.Found found = file().read();
        assertThat(found.preferences()).isEqualTo(Preferences.atFirst());
        assertThat(found.problem().orElseThrow().toString())
                .startsWith(damaged.toString())
                .contains("is now " + folder.resolve("pullproof/preferences.damaged.json"));
        assertThat(damaged).doesNotExist();
        assertThat(folder.resolve("pullproof/preferences.damaged.json")).hasContent(text);
    }

    @Test
    void theSessionOpenedLastStandsFirstAndOnlyOnce() {
        Path a = folder.resolve("a");
        Path b = folder.resolve("b");
        Preferences chosen = Preferences.atFirst().withOpened(a).withOpened(b).withOpened(a);
        assertThat(chosen.recent()).containsExactly(a, b);
        assertThat(chosen.last()).contains(a);
    }

    @Test
    void onlyEightSessionsAreRemembered() {
        Preferences many = IntStream.range(0, 20)
                .boxed()
                .reduce(
                        Preferences.atFirst(),
                        (chosen, i) -> chosen.withOpened(folder.resolve("s" + i)),
                        (one, other) -> other);
        assertThat(many.recent()).hasSize(8).startsWith(folder.resolve("s19"));
    }

    /** XDG Base Directory Specification 0.8: $XDG_CONFIG_HOME, or $HOME/.config where it is unset or empty. */
    @Test
    void theFolderFollowsTheBaseDirectorySpecification() {
        Properties linux = properties("os.name", "Linux", "user.home", "/home/u");
        assertThat(PreferenceFile.folder(linux, Map.of("XDG_CONFIG_HOME", "/cfg")))
                .isEqualTo(Path.of("/cfg/pullproof"));
        assertThat(PreferenceFile.folder(linux, Map.of("XDG_CONFIG_HOME", "")))
                .isEqualTo(Path.of("/home/u/.config/pullproof"));
    }

    @Test
    void onWindowsTheFolderLiesInAppdata() {
        Properties windows = properties("os.name", "Windows 11", "user.home", "/home/u");
        assertThat(PreferenceFile.folder(windows, Map.of("APPDATA", "/roaming")))
                .isEqualTo(Path.of("/roaming/pullproof"));
    }

    @Test
    void aPropertyGoesBeforeAll() {
        Properties chosen = properties("pullproof.config", "/stick", "user.home", "/home/u");
        assertThat(PreferenceFile.folder(chosen, Map.of("XDG_CONFIG_HOME", "/cfg")))
                .isEqualTo(Path.of("/stick"));
    }
}
