package org.pullproof.worth.decision.problem;

/**
 * Something the owner could do, to its end.
 *
 * @param name what; unique in a problem
 * @param role what it is beside the others
 * @param firstAct the act it begins with: options with the same one need not be told apart now
 * @param tree what is done, seen and chosen
 */
public record Option(String name, Role role, String firstAct, Node tree) {

    /** What an option is beside the others. */
    public enum Role {
        /** Costs nothing and is what all others are measured against; a problem has exactly one. */
        REFERENCE,
        /** Buys the car. */
        BUYS,
        /** Any other. */
        OTHER
    }

    public Option {
        Check.named("An option", name);
        Check.named("The first act of " + name, firstAct);
    }

    /** An option whose first act is its own name. */
    public static Option of(String name, Role role, Node tree) {
        return new Option(name, role, name, tree);
    }
}
