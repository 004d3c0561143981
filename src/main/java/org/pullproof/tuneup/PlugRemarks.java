package org.pullproof.tuneup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pullproof.engine.PlugSpec;
import org.pullproof.tuneup.TuneUpFindings.PlugFinding;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;

/**
 * What is remarkable about a plug: a gap or torque outside the profile's range, or a gap set unlike the others. Ranges are the
 * profile's; that gaps of one engine agree within 0.05 mm is judgement: common practice, no source.
 */
final class PlugRemarks {
    /** Largest difference from the middle of all gaps set that passes without remark, m. */
    private static final double LIKE_THE_OTHERS = 0.05e-3;

    /** Digits typed in another unit than the range must not make a plug at the very limit fail, m or N·m relative. */
    private static final double ROUNDING = 0.005;

    private final PlugSpec spec;
    private final Figures figures;

    PlugRemarks(PlugSpec spec, Figures figures) {
        this.spec = spec;
        this.figures = figures;
    }

    List<PlugFinding> of(List<PlugRecord> plugs) {
        return plugs.stream()
                .map(plug -> new PlugFinding(plug, remark(plug, plugs)))
                .toList();
    }

    private Optional<String> remark(PlugRecord plug, List<PlugRecord> all) {
        List<String> remarks = new ArrayList<>();
        gapOutside(plug).ifPresent(remarks::add);
        unlikeTheOthers(plug, all).ifPresent(remarks::add);
        torqueOutside(plug).ifPresent(remarks::add);
        return remarks.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", remarks));
    }

    private Optional<String> gapOutside(PlugRecord plug) {
        String which = plug.newGap().isPresent() ? "set to " : "found at ";
        return plug.newGap()
                .or(plug::oldGap)
                .flatMap(gap -> outside(gap, spec.gapFrom(), spec.gapTo(), Shown.GAP, "narrower", "wider"))
                .map(words -> which + words);
    }

    private Optional<String> torqueOutside(PlugRecord plug) {
        return plug.torque()
                .flatMap(torque -> outside(torque, spec.torqueFrom(), spec.torqueTo(), Shown.TORQUE, "less", "more"))
                .map(words -> "tightened to " + words);
    }

    private Optional<String> outside(
            Quantity value, Quantity from, Quantity to, Shown use, String below, String above) {
        boolean under = value.si() < from.si() * (1 - ROUNDING);
        boolean over = value.si() > to.si() * (1 + ROUNDING);
        if (!under && !over) {
            return Optional.empty();
        }
        return Optional.of(figures.of(value.si(), use) + ", " + (under ? below : above) + " than the profile's "
                + figures.bare(from.si(), use) + " to " + figures.of(to.si(), use));
    }

    private Optional<String> unlikeTheOthers(PlugRecord plug, List<PlugRecord> all) {
        double[] gaps = all.stream()
                .flatMap(known -> known.newGap().stream())
                .mapToDouble(Quantity::si)
                .sorted()
                .toArray();
        if (gaps.length < 3 || plug.newGap().isEmpty()) {
            return Optional.empty();
        }
        double middle = (gaps[(gaps.length - 1) / 2] + gaps[gaps.length / 2]) / 2;
        boolean alike = Math.abs(plug.newGap().get().si() - middle) <= LIKE_THE_OTHERS * (1 + ROUNDING);
        return alike ? Optional.empty() : Optional.of("the middle of the gaps set is " + figures.of(middle, Shown.GAP));
    }
}
