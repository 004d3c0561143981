package org.pullproof.engine;

import java.util.List;

/**
 * By what a person at the engine knows that a cylinder stands at top dead centre on compression, not at the end of its exhaust
 * stroke: the mark on the damper comes round twice in a cycle and cannot tell.
 *
 * <p>Source: common practice, no source.
 */
public final class TopSigns {
    private TopSigns() {}

    /** One sentence a sign, the surest first. */
    public static List<String> of(EngineProfile profile, int cylinder) {
        return profile.rotor() == Rotor.NONE ? withoutDistributor(cylinder) : withDistributor(profile, cylinder);
    }

    private static List<String> withDistributor(EngineProfile profile, int cylinder) {
        String turns = profile.rotor() == Rotor.CLOCKWISE ? "clockwise" : "counterclockwise";
        return List.of(
                "Rotor: it points at post " + cylinder + " while mark " + cylinder
                        + " stands at the pointer. If it points away, turn the crank once round, 360°.",
                "Post 1 is drawn at a place of our own: on your cap follow its wire. The rotor turns " + turns
                        + " seen from above.");
    }

    private static List<String> withoutDistributor(int cylinder) {
        return List.of(
                "Whistle: in plug hole " + cylinder
                        + ", it sounds while the piston rises on compression and is silent on"
                        + " the exhaust stroke; a gloved finger over the hole feels the same.",
                "Cam: with the cover off, both lobes of cylinder " + cylinder
                        + " point away from their valves, and both" + " valves have play or follow the base circle.");
    }
}
