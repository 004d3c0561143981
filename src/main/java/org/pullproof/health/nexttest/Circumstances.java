package org.pullproof.health.nexttest;

import java.util.Optional;
import java.util.Set;
import org.pullproof.car.Access;
import org.pullproof.health.TestKind;

/**
 * What bears on the choice of a test besides the readings.
 *
 * @param access what the owner permits; empty if not told: then every test is weighed
 * @param everRead tests whose tool was used before
 * @param dollarsAMinute price of own time, 0 if not told
 */
public record Circumstances(Optional<Access> access, Set<TestKind> everRead, double dollarsAMinute) {
    public Circumstances {
        everRead = Set.copyOf(everRead);
    }

    boolean permits(TestKind test) {
        return access.map(level -> level.permits(test.access())).orElse(true);
    }
}
