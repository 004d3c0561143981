package org.pullproof.app;

import org.pullproof.health.Reading;

/** What edits of readings are called, for undo. */
final class ReadingNames {
    private ReadingNames() {}

    /** {@code compression, cylinder 3} or {@code oil pressure}. */
    static String of(Reading reading) {
        String test = switch (reading.test()) {
            case COMPRESSION_DRY -> "compression";
            case COMPRESSION_WET -> "wet compression";
            case LEAKDOWN -> "leak-down";
            case WORK -> "work done";
            default -> reading.test().key().replace('-', ' ');
        };
        return reading.cylinder().isPresent()
                ? test + ", cylinder " + reading.cylinder().getAsInt()
                : test;
    }
}
