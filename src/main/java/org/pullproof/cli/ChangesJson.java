package org.pullproof.cli;

import java.util.List;
import java.util.stream.Stream;
import org.pullproof.changes.Call;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.changes.CurveBand;
import org.pullproof.changes.JudgedChange;
import org.pullproof.changes.Sweep;
import org.pullproof.changes.Unjudged;
import org.pullproof.engine.Setup;
import org.pullproof.session.Session;

/** The ledger of changes as JSON; setups by the names people gave them, as in {@code pulls}. */
final class ChangesJson {
    private final Session session;

    ChangesJson(Session session) {
        this.session = session;
    }

    /** A comparison that waits for pulls is no change yet and stands apart; one that is spoiled has a call but no figures. */
    Json of(ChangeLedger ledger) {
        Stream<Json> judged = ledger.changes().stream().map(this::of);
        Stream<Json> spoiled =
                ledger.unjudged().stream().filter(ChangesJson::isSpoiled).map(this::of);
        List<Json> waiting = ledger.unjudged().stream()
                .filter(pair -> !isSpoiled(pair))
                .map(this::of)
                .toList();
        Json json = new Json()
                .put("answer", ledger.answer().plain())
                .put("repeatabilityPercent", ledger.repeatabilityPercent())
                .put("driftPercentPerPull", ledger.driftPercentPerPull())
                .put("onMeasuredPower", ledger.onMeasured())
                .put("changes", Stream.concat(judged, spoiled).toList())
                .put("notJudged", waiting)
                .put("sweeps", ledger.sweeps().stream().map(ChangesJson::of).toList());
        ledger.baselineToNow().ifPresent(change -> json.put("baselineToNow", of(change)));
        return json;
    }

    private static boolean isSpoiled(Unjudged pair) {
        return pair.call() == Call.SPOILED;
    }

    private Json of(JudgedChange change) {
        return new Json()
                .put("name", change.name())
                .put("from", name(change.from()))
                .put("to", name(change.to()))
                .put("recorded", change.recorded())
                .put("beforeKw", change.beforeKw())
                .put("afterKw", change.afterKw())
                .put("differencePercent", change.differencePercent())
                .put("low", change.low())
                .put("high", change.high())
                .put("differenceKw", change.differenceKw())
                .put("call", change.call().key())
                .put("holdsForAll", change.holdsForAll())
                .put("pullsToSettle", change.settling().pulls())
                .put("hingesOn", change.settling().hingesOn())
                .put(
                        "regions",
                        change.curve().stream()
                                .flatMap(curve -> curve.regions().stream())
                                .map(ChangesJson::of)
                                .toList())
                .put("sentence", change.sentence());
    }

    private static Json of(CurveBand.Region region) {
        return new Json()
                .put("fromRpm", region.fromRpm())
                .put("toRpm", region.toRpm())
                .put("sign", region.sign());
    }

    private static Json of(Sweep sweep) {
        return new Json()
                .put("factor", sweep.factor())
                .put("unit", sweep.unit().symbol())
                .put("best", sweep.best())
                .put("low", sweep.low())
                .put("high", sweep.high())
                .put("bounded", sweep.bounded())
                .put("recommended", sweep.recommended())
                .put("next", sweep.next())
                .put("sentence", sweep.sentence());
    }

    private Json of(Unjudged pair) {
        return new Json()
                .put("name", pair.name())
                .put("from", name(pair.from()))
                .put("to", name(pair.to()))
                .put("recorded", pair.recorded())
                .put("call", pair.call().key())
                .put("sentence", pair.sentence());
    }

    private String name(String id) {
        return session.setup(id).map(Setup::name).orElse(id);
    }
}
