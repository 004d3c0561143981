package org.pullproof.health;

import java.util.EnumSet;
import java.util.Set;

/**
 * Which readings a piece of work can have changed. Spark and fuel leave the seal of a cylinder as it was: to the fault model an
 * ignition or fuel fault has no hole, so compression and leak-down are read as without a fault. Every other work may have changed
 * everything. See {@code docs/decisions/0030-close-what-work-can-change}.
 */
final class WorkReach {
    private static final Set<String> SPARK_AND_FUEL = Set.of("plug", "coil", "wire", "injector");

    /** What tells of spark and mixture. */
    private static final Set<TestKind> TOLD_BY_RUNNING = EnumSet.of(
            TestKind.BALANCE, TestKind.PLUG, TestKind.COIL_SWAP, TestKind.MISFIRES, TestKind.VACUUM, TestKind.CODES);

    private WorkReach() {}

    /**
     * @param work the word for it, see {@link Words}
     */
    static boolean changes(String work, TestKind test) {
        return !SPARK_AND_FUEL.contains(work) || TOLD_BY_RUNNING.contains(test);
    }
}
