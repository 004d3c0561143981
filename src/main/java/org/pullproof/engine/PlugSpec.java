package org.pullproof.engine;

import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;

/**
 * What the profile says of the plugs; the maker's manual comes first.
 *
 * @param gapFrom least gap
 * @param gapTo greatest gap
 * @param torqueFrom least tightening torque
 * @param torqueTo greatest tightening torque
 * @param seat thread and seat in words: "14 mm, gasket seat, cast-iron head, dry"
 */
public record PlugSpec(Quantity gapFrom, Quantity gapTo, Quantity torqueFrom, Quantity torqueTo, String seat) {
    public PlugSpec {
        gapFrom.requireDimension(Dimension.LENGTH);
        gapTo.requireDimension(Dimension.LENGTH);
        torqueFrom.requireDimension(Dimension.TORQUE);
        torqueTo.requireDimension(Dimension.TORQUE);
        if (gapFrom.si() > gapTo.si() || torqueFrom.si() > torqueTo.si()) {
            throw new IllegalArgumentException("A plug range goes from low to high: gap " + gapFrom + " to " + gapTo
                    + ", torque " + torqueFrom + " to " + torqueTo);
        }
    }
}
