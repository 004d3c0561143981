package org.pullproof.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.pullproof.health.HealthLimits;

/** The limits that health is judged by, as the program brings them along; one that cannot be read is a fault of the program. */
public final class HealthLimitsFile {
    private static final String NAME = "/org/pullproof/health/health-limits.json";

    /** Reads the limits of the program. */
    public HealthLimits read() {
        try (InputStream in = HealthLimitsFile.class.getResourceAsStream(NAME)) {
            if (in == null) {
                throw new IllegalStateException("The program lacks its file " + NAME);
            }
            return limits(JsonPlace.parse(NAME, in.readAllBytes()));
        } catch (IOException broken) {
            throw new UncheckedIOException("The program's file " + NAME + " cannot be read", broken);
        }
    }

    private static HealthLimits limits(JsonPlace file) throws BadFileException {
        return new HealthLimits(
                value(file, "doubtBelowOthers"),
                value(file, "repeatApart"),
                value(file, "oilHelpsGain"),
                value(file, "crankingVolts"),
                value(file, "thinAirKpa"),
                value(file, "shortOfExpected"),
                value(file, "suspectLeak"),
                value(file, "oneHoleSpread"),
                value(file, "oneHoleSlack"),
                value(file, "weakDrop"),
                value(file, "weakScatter"),
                value(file, "deadDrop"),
                value(file, "oilFailsPsi"),
                value(file, "oilPlainPsi"),
                value(file, "lowHump"),
                value(file, "chainSlack"),
                value(file, "chargingFrom"),
                value(file, "chargingTo"),
                value(file, "misfireShare"));
    }

    private static double value(JsonPlace file, String key) throws BadFileException {
        return file.at(key).need("value", JsonPlace::number);
    }
}
