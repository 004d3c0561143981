package org.pullproof.worth.trade;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pullproof.worth.decision.problem.Ending;

/** A place in a plan, before it is put to one engine. */
public sealed interface Branch {
    /**
     * Works are done.
     *
     * @param works their keys; those that do not fit the engine fall away
     * @param then what follows
     */
    record Do(List<String> works, Branch then) implements Branch {
        public Do {
            works = List.copyOf(works);
        }
    }

    /**
     * Something is looked at.
     *
     * @param sights what may be seen, tried in order; the last is what is seen else
     */
    record See(List<Sight> sights) implements Branch {
        public See {
            sights = List.copyOf(sights);
        }
    }

    /**
     * One thing that may be seen.
     *
     * @param seen in words
     * @param chances key of the chance by fault, {@code else} for all other states; empty for the last sight
     * @param then what follows
     */
    record Sight(String seen, Map<String, String> chances, Branch then) {
        public Sight {
            chances = Collections.unmodifiableMap(new LinkedHashMap<>(chances));
        }
    }

    /**
     * Whether the weak cylinder is back after the works so far, by what they cure and may cure.
     *
     * @param back what follows if it is
     * @param weak what follows if not
     */
    record Back(Branch back, Branch weak) implements Branch {}

    /**
     * The owner picks.
     *
     * @param choices by name, in order
     */
    record Choose(Map<String, Branch> choices) implements Branch {
        public Choose {
            choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
        }
    }

    /**
     * A shared part of several plans.
     *
     * @param name of the part
     */
    record Part(String name) implements Branch {}

    /**
     * Where it ends.
     *
     * @param ending how
     * @param asItIs whether it is driven with what is not cured: not offered to an engine that must not run
     */
    record End(Ending ending, boolean asItIs) implements Branch {}
}
