package org.pullproof.advice;

import java.util.List;
import java.util.Optional;
import org.pullproof.car.Access;
import org.pullproof.car.Car;
import org.pullproof.changes.ChangeLedger;
import org.pullproof.dyno.DynoFindings;
import org.pullproof.health.HealthFindings;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.health.HealthFindings.State;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.session.Session;
import org.pullproof.tuneup.TuneUpFindings;

/** All that the rules of the next step look at. */
record Situation(
        Session session,
        HealthFindings health,
        TuneUpFindings tuneUp,
        DynoFindings dyno,
        ChangeLedger changes,
        LoadGate gate) {

    Car car() {
        return session.car();
    }

    int cylinders() {
        return session.profile().cylinders();
    }

    /** Whether the owner permits this; as long as nothing was told, looking only. */
    boolean permits(Access needed) {
        return car().access().orElse(Access.LOOK_ONLY).permits(needed);
    }

    boolean owned() {
        return permits(Access.OWN_IT);
    }

    /** Whether a reading of this kind was ever taken in: then its tool is at hand. */
    boolean everRead(TestKind test) {
        return session.readings().stream().anyMatch(reading -> reading.test() == test);
    }

    /** Whether the whole engine has a reading of this kind that still counts. */
    boolean engineRead(TestKind test) {
        return health.engineSigns().stream().anyMatch(sign -> sign.test() == test);
    }

    Optional<Reading> engineSign(TestKind test) {
        return health.engineSigns().stream().filter(sign -> sign.test() == test).reduce((earlier, later) -> later);
    }

    /** Whether a cylinder was read by this test since work was last done on it. */
    boolean readSinceWork(TestKind test, int cylinder) {
        return sinceWork(test, cylinder).isPresent();
    }

    /** What this test last read of a cylinder since work was last done on it. */
    Optional<Reading> sinceWork(TestKind test, int cylinder) {
        Optional<Reading> last = Optional.empty();
        for (Reading reading : session.readings()) {
            boolean concerns =
                    reading.cylinder().isEmpty() || reading.cylinder().getAsInt() == cylinder;
            if (concerns && reading.test() == TestKind.WORK) {
                last = Optional.empty();
            } else if (concerns && reading.test() == test) {
                last = Optional.of(reading);
            }
        }
        return last;
    }

    /** Cylinders that are low or in doubt. */
    List<CylinderFindings> suspects() {
        return health.cylinders().stream()
                .filter(cylinder -> cylinder.state() == State.LOW || cylinder.state() == State.IN_DOUBT)
                .toList();
    }
}
