package org.pullproof.dyno;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.pullproof.dyno.DynoFindings.SetupPower;
import org.pullproof.engine.Setup;
import org.pullproof.units.Figures;
import org.pullproof.units.RpmRange;
import org.pullproof.units.Sentence;
import org.pullproof.units.Shown;
import org.pullproof.weather.Standard;

/** Words the answer of the dyno day: what the setup of the last counted pull makes, and how well that is known. */
final class DynoAnswer {
    private static final char SPACE = Figures.NO_BREAK_SPACE;

    private final Standard standard;
    private final Optional<RpmRange> band;
    private final boolean bandIsDefault;
    private final List<Setup> setups;
    private final Figures figures;
    private final WeatherFlags weather;

    DynoAnswer(
            Standard standard,
            Optional<RpmRange> band,
            boolean bandIsDefault,
            List<Setup> setups,
            Figures figures,
            WeatherFlags weather) {
        this.standard = standard;
        this.band = band;
        this.bandIsDefault = bandIsDefault;
        this.setups = setups;
        this.figures = figures;
        this.weather = weather;
    }

    Sentence sentence(List<PullFindings> pulls, List<SetupPower> powers) {
        if (pulls.isEmpty()) {
            return new Sentence("No pull yet: type the air of the day, then take in the first pull file.");
        }
        Optional<String> latest = pulls.stream()
                .filter(pull -> !pull.excluded() && pull.bandMeasuredKw().isPresent())
                .reduce((first, last) -> last)
                .map(pull -> pull.pull().setup());
        return latest.flatMap(setup -> powers.stream()
                        .filter(power -> power.setup().equals(setup))
                        .findFirst())
                .map(power -> makes(power, SetupMeans.counted(pulls, power.setup())))
                .orElseGet(this::noBandPower);
    }

    private Sentence noBandPower() {
        return new Sentence(band.map(range -> "No counted pull covers the band, " + words(range)
                        + ": pull over all of it, or tell a narrower band.")
                .orElse("The counted pulls share no 500 rpm: tell the working band, or exclude the short pull."));
    }

    private Sentence makes(SetupPower power, List<PullFindings> own) {
        String name = capital(SetupNames.name(setups, power.setup()));
        String range = band.map(DynoAnswer::words).orElseThrow();
        String shown = figures.of(power.meanKw() * 1e3, Shown.POWER);
        return new Sentence(name + " makes **" + shown + "** at the wheels, mean of " + range
                + (bandIsDefault ? " (all that the pulls cover)" : "") + ", " + standing(power, own) + ", "
                + uncertainty(power, own) + "." + caution(power, own));
    }

    /** What keeps a corrected figure from being quoted. */
    private String caution(SetupPower power, List<PullFindings> own) {
        if (!power.corrected()) {
            return "";
        }
        if (own.stream().flatMap(pull -> pull.air().stream()).anyMatch(weather::isImpossible)) {
            return " **The air typed cannot be that of the place**: put it right before quoting this.";
        }
        boolean outside =
                own.stream().flatMap(pull -> pull.factor().stream()).anyMatch(factor -> !factor.withinRange());
        return outside ? " The air lies outside the standard's range: compare on the day, don't quote." : "";
    }

    private String standing(SetupPower power, List<PullFindings> own) {
        if (power.corrected()) {
            return standard.words();
        }
        Optional<Standard> already = own.get(0).pull().correctedAlready();
        return already.map(other -> other.words() + " as the file has it, not " + standard.words())
                .orElse("as measured, not corrected because a pull has no air");
    }

    private String uncertainty(SetupPower power, List<PullFindings> own) {
        if (own.size() < 2) {
            return "one pull, no repeat yet";
        }
        double[] kilowatts = own.stream()
                .map(SetupMeans.figure(power.corrected()))
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
        return "**±" + SPACE + figures.bare(halfWidth(kilowatts) * 1e3, Shown.POWER) + "**";
    }

    /**
     * Half width of the 90 % interval of a mean from the scatter of its own values: t(0.95, n − 1)·s/√n (P, any handbook of
     * statistics). Drift is not separated here; calls on changes do that.
     */
    static double halfWidth(double[] values) {
        double scatter = new StandardDeviation().evaluate(values);
        double t = new TDistribution(values.length - 1.0).inverseCumulativeProbability(0.95);
        return t * scatter / Math.sqrt(values.length);
    }

    private static String words(RpmRange band) {
        return Figures.number(band.fromRpm(), 0) + " to " + Figures.number(band.toRpm(), 0) + SPACE + "rpm";
    }

    private static String capital(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }
}
