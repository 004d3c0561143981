package org.pullproof.app;

import java.util.List;
import java.util.Optional;
import org.pullproof.files.BadFileException;
import org.pullproof.session.Problem;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.weather.AirCheck;
import org.pullproof.weather.AirSummary;
import org.pullproof.weather.Correction;
import org.pullproof.weather.Lookalike;
import org.pullproof.weather.Standard;
import org.pullproof.weather.TypedAir;

/** Tells what follows from typed air, without a session. */
public final class ReadAir {
    private final AirCheck check;
    private final Correction correction;

    /**
     * @param summary what follows
     * @param doubts what is possible but doubtful, one sentence each
     */
    public record Told(AirSummary summary, List<String> doubts) {
        public Told {
            doubts = List.copyOf(doubts);
        }
    }

    public ReadAir(AirCheck check, Correction correction) {
        this.check = check;
        this.correction = correction;
    }

    /**
     * @param elevation of the place, if known, to hold the pressure against
     * @param standard whose factor a doubt is told in
     * @throws BadFileException with a sentence for each thing that cannot be
     */
    public Told told(TypedAir air, Optional<Quantity> elevation, Standard standard) throws BadFileException {
        List<Problem> problems = check.problems(air, elevation).stream()
                .map(sentence -> new Problem("air", "", withBoth(sentence, air, elevation, standard)))
                .toList();
        if (!problems.isEmpty()) {
            throw new BadFileException(problems);
        }
        List<String> doubts = check.doubts(air, elevation).stream()
                .map(sentence -> withBoth(sentence, air, elevation, standard))
                .toList();
        return new Told(AirSummary.of(air, correction), doubts);
    }

    /** The altimeter setting that a station pressure looks like, if it does. */
    public Optional<Lookalike> lookalike(TypedAir air, Optional<Quantity> elevation) {
        return check.lookalike(air, elevation);
    }

    /** The sentence about a pressure that looks like an altimeter setting, with the factor taken either way. */
    private String withBoth(String sentence, TypedAir air, Optional<Quantity> elevation, Standard standard) {
        return check.lookalike(air, elevation)
                .filter(likeness -> likeness.sentence().equals(sentence))
                .map(likeness -> sentence + " " + both(likeness, air, standard))
                .orElse(sentence);
    }

    /** The factor of the same readings, taken either way: "Factor 1.073 as altimeter setting, 0.993 as station pressure, SAE J1349." */
    public String both(Lookalike likeness, TypedAir air, Standard standard) {
        TypedAir asSetting = new TypedAir(likeness.asSetting(), air.thermometer(), air.humidity());
        return "Factor " + factor(asSetting, standard) + " as altimeter setting, " + factor(air, standard)
                + " as station pressure, " + standard.words() + ".";
    }

    private String factor(TypedAir air, Standard standard) {
        return Figures.number(correction.factor(standard, air).value(), 3);
    }
}
