package org.pullproof.advice;

import java.util.Arrays;
import java.util.List;
import org.pullproof.car.Access;
import org.pullproof.car.Car;
import org.pullproof.car.Runs;
import org.pullproof.engine.EngineProfile;
import org.pullproof.units.Figures;
import org.pullproof.units.Sentence;
import org.pullproof.units.Shown;

/** Says what the engine is and what may be done to it, in one sentence. */
final class CarAnswer {
    private final Figures figures;

    CarAnswer(Figures figures) {
        this.figures = figures;
    }

    Sentence sentence(Car car, EngineProfile profile) {
        String engine = running(car) + "**" + figures.of(profile.displacement(), Shown.DISPLACEMENT) + " "
                + shape(profile) + "**. ";
        return new Sentence(
                engine + car.access().map(CarAnswer::permitted).orElse("Say first what the owner permits."));
    }

    private static String running(Car car) {
        return car.runs()
                .map(runs -> switch (runs) {
                    case YES -> "A running ";
                    case DIES -> "It starts and dies: a ";
                    case NO -> "It does not run: a ";
                })
                .orElse("A ");
    }

    private static String shape(EngineProfile profile) {
        String letter = switch (profile.layout()) {
            case INLINE -> "in-line ";
            case V -> "V";
            case FLAT -> "flat-";
        };
        return letter + profile.cylinders();
    }

    private static String permitted(Access access) {
        if (access == Access.OWN_IT) {
            return "It is yours: everything may be done.";
        }
        List<Access> levels = Arrays.asList(Access.values());
        Access next = levels.get(levels.indexOf(access) + 1);
        String when = access == Access.LOOK_ONLY ? "" : " **before you buy**";
        return "With \"" + access.words() + "\" allowed, " + access.allowsInSentence() + " can be done" + when + "; "
                + next.allowsInSentence() + " cannot.";
    }

    /** A few words for the rail. */
    static String words(Car car) {
        boolean still = car.runs().map(runs -> runs != Runs.YES).orElse(false);
        return car.access()
                .map(access -> (access == Access.OWN_IT ? "owned" : "access: " + access.words())
                        + (still ? ", not running" : ""))
                .orElse("access not told");
    }
}
