package org.pullproof.cli;

import java.util.ArrayList;
import java.util.List;
import org.pullproof.dyno.StatedFinding;
import org.pullproof.weather.Standard;

/** Writes what a figure of another sheet amounts to, for scripts and for people. */
final class StatedPrinter {
    private final StatedFinding found;

    StatedPrinter(StatedFinding found) {
        this.found = found;
    }

    Json json() {
        Json json = new Json()
                .put("statedKw", found.figure().power().si() / 1e3)
                .put("standard", found.figure().standard().map(Standard::key))
                .put("at", found.figure().at().key());
        found.range().ifPresent(range -> json.put("lowKw", range.lowKw()).put("highKw", range.highKw()));
        found.now().ifPresent(now -> json.put("nowKw", now.kw()).put("nowHalfWidthKw", now.halfWidthKw()));
        found.difference()
                .ifPresent(difference -> json.put("differenceKw", difference.kw())
                        .put("differenceHalfWidthKw", difference.halfWidthKw()));
        return json.put("call", found.call().key())
                .put("sentence", found.sentence().plain())
                .put("missing", found.missing());
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(found.sentence().plain());
        lines.addAll(found.missing());
        return lines;
    }
}
