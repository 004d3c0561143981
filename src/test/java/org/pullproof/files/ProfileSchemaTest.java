package org.pullproof.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.TdcTable;

class ProfileSchemaTest {
    private static final Path SCHEMA = Path.of("docs/formats/profile.schema.json");
    private static final Path PROFILES = Path.of("profiles");

    static List<Path> profiles() throws IOException {
        try (Stream<Path> files = Files.list(PROFILES)) {
            return files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("profiles")
    void everyProfileConformsToTheSchema(Path profile) throws IOException {
        assertThat(JsonSchema.read(SCHEMA).problems(Files.readString(profile))).isEmpty();
    }

    @Test
    void everyProfileIsReadAndNamesItsSources() throws IOException {
        List<EngineProfile> shelf = new ProfileShelf(PROFILES).all();
        assertThat(shelf).hasSize(profiles().size()).hasSizeGreaterThanOrEqualTo(12);
        assertThat(shelf).allSatisfy(profile -> assertThat(profile.sources()).isNotEmpty());
    }

    /** Cylinders of one bank of a V with shared pins fire evenly: common practice, no source. */
    @Test
    void eachBankOfTheOddFireEnginesFiresEvenly() throws IOException {
        assertThat(turnsOfTheFirstBank("v6-odd-fire-90")).containsExactly(0, 240, 480);
        assertThat(turnsOfTheFirstBank("v10-coil-on-plug")).containsExactly(0, 144, 288, 432, 576);
    }

    private static List<Integer> turnsOfTheFirstBank(String id) throws IOException {
        EngineProfile profile = new ProfileShelf(PROFILES).find(id);
        return TdcTable.of(profile).rows().stream()
                .filter(row -> profile.banks().get(0).cylinders().contains(row.number()))
                .map(TdcTable.Row::crankDegrees)
                .toList();
    }

    @Test
    void theSchemaRefusesALengthWithoutUnit() throws IOException {
        String wrong =
                Files.readString(PROFILES.resolve("i4-coil-on-plug.json")).replace("86.0 mm", "86.0");
        assertThat(JsonSchema.read(SCHEMA).problems(wrong))
                .singleElement()
                .asString()
                .contains("/bore");
    }
}
