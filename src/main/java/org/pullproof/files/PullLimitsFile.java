package org.pullproof.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.pullproof.dyno.PullLimits;

/** The limits that pulls are judged by, as the program brings them along; one that cannot be read is a fault of the program. */
public final class PullLimitsFile {
    private static final String NAME = "/org/pullproof/dyno/pull-limits.json";

    /** Reads the limits of the program. */
    public PullLimits read() {
        try (InputStream in = PullLimitsFile.class.getResourceAsStream(NAME)) {
            if (in == null) {
                throw new IllegalStateException("The program lacks its file " + NAME);
            }
            return limits(JsonPlace.parse(NAME, in.readAllBytes()));
        } catch (IOException broken) {
            throw new UncheckedIOException("The program's file " + NAME + " cannot be read", broken);
        }
    }

    private static PullLimits limits(JsonPlace file) throws BadFileException {
        return new PullLimits(
                value(file, "bandMarginRpm"),
                value(file, "sparseRpm"),
                value(file, "fewestSamples"),
                value(file, "gapTimes"),
                value(file, "throttleShare"),
                value(file, "throttleFall"),
                value(file, "liftPercentPerTenth"),
                value(file, "liftTailRpm"),
                value(file, "liftPowerShare"),
                value(file, "dipPercent"),
                value(file, "dipRpm"),
                value(file, "slipPercent"),
                value(file, "unlockedPercent"),
                value(file, "noiseRmsPercent"),
                value(file, "noiseSinglePercent"),
                value(file, "noiseWindowRpm"),
                value(file, "sweepRatePercent"),
                value(file, "coolantC"),
                value(file, "oilC"),
                value(file, "intakeC"),
                value(file, "soakedC"),
                value(file, "lambdaMoved"),
                value(file, "leanLambda"),
                value(file, "leanChargedLambda"),
                value(file, "leanSeconds"),
                value(file, "leanStep"),
                value(file, "weakVolts"),
                value(file, "fuelFallPercent"),
                value(file, "boostKpa"),
                value(file, "constantPercent"),
                value(file, "ratioPercent"),
                value(file, "factorPercent"),
                value(file, "sameCorrelation"));
    }

    private static double value(JsonPlace file, String key) throws BadFileException {
        return file.at(key).need("value", JsonPlace::number);
    }
}
