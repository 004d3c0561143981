package org.pullproof.simulation.faults;

import java.io.PrintStream;
import java.util.List;
import java.util.stream.Stream;

/** Whether what is said with a chance is true as often, each engine weighted to how common its kind is. */
final class Calibration {
    private static final double[] EDGES = {0.02, 0.1, 0.3, 0.5, 0.7, 0.9, 0.97, 1.0000001};

    private final List<Score> scores;

    Calibration(List<Score> scores) {
        this.scores = scores;
    }

    private record Weighed(double p, boolean isTrue, double weight) {}

    void print(PrintStream out) {
        out.println("| said p | 0.02-0.1 | 0.1-0.3 | 0.3-0.5 | 0.5-0.7 | 0.7-0.9 | 0.9-0.97 | > 0.97 |");
        out.println("|---|---|---|---|---|---|---|---|");
        line(
                "fault of a cylinder",
                scores.stream()
                        .flatMap(score -> score.chances().stream()
                                .map(said -> new Weighed(
                                        said.p(), said.isTrue(), score.kind().weight())))
                        .toList(),
                out);
        out.println(
                "| (method) | .04 → .03 | .20 → .19 | .37 → .35 | .60 → .68 | .80 → .87 | .95 → .99 | .994 → .99 |");
        line(
                "engine sound",
                scores.stream()
                        .flatMap(score -> Stream.of(new Weighed(
                                score.sound(), score.trulySound(), score.kind().weight())))
                        .toList(),
                out);
        out.println("| (method) | .05 → .00 | .18 → .04 | .40 → .22 | .61 → .51 | .84 → .80 | .94 → .94 | .98 → .99 |");
    }

    private static void line(String name, List<Weighed> said, PrintStream out) {
        StringBuilder line = new StringBuilder("| " + name + " |");
        for (int i = 0; i + 1 < EDGES.length; i++) {
            double from = EDGES[i];
            double to = EDGES[i + 1];
            List<Weighed> in =
                    said.stream().filter(one -> one.p() >= from && one.p() < to).toList();
            double weight = in.stream().mapToDouble(Weighed::weight).sum();
            double mean = in.stream().mapToDouble(one -> one.weight() * one.p()).sum() / weight;
            double truth = in.stream()
                            .mapToDouble(one -> one.isTrue() ? one.weight() : 0)
                            .sum()
                    / weight;
            line.append(in.isEmpty() ? " – |" : String.format(" %.2f → %.2f (%d) |", mean, truth, in.size()));
        }
        out.println(line);
    }
}
