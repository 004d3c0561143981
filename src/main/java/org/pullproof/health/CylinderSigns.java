package org.pullproof.health;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.units.Figures;

/** What the further tests of one cylinder say: borescope, lash, coil swap, starter humps. */
final class CylinderSigns {
    private CylinderSigns() {}

    /** Damage seen with the eye, as a few words. */
    static Optional<String> seen(Evidence evidence, int cylinder) {
        return switch (evidence.word(cylinder, TestKind.BORESCOPE).orElse("")) {
            case "burnt-edge" -> Optional.of("burnt valve edge seen");
            case "piston-damage" -> Optional.of("piston damage seen");
            default -> Optional.empty();
        };
    }

    /** A doubt as a few words. */
    static Optional<String> doubt(Evidence evidence, int cylinder, HealthLimits limits) {
        if (evidence.word(cylinder, TestKind.BORESCOPE).equals(Optional.of("bore-mark"))) {
            return Optional.of("a mark in its bore");
        }
        if (evidence.word(cylinder, TestKind.COIL_SWAP).equals(Optional.of("moved"))) {
            return Optional.of("its fault moved with the coil");
        }
        return switch (evidence.word(cylinder, TestKind.LASH).orElse("")) {
            case "tight" -> Optional.of("its lash is tight");
            case "loose" -> Optional.of("its lash is loose");
            default ->
                lowHump(evidence, cylinder, limits)
                        .map(percent -> "low starter hump")
                        .or(() -> misfires(evidence, cylinder, limits));
        };
    }

    /** A cylinder that makes most of the misfires the engine's computer counted. */
    private static Optional<String> misfires(Evidence evidence, int cylinder, HealthLimits limits) {
        return evidence.sign(cylinder, TestKind.MISFIRES)
                .flatMap(Reading.Sign::figure)
                .map(figure -> 100 * figure.si())
                .filter(percent -> percent > limits.misfireShare())
                .map(percent -> Figures.percent(percent, 0) + " of the misfires counted are its own");
    }

    /** A hump of starter current says nothing where the compression itself was read. */
    private static Optional<Double> lowHump(Evidence evidence, int cylinder, HealthLimits limits) {
        if (evidence.dry().containsKey(cylinder)) {
            return Optional.empty();
        }
        return evidence.sign(cylinder, TestKind.STARTER_CURRENT)
                .flatMap(Reading.Sign::figure)
                .map(figure -> 100 * figure.si())
                .filter(percent -> percent < limits.lowHump());
    }

    static List<Ground> grounds(Evidence evidence, int cylinder, HealthLimits limits) {
        String who = "Cylinder " + cylinder + ": ";
        List<Ground> grounds = new ArrayList<>();
        seen(evidence, cylinder)
                .ifPresent(words -> grounds.add(Ground.fails("", who + words + " through the plug hole.")));
        lowHump(evidence, cylinder, limits)
                .ifPresent(percent -> grounds.add(Ground.doubts(
                        "",
                        who + "its starter hump is " + Figures.percent(percent, 0)
                                + " of the highest; compression tells.")));
        if (grounds.isEmpty()) {
            doubt(evidence, cylinder, limits)
                    .ifPresent(words -> grounds.add(Ground.doubts("", who + words + advice(words) + ".")));
        }
        return grounds;
    }

    private static String advice(String words) {
        if (words.startsWith("its lash")) {
            return "; set it, then read the cylinder again";
        }
        return words.endsWith("coil") ? "; put in another coil, then read the balance again" : "";
    }
}
