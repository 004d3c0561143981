package org.pullproof.cli;

import java.util.List;
import org.pullproof.health.FaultFindings;
import org.pullproof.health.FaultFindings.CandidateChance;
import org.pullproof.health.FaultFindings.EngineChance;
import org.pullproof.health.FaultFindings.PairChance;
import org.pullproof.health.FaultFindings.ProposedTest;

/** Chances and proposals as {@code health --json} tells them. */
final class FaultsJson {
    private FaultsJson() {}

    /** Puts what belongs to the whole engine. */
    static Json put(Json json, FaultFindings faults) {
        return json.put("soundProbability", faults.soundProbability())
                .put(
                        "engineWide",
                        faults.engineWide().stream().map(FaultsJson::of).toList())
                .put("pairs", faults.pairs().stream().map(FaultsJson::of).toList())
                .put(
                        "nextTests",
                        faults.nextTests().stream().map(FaultsJson::of).toList())
                .put("nextWords", faults.nextWords());
    }

    static List<Json> candidates(FaultFindings faults, int cylinder) {
        return faults.of(cylinder).stream()
                .flatMap(one -> one.candidates().stream())
                .map(FaultsJson::of)
                .toList();
    }

    private static Json of(CandidateChance candidate) {
        return new Json()
                .put("fault", candidate.fault().key())
                .put("words", candidate.words())
                .put("probability", candidate.probability())
                .put("fits", candidate.fits())
                .put("against", candidate.against());
    }

    private static Json of(EngineChance chance) {
        return new Json()
                .put("fault", chance.key())
                .put("words", chance.words())
                .put("probability", chance.probability());
    }

    private static Json of(PairChance chance) {
        return new Json()
                .put("cylinders", List.of(chance.pair().one(), chance.pair().other()))
                .put("fault", "gasket-neighbour")
                .put("probability", chance.probability());
    }

    private static Json of(ProposedTest proposed) {
        return new Json()
                .put("test", proposed.test().test().key())
                .put("cylinders", proposed.test().cylinders())
                .put("why", proposed.why())
                .put("minutes", proposed.test().cost().minutes())
                .put("cost", proposed.test().cost().dollars())
                .put("currency", "USD")
                .put("bits", proposed.test().bits())
                .put("value", proposed.test().value());
    }
}
