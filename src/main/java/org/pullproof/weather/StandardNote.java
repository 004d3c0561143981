package org.pullproof.weather;

/**
 * What a person must know of a standard before choosing it.
 *
 * @param standard which
 * @param reference the air it brings power to
 * @param pressure which pressure of the air enters
 * @param form the factor; pd dry pressure, p total, t temperature
 * @param range of air and factor that it is made for
 * @param status where form and range are known from
 * @param sentence what it is for, in one sentence
 */
public record StandardNote(
        Standard standard,
        String reference,
        String pressure,
        String form,
        String range,
        String status,
        String sentence) {
    private static final String DRY = "dry: station pressure less vapour";

    /** UN R85, annex 5: the factor of a spark-ignition engine is that of an engine that breathes freely. */
    public static final String CHARGED =
            "This factor is not meant for a charged engine with boost control (UN R85): the control makes good what the air"
                    + " lacks. Compare measured power too.";

    /** Every standard here is written for the engine alone. */
    public static final String AT_THE_WHEELS =
            "The standards speak of the engine; the same factor on wheel power is a convention.";

    public static StandardNote of(Standard standard) {
        return switch (standard) {
            case SAE_J1349 -> saeJ1349();
            case SAE_J607 -> saeJ607();
            case ISO_1585 -> iso1585();
            case DIN_70020 -> din70020();
            case NONE -> none();
        };
    }

    private static StandardNote saeJ1349() {
        return new StandardNote(
                Standard.SAE_J1349,
                "25 °C, 99 kPa dry",
                DRY,
                "1.18 (99/pd) √((t + 273)/298) − 0.18, 85 % mechanical efficiency assumed",
                "15 to 35 °C and 90 to 105 kPa dry",
                "form seen quoted, not in the standard; range from memory",
                "Present American practice; friction is not corrected, so thin air is corrected a little more.");
    }

    private static StandardNote saeJ607() {
        return new StandardNote(
                Standard.SAE_J607,
                "60 °F, 29.92 inHg dry",
                DRY,
                "(29.92/pd) √((t + 459.67)/519.67)",
                "none stated",
                "form seen quoted, not in the standard; name from memory",
                "Old practice, often called STD; cold dense reference air, so its figures read about 4 % above SAE J1349.");
    }

    private static StandardNote iso1585() {
        return new StandardNote(
                Standard.ISO_1585,
                "25 °C, 99 kPa dry",
                DRY,
                "(99/pd)^1.2 ((t + 273.15)/298)^0.6",
                "10 to 45 °C, factor 0.93 to 1.07",
                "reference and temperatures published (EU 134/2014); form and limits from memory",
                "International and European practice, as UN R85; near SAE J1349 within its range.");
    }

    private static StandardNote din70020() {
        return new StandardNote(
                Standard.DIN_70020,
                "20 °C, 1013 hPa total",
                "total: station pressure, moisture not taken out",
                "(1013/p) √((t + 273)/293)",
                "none stated",
                "from memory",
                "Old German practice; it leaves moisture aside, so damp days read low.");
    }

    private static StandardNote none() {
        return new StandardNote(
                Standard.NONE,
                "none",
                "none",
                "1",
                "none",
                "no standard",
                "Power as measured; pulls of different air are not comparable.");
    }
}
