package org.pullproof.health;

import java.util.EnumSet;
import java.util.Set;

/**
 * Which readings a piece of work closes: all that its cylinder read before, but for the parts of the ignition that a tune-up
 * renews. They leave the seal of a cylinder as it was: to the fault model an ignition fault has no hole, so compression and leak-down are
 * read as without a fault. See {@code docs/decisions/0030-close-what-work-can-change}.
 */
final class WorkReach {
    private static final String IGNITION_PARTS = "ignition-parts";

    /** What tells of the spark. */
    private static final Set<TestKind> TOLD_BY_RUNNING = EnumSet.of(
            TestKind.BALANCE, TestKind.PLUG, TestKind.COIL_SWAP, TestKind.MISFIRES, TestKind.VACUUM, TestKind.CODES);

    private WorkReach() {}

    /**
     * @param work the word for it, see {@link Words}
     */
    static boolean changes(String work, TestKind test) {
        return !work.equals(IGNITION_PARTS) || TOLD_BY_RUNNING.contains(test);
    }
}
