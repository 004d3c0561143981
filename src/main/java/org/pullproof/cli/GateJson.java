package org.pullproof.cli;

import org.pullproof.advice.GatePoint;
import org.pullproof.advice.LoadGate;

/** The gate before the first pull for {@code --json}. */
final class GateJson {
    private GateJson() {}

    static Json of(LoadGate gate) {
        return new Json()
                .put("open", gate.isOpen())
                .put("answer", gate.answer().plain())
                .put("inTheWay", gate.inTheWay().stream().map(GateJson::of).toList())
                .put("points", gate.points().stream().map(GateJson::of).toList())
                .put(
                        "aborts",
                        gate.aborts().stream()
                                .map(abort -> new Json()
                                        .put("time", abort.time().toString())
                                        .put("cause", abort.cause()))
                                .toList());
    }

    private static Json of(GatePoint point) {
        return new Json()
                .put("key", point.key())
                .put("about", point.about())
                .put("name", point.name())
                .put("state", point.state().name().toLowerCase(java.util.Locale.ROOT))
                .put("why", point.why());
    }
}
