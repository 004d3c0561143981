package org.pullproof.changes;

import java.util.List;
import java.util.OptionalDouble;
import org.pullproof.dyno.PullFindings;

/** Which figure of a pull is compared. All pulls of a fit stand on one: figures of two standards are never compared. */
enum Basis {
    /** Corrected to the session's standard. */
    CORRECTED {
        @Override
        OptionalDouble kilowatt(PullFindings pull) {
            return pull.bandCorrectedKw();
        }
    },

    /** As measured, because a pull has no air; one that its file has corrected already has no such figure. */
    MEASURED {
        @Override
        OptionalDouble kilowatt(PullFindings pull) {
            return pull.pull().correctedAlready().isEmpty() ? pull.bandMeasuredKw() : OptionalDouble.empty();
        }
    },

    /** As the files have it, because every file is corrected already, to one and the same standard. */
    AS_FILED {
        @Override
        OptionalDouble kilowatt(PullFindings pull) {
            return pull.bandMeasuredKw();
        }
    };

    /** The figure, kW; absent where this pull has none of this kind. */
    abstract OptionalDouble kilowatt(PullFindings pull);

    /** Whether a pull has the figure and no person took it out. */
    boolean counts(PullFindings pull) {
        return !pull.excluded() && kilowatt(pull).orElse(0) > 0;
    }

    /** The standard the figures are on, in words. */
    String standardWords(PullFindings pull) {
        return this == MEASURED ? "not corrected" : pull.standardWords();
    }

    /** The best figure that these pulls can be compared by. */
    static Basis of(List<PullFindings> pulls) {
        List<PullFindings> there =
                pulls.stream().filter(pull -> AS_FILED.counts(pull)).toList();
        List<PullFindings> uncorrected =
                there.stream().filter(pull -> !CORRECTED.counts(pull)).toList();
        if (!uncorrected.isEmpty() && uncorrected.size() == there.size() && onOneStandard(there)) {
            return AS_FILED;
        }
        return uncorrected.stream().anyMatch(MEASURED::counts) ? MEASURED : CORRECTED;
    }

    private static boolean onOneStandard(List<PullFindings> pulls) {
        return pulls.stream().allMatch(pull -> pull.pull().correctedAlready().isPresent())
                && pulls.stream()
                                .map(pull -> pull.pull().correctedAlready())
                                .distinct()
                                .count()
                        == 1;
    }
}
