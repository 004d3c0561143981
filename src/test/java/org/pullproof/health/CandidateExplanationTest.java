package org.pullproof.health;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pullproof.health.faults.Candidate;
import org.pullproof.health.faults.Explainer;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.FaultPosterior;
import org.pullproof.health.faults.Part;

/** What speaks for and against a candidate, and which reading is doubtful; figures computed apart from this program. */
class CandidateExplanationTest {
    private static final Candidate EXHAUST = Candidate.of(Fault.EXHAUST_VALVE);
    private static final Map<Part, Double> AGAINST_RINGS = new Explainer(
                    ReferenceCase.named("d3-exhaust-valve-v6").posterior())
            .contributions(4, EXHAUST, Candidate.of(Fault.RINGS));

    @ParameterizedTest
    @CsvSource({"AIR, 5.1", "WET, 2.8", "DRY, 2.1", "FIRST, 1.1", "BALANCE, 0.3", "LEAKDOWN, 0.0"})
    void whereTheAirIsHeardTellsAValveFromRingsAndTheSizeOfTheLeakDoesNot(Part part, double delta) {
        assertThat(AGAINST_RINGS.get(part)).isCloseTo(delta, within(0.05));
    }

    @Test
    void theRivalIsOfAnotherFamily() {
        Explainer explainer =
                new Explainer(ReferenceCase.named("d3-exhaust-valve-v6").posterior());
        assertThat(explainer.bestRival(4, EXHAUST).orElseThrow().fault().family())
                .isNotIn(Fault.Family.VALVE, Fault.Family.SOUND);
    }

    @Test
    void theWildDryReadingIsDoubtful() {
        Map<Part, Double> doubtful =
                new Explainer(ReferenceCase.named("d7-one-wild-reading-i6").posterior()).doubtful(3);
        assertThat(doubtful).containsOnlyKeys(Part.DRY);
        assertThat(doubtful.get(Part.DRY)).isCloseTo(1.00, within(0.005));
    }

    @Test
    void noOtherReadingOfTheTenCasesIsDoubtful() {
        List<String> doubtful = new ArrayList<>();
        for (String name : ReferenceCase.NAMES) {
            FaultPosterior posterior = ReferenceCase.named(name).posterior();
            Explainer explainer = new Explainer(posterior);
            posterior
                    .readings()
                    .cylinders()
                    .forEach(one -> explainer
                            .doubtful(one.number())
                            .keySet()
                            .forEach(part -> doubtful.add(name + " " + one.number() + " " + part)));
        }
        assertThat(doubtful).containsExactly("d7-one-wild-reading-i6 3 DRY");
    }

    @Test
    void candidatesAreToldWithWhatFits() {
        FaultFindings faults = found("d3-exhaust-valve-v6");
        FaultFindings.CandidateChance first =
                faults.of(4).orElseThrow().candidates().get(0);
        assertThat(first.fault()).isEqualTo(Fault.EXHAUST_VALVE);
        assertThat(first.fits()).anyMatch(words -> words.startsWith("Air at the exhaust, strongly"));
    }

    @Test
    void whatSpeaksAgainstNamesTheBetter() {
        FaultFindings.CandidateChance notOpening =
                found("d2-dead-cylinder-i4").of(3).orElseThrow().candidates().stream()
                        .filter(candidate -> candidate.fault() == Fault.VALVE_NOT_OPENING)
                        .findFirst()
                        .orElseThrow();
        assertThat(notOpening.against()).anyMatch(words -> words.contains("a sound cylinder fits better"));
    }

    @Test
    void lashInSpecLeavesTheValve() {
        double valve = ReferenceCase.named("d3-exhaust-valve-v6")
                .with("lash,4,in-spec,,,,,,,,,,,")
                .posterior()
                .p(4, Fault.EXHAUST_VALVE);
        assertThat(valve).isGreaterThan(0.85);
    }

    /** 0.653·0.96 : 0.346·0.25, the chances of the method times those of the lash test, by hand. */
    @Test
    void lashInSpecIsWeighedByItsOwnChances() {
        double valve = ReferenceCase.named("d3-exhaust-valve-v6")
                .with("lash,4,in-spec,,,,,,,,,,,")
                .posterior()
                .p(4, Fault.EXHAUST_VALVE);
        assertThat(valve).isCloseTo(0.653 * 0.96 / (0.653 * 0.96 + 0.346 * 0.25), within(0.005));
    }

    private static FaultFindings found(String name) {
        ReferenceCase one = ReferenceCase.named(name);
        return Sheets.assess(one.profile(), one.readings()).faults();
    }
}
