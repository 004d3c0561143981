package org.pullproof.worth.decision.problem;

import java.util.List;

/** A place in the tree of an option. */
public sealed interface Node {

    /**
     * Something is done and paid for.
     *
     * @param lines its bill, one line or more
     * @param then what follows
     */
    record Do(List<CostLine> lines, Node then) implements Node {
        public Do {
            lines = List.copyOf(lines);
            Check.atLeastOne("The lines of an act", lines);
        }
    }

    /**
     * Something is seen that says more about the engine.
     *
     * @param outcomes what may be seen, two or more
     */
    record See(List<Outcome> outcomes) implements Node {
        public See {
            outcomes = List.copyOf(outcomes);
            Check.atLeastOne("The outcomes of a look", outcomes);
        }
    }

    /**
     * The owner picks, knowing what was seen.
     *
     * @param choices what there is to pick from, one or more
     */
    record Choose(List<Choice> choices) implements Node {
        public Choose {
            choices = List.copyOf(choices);
            Check.atLeastOne("The choices of the owner", choices);
        }
    }

    /**
     * Where the path ends.
     *
     * @param ending how
     * @param cure what the work before it has cured
     * @param gains what driving gains; multiplied with what the cures give back
     */
    record End(Ending ending, Cure cure, List<Gain> gains) implements Node {
        public End {
            gains = List.copyOf(gains);
        }

        public static End of(Ending ending) {
            return new End(ending, Cure.NONE, List.of());
        }
    }

    /**
     * One thing that may be seen.
     *
     * @param seen what, with its chance in each state
     * @param then what follows
     */
    record Outcome(Likelihood seen, Node then) {}

    /**
     * One thing to pick.
     *
     * @param name what
     * @param then what follows
     */
    record Choice(String name, Node then) {
        public Choice {
            Check.named("A choice", name);
        }
    }
}
