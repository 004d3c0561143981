package org.pullproof.health.nexttest;

import java.util.List;
import org.pullproof.health.TestKind;

/**
 * One test that is proposed.
 *
 * @param test which
 * @param cylinders on which; several where it is done on all that are left
 * @param reason why it is proposed
 * @param bits information, summed over the cylinders
 * @param value to the decision, in money, summed over the cylinders
 * @param cost what it costs
 */
public record NextTest(
        TestKind test, List<Integer> cylinders, Reason reason, double bits, double value, TestCost cost) {
    public NextTest {
        cylinders = List.copyOf(cylinders);
    }

    /** Why a test is proposed. */
    public enum Reason {
        /** Its outcome may change what to do, by more than it costs. */
        WORTH_ITS_COST,
        /** It tells most, though it is worth little to the decision. */
        TELLS_MOST,
        /** It settles most a minute, where nothing is settled yet. */
        SETTLES_MOST
    }

    /** Whether it is for cylinders that are not called faulty. */
    public boolean ofSeveral() {
        return cylinders.size() > 1;
    }
}
