package org.pullproof.app;

import java.util.List;
import java.util.Optional;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Problem;
import org.pullproof.units.Quantity;
import org.pullproof.weather.AirCheck;
import org.pullproof.weather.AirSummary;
import org.pullproof.weather.Correction;
import org.pullproof.weather.TypedAir;

/** Tells what follows from typed air, without a session. */
public final class ReadAir {
    private final AirCheck check;
    private final Correction correction;

    public ReadAir(AirCheck check, Correction correction) {
        this.check = check;
        this.correction = correction;
    }

    /**
     * @param elevation of the place, if known, to hold the pressure against
     * @throws BadFileException with a sentence for each thing that cannot be
     */
    public AirSummary summary(TypedAir air, Optional<Quantity> elevation) throws BadFileException {
        List<Problem> problems = check.problems(air, elevation).stream()
                .map(sentence -> new Problem("air", "", sentence))
                .toList();
        if (!problems.isEmpty()) {
            throw new BadFileException(problems);
        }
        return AirSummary.of(air, correction);
    }
}
