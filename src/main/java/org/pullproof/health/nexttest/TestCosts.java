package org.pullproof.health.nexttest;

import org.pullproof.health.TestKind;

/** What tests cost on one engine. */
@FunctionalInterface
public interface TestCosts {
    /**
     * @param test which
     * @param cylinders how many the engine has
     * @param all whether it is done on all cylinders
     * @param again whether its tool was used before on this car
     */
    TestCost of(TestKind test, int cylinders, boolean all, boolean again);
}
