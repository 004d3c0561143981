package org.pullproof.app;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pullproof.dyno.HowRead;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFile;
import org.pullproof.dyno.Trace;
import org.pullproof.files.BadFileException;
import org.pullproof.files.SessionFolder;
import org.pullproof.session.Problem;

/**
 * The figures of a session's pulls, and why those of some could not be read. Each file is read once however many pulls it holds, and
 * several files at a time.
 *
 * @param traces by {@link Pull#id()}
 */
record PullFigures(Map<String, Trace> traces, List<Problem> problems) {
    /** A file and how its figures are got out; its pulls are parts of one table. */
    private record Source(PullFile file, HowRead how) {
        static Source of(Pull pull) {
            return new Source(pull.file(), pull.how().ofPart(1));
        }
    }

    /**
     * @param known figures that were read before, by the whole pull
     */
    static PullFigures of(List<Pull> pulls, Map<Pull, Trace> known, SessionFolder place, PullReader reader) {
        Map<Source, List<Pull>> wanted = pulls.stream()
                .filter(pull -> !known.containsKey(pull))
                .collect(Collectors.groupingBy(Source::of, LinkedHashMap::new, Collectors.toList()));
        List<PullFigures> read = List.copyOf(wanted.entrySet()).parallelStream()
                .map(each -> read(each.getKey(), each.getValue(), place, reader))
                .toList();
        Map<String, Trace> traces = new HashMap<>();
        List<Problem> problems = new ArrayList<>();
        pulls.forEach(pull -> Optional.ofNullable(known.get(pull)).ifPresent(trace -> traces.put(pull.id(), trace)));
        read.forEach(each -> {
            traces.putAll(each.traces());
            problems.addAll(each.problems());
        });
        return new PullFigures(traces, problems);
    }

    private static PullFigures read(Source source, List<Pull> pulls, SessionFolder place, PullReader reader) {
        try {
            List<Trace> parts = reader.table(source.file().kept(), place.bytes(source.file()), source.how())
                    .pulls();
            return picked(pulls, parts);
        } catch (BadFileException bad) {
            return new PullFigures(Map.of(), bad.problems());
        }
    }

    private static PullFigures picked(List<Pull> pulls, List<Trace> parts) {
        Map<String, Trace> traces = new HashMap<>();
        List<Problem> problems = new ArrayList<>();
        for (Pull pull : pulls) {
            int part = pull.how().part();
            if (part <= parts.size()) {
                traces.put(pull.id(), parts.get(part - 1));
            } else {
                problems.add(new Problem(
                        pull.file().kept(),
                        "",
                        "pull " + part + " of the file is wanted, and it holds " + parts.size() + "."));
            }
        }
        return new PullFigures(traces, problems);
    }
}
