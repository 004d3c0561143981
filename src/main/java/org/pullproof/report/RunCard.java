package org.pullproof.report;

import java.util.List;
import org.pullproof.units.Inert;

/**
 * The steps of a tune-up on paper, with boxes to tick: each with its parts off and back, tools, figures and cautions.
 *
 * @param title car and engine
 * @param told how long it takes, and why in that order, one sentence each
 * @param steps in order
 * @param last the caution that ends every list
 */
public record RunCard(String title, List<String> told, List<Line> steps, String last) {
    public RunCard {
        title = Inert.words(title);
        told = List.copyOf(told);
        steps = List.copyOf(steps);
    }

    /**
     * A step on the card.
     *
     * @param id its letter
     * @param title what to do
     * @param done whether it is ticked already
     * @param gate whether it is the start gate
     * @param minutes typical time
     * @param off what comes off, a box each
     * @param back what must be back or confirmed, a box each
     * @param help tools and figures, one sentence each
     * @param cautions of the act
     */
    public record Line(
            String id,
            String title,
            boolean done,
            boolean gate,
            int minutes,
            List<String> off,
            List<String> back,
            List<String> help,
            List<String> cautions) {
        public Line {
            title = Inert.words(title);
            off = off.stream().map(Inert::words).toList();
            back = back.stream().map(Inert::words).toList();
            help = List.copyOf(help);
            cautions = List.copyOf(cautions);
        }
    }
}
