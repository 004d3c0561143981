package org.pullproof.worth.decision.problem;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A test that the owner may do now.
 *
 * @param name what it is called
 * @param minutes own time
 * @param money tools and fluids
 * @param damage what may go wrong, if anything
 * @param results what it may say
 * @param gate whether it decides if the engine may be run at all: then it comes first whatever it is worth
 * @param firstStepOf options whose first step it is: then it is named as that step and not as a test
 */
public record MoneyTest(
        String name,
        double minutes,
        double money,
        Optional<Damage> damage,
        List<Likelihood> results,
        boolean gate,
        Set<String> firstStepOf) {

    /**
     * What a test may break.
     *
     * @param chance 0 to 1
     * @param cost what it then costs
     */
    public record Damage(double chance, double cost) {
        public Damage {
            Check.chance("The chance of damage", chance);
            Check.notNegative("The cost of damage", cost);
        }
    }

    public MoneyTest {
        Check.named("A test", name);
        Check.notNegative("The minutes of " + name, minutes);
        Check.notNegative("The money for " + name, money);
        results = List.copyOf(results);
        Check.atLeastOne("The results of " + name, results);
        firstStepOf = Set.copyOf(firstStepOf);
    }
}
