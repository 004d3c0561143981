package org.pullproof.dyno;

import java.util.Optional;
import org.pullproof.dyno.StatedFinding.Call;
import org.pullproof.dyno.StatedFinding.Figure;
import org.pullproof.dyno.StatedFinding.Range;
import org.pullproof.units.Figures;
import org.pullproof.units.Sentence;
import org.pullproof.units.Shown;
import org.pullproof.weather.Standard;

/**
 * Words what a figure of another sheet amounts to.
 *
 * @param standard of the session
 * @param figures to write power with
 */
record StatedWords(Standard standard, Figures figures) {
    private static final char SPACE = Figures.NO_BREAK_SPACE;

    Sentence sentence(
            StatedFigure stated, Optional<Range> range, Optional<Figure> now, Optional<Figure> difference, Call call) {
        return new Sentence("Stated: " + stated.words() + ". "
                + range.map(ours -> turned(stated, ours)).orElse("Without its standard it cannot be turned into ours. ")
                + now.map(this::present).orElse("")
                + difference.map(found -> compared(found, call, stated)).orElseGet(() -> alone(stated, now)));
    }

    private String turned(StatedFigure stated, Range range) {
        String ends = range.isExact() ? of(range.middle()) : bare(range.lowKw()) + " to " + of(range.highKw());
        return "On " + standard.words() + " that is **" + ends + "**"
                + (stated.air().isPresent() ? ", recomputed with the air of the sheet. " : reason(stated));
    }

    private String reason(StatedFigure stated) {
        return stated.standard().filter(theirs -> theirs == standard).isPresent()
                ? ", the same standard. "
                : ", a range because the air of the sheet is not told. ";
    }

    private String present(Figure now) {
        return "Now " + bare(now.kw()) + " ±" + SPACE + of(now.halfWidthKw()) + " at the wheels. ";
    }

    private String compared(Figure difference, Call call, StatedFigure stated) {
        String known = "Two dynos differ by about " + Figures.percent(100 * StatedJudge.OTHER_DYNO, 0)
                + " (standard deviation), so the difference is "
                + Figures.signed(figures.unit(Shown.POWER).fromSi(difference.kw() * 1e3), 1) + " ±" + SPACE
                + Figures.number(figures.unit(Shown.POWER).fromSi(difference.halfWidthKw() * 1e3), 0) + SPACE
                + figures.unit(Shown.POWER).symbol() + ": ";
        return known
                + switch (call) {
                    case NO_CALL ->
                        stated.at() == StatedFigure.At.WHEELS || difference.kw() >= -difference.halfWidthKw()
                                ? "**no call; nothing lost is shown.**"
                                : "**no call; a figure at the crank would explain it.**";
                    case LOSS -> "**less than stated, by more than two dynos explain.**";
                    case GAIN -> "**more than stated, by more than two dynos explain.**";
                };
    }

    private static String alone(StatedFigure stated, Optional<Figure> now) {
        if (stated.at() == StatedFigure.At.CRANK && now.isPresent()) {
            return "Power at the crank is not compared with power at the wheels: **no call.**";
        }
        return "**No call.**";
    }

    private String bare(double kilowatt) {
        return figures.bare(kilowatt * 1e3, Shown.POWER);
    }

    private String of(double kilowatt) {
        return figures.of(kilowatt * 1e3, Shown.POWER);
    }
}
