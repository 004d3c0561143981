package org.pullproof.worth.decision.money;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.pullproof.worth.decision.draws.Streams;
import org.pullproof.worth.decision.problem.CostLine;

/** All different bills of a problem. */
final class Bills {
    private final List<LineDraws> lines;
    private final List<CostLine> names;
    private final List<Bill> bills;

    Bills(Layout layout, Scenario scenario, Streams streams) {
        names = layout.lines();
        lines = names.stream()
                .map(line -> new LineDraws(line, scenario, streams))
                .toList();
        bills = layout.bills().stream()
                .map(bill ->
                        new Bill(streams.size(), bill.stream().map(lines::get).toList()))
                .toList();
    }

    Bill get(int bill) {
        return bills.get(bill);
    }

    int count() {
        return bills.size();
    }

    /** The whole bill of each line by its name, in every draw; where lines share a name, the first. */
    Map<String, double[]> byName() {
        return names.stream()
                .collect(Collectors.toMap(
                        CostLine::name,
                        line -> lines.get(names.indexOf(line)).bill(),
                        (first, again) -> first,
                        LinkedHashMap::new));
    }
}
