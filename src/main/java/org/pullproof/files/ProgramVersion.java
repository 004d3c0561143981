package org.pullproof.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version of this program, as the build wrote it. */
public final class ProgramVersion {
    private ProgramVersion() {}

    /** For instance {@code 0.1.0-SNAPSHOT}. */
    public static String text() {
        Properties properties = new Properties();
        try (InputStream in = ProgramVersion.class.getResourceAsStream("version.properties")) {
            if (in == null) {
                throw new IllegalStateException("version.properties belongs into the program");
            }
            properties.load(in);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return properties.getProperty("version", "");
    }
}
