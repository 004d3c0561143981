package org.pullproof.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.advice.Appraisal;
import org.pullproof.app.OpenSession;
import org.pullproof.app.Toolbox;
import org.pullproof.changes.Call;
import org.pullproof.changes.JudgedChange;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.health.HealthFindings.Verdict;
import org.pullproof.testing.Tools;
import org.pullproof.units.Figures;
import org.pullproof.units.UnitSystem;

/** Holds the program against the truth that the simulated engine planted in the demo sessions. */
class DemoSessionsTest {
    private final Toolbox tools = Tools.ofTheProgram();

    private OpenSession open(String demo) throws IOException {
        return tools.desk().open(Path.of("demo-sessions", demo));
    }

    private Appraisal appraisal(String demo) throws IOException {
        return tools.appraise().of(open(demo), new Figures(UnitSystem.US));
    }

    private JudgedChange change(String name) throws IOException {
        return appraisal("grey-coupe").changes().changes().stream()
                .filter(change -> change.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"grey-coupe", "green-hatch", "blue-wagon"})
    void aDemoOpensWithoutAProblem(String demo) throws IOException {
        assertThat(open(demo).problems()).isEmpty();
        assertThat(tools.checkSession().check(Path.of("demo-sessions", demo))).isEmpty();
    }

    /** Planted, see {@link GreyCoupeStory}: percent over base, differences of its constants. */
    @ParameterizedTest
    @CsvSource({
        "base → timing 32°, 3.0, GAIN",
        "timing 32° → timing 35°, -0.1, SAME",
        "timing 32° → jets two up, -1.8, LOSS",
        "timing 32° → cold-air duct, 2.0, GAIN",
        "cold-air duct → spacer, 0.1, SAME",
        "cold-air duct → wider pipe, 1.5, GAIN"
    })
    void aPlantedChangeIsFoundWithinItsInterval(String name, double planted, Call call) throws IOException {
        JudgedChange found = change(name);
        assertThat(found.call()).isEqualTo(call);
        assertThat(planted).isBetween(found.low() - 0.3, found.high() + 0.3);
    }

    @Test
    void baseToNowFindsAllThatWasPlanted() throws IOException {
        JudgedChange all = appraisal("grey-coupe").changes().baselineToNow().orElseThrow();
        assertThat(all.differencePercent()).isCloseTo(GreyCoupeStory.PIPE, within(1.2));
    }

    @Test
    void theHealthyEngineIsSound() throws IOException {
        assertThat(appraisal("grey-coupe").health().verdict()).isEqualTo(Verdict.SOUND);
    }

    @Test
    void theLeakingValveIsFoundInItsCylinderAndInNoOther() throws IOException {
        List<Integer> low = appraisal("green-hatch").health().cylinders().stream()
                .filter(cylinder -> cylinder.state() != State.LEVEL)
                .map(cylinder -> cylinder.number())
                .toList();
        assertThat(low).containsExactly(3);
        assertThat(appraisal("green-hatch").next().action()).contains("lash");
    }

    @Test
    void nothingIsSettledBeforePurchaseWithoutOilPressure() throws IOException {
        Appraisal wagon = appraisal("blue-wagon");
        assertThat(wagon.health().verdict()).isEqualTo(Verdict.NOT_SETTLED);
        assertThat(wagon.next().needs())
                .satisfies(needs -> assertThat(
                                wagon.session().car().access().orElseThrow().permits(needs))
                        .isTrue());
    }
}
