package org.pullproof.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.app.PullFileReader;
import org.pullproof.cli.CommandHarness;
import org.pullproof.dyno.DynoAssessor;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.HowRead;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFile;
import org.pullproof.dyno.PullFindings;
import org.pullproof.dyno.Trace;
import org.pullproof.engine.Setup;
import org.pullproof.files.BadFileException;
import org.pullproof.files.CsvFile;
import org.pullproof.files.FileBytes;
import org.pullproof.files.TradeConstants;
import org.pullproof.session.Judgement;
import org.pullproof.simulation.LoggedPull.Flaw;
import org.pullproof.units.Figures;
import org.pullproof.units.RpmRange;
import org.pullproof.units.UnitSystem;
import org.pullproof.weather.Correction;
import org.pullproof.weather.Standard;

/** Simulated days, seeded: whatever is wrong with a pull is flagged, and clean pulls are left alone. */
class FlaggedDayTest {
    private static final int PULLS_A_DAY = 8;
    private static final int MOST_FALSE_OF_A_THOUSAND = 5;

    @TempDir
    private Path place;

    /** One day by the command line: six clean pulls with the flawed one as the fourth. */
    @ParameterizedTest
    @CsvSource({
        "SLIP, slip, false",
        "LIFT, lift, false",
        "LEAN, mixture, false",
        "HOT_START, start-window, false",
        "KNOCK, knock, false",
        "HALF_THROTTLE, throttle, false",
        "POWER_IN_HP_HEADED_KW, unit, false",
        "WEAK_SUPPLY, volts, true",
        "MISFIRE, noise, true",
        "STEEP_SWEEP, sweep-rate, true"
    })
    void whatIsWrongIsFlaggedAndTheOthersAreNot(Flaw flaw, String keyword, boolean comparable) throws Exception {
        Random random = new Random(20260614L + flaw.name().length());
        List<Object> words = new ArrayList<>(List.of("add-pulls", session()));
        for (int i = 0; i < 7; i++) {
            words.add(file(i, new LoggedPull(random, i == 3 ? flaw : Flaw.NONE, i).file()));
        }
        words.addAll(List.of("--setup", "base", "--at", "2026-06-14T09:00"));
        JsonNode pulls = taken(words);
        for (int i = 0; i < 7; i++) {
            JsonNode pull = pulls.get(i);
            assertThat(pull.get("flags").toString())
                    .as(pull.get("name").asText())
                    .contains(i == 3 ? "\"" + keyword + ": " : "[]");
            assertThat(pull.get("comparable").asBoolean()).isEqualTo(i != 3 || comparable);
        }
    }

    @Test
    void theSameFileOnceMoreIsFlagged() throws Exception {
        Random random = new Random(3);
        Path file = file(0, new LoggedPull(random, Flaw.NONE, 0).file());
        Path renamed = file(1, Files.readString(file).replace("time s", "Time s"));
        JsonNode pulls = taken(
                List.of("add-pulls", session(), file, file, renamed, "--setup", "base", "--at", "2026-06-14T09:00"));
        assertThat(pulls.at("/0/flags")).isEmpty();
        assertThat(pulls.at("/1/flags").toString())
                .contains("duplicate: the file is the same as that of base-1, byte for byte.");
        assertThat(pulls.at("/2/flags").toString())
                .contains("duplicate: its figures are those of base-1 in another file");
    }

    private Path session() {
        Path session = place.resolve("car");
        CommandHarness pullproof = new CommandHarness();
        pullproof.run("new", session, "--profile", "v8-distributor-order-a", "--name", "grey coupé");
        pullproof.run("set", session, "band=2600-5200rpm");
        return session;
    }

    private Path file(int number, String text) throws Exception {
        return Files.writeString(place.resolve("p" + number + ".csv"), text);
    }

    private JsonNode taken(List<Object> words) throws Exception {
        CommandHarness.Outcome outcome = new CommandHarness().run(words.toArray());
        assertThat(outcome.status()).as(outcome.err()).isZero();
        return new ObjectMapper()
                .readTree(new CommandHarness()
                        .run("pulls", place.resolve("car"), "--json")
                        .out())
                .get("pulls");
    }

    /**
     * 1,000 clean pulls on 125 days: at most 5 of them, 0.5 %, may be flagged. The scatter of the simulated engine is that of a gated day
     * (0.35 % of power, 0.7 °C of coolant, 1 °C of oil); bound and scatter are judgement, common practice without a source. Seeds 1, 2 and 3 flag none.
     */
    @Test
    void cleanPullsAreLeftAlone() throws Exception {
        Random random = new Random(1);
        List<List<String>> falselyFlagged = new ArrayList<>();
        for (int day = 0; day < 125; day++) {
            for (PullFindings pull : cleanDay(random)) {
                if (!pull.flags().isEmpty()) {
                    falselyFlagged.add(pull.flags());
                }
            }
        }
        assertThat(falselyFlagged).hasSizeLessThanOrEqualTo(MOST_FALSE_OF_A_THOUSAND);
    }

    private static List<PullFindings> cleanDay(Random random) throws BadFileException {
        LocalDate date = LocalDate.of(2026, 6, 14);
        List<Pull> pulls = new ArrayList<>();
        Map<String, Trace> traces = new HashMap<>();
        for (int i = 0; i < PULLS_A_DAY; i++) {
            LocalDateTime time = date.atTime(9, 5 * i);
            String digest = String.format("%064x", i + 1);
            Pull pull = new Pull(
                    "base", i + 1, new PullFile("p", "p", digest), time, List.of(), Optional.empty(), Optional.empty());
            byte[] bytes = new LoggedPull(random, Flaw.NONE, i).file().getBytes(StandardCharsets.UTF_8);
            traces.put(
                    pull.id(),
                    new PullFileReader(new CsvFile())
                            .table("p", FileBytes.of(bytes), HowRead.by(List.of()))
                            .trace());
            pulls.add(pull);
        }
        return new DynoAssessor(new Correction(), new TradeConstants().pulls(Judgement.own()))
                .assess(
                        List.of(new DynoDay(date, List.of(), pulls)),
                        List.of(Setup.named("base", "base")),
                        traces,
                        Standard.SAE_J1349,
                        Optional.of(new RpmRange(2600, 5200)),
                        new Figures(UnitSystem.METRIC))
                .pulls();
    }
}
