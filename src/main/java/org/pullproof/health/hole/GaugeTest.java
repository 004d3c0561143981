package org.pullproof.health.hole;

/**
 * How a compression reading was made, as far as the physics asks.
 *
 * @param stationPascal absolute pressure of the air, Pa
 * @param rpm cranking speed
 * @param strokes compression strokes counted
 */
public record GaugeTest(double stationPascal, double rpm, int strokes) {
    public GaugeTest {
        if (!(stationPascal > 0 && rpm > 0 && strokes > 0)) {
            throw new IllegalArgumentException("Air, speed and strokes of a compression test are above zero, were "
                    + stationPascal + " Pa, " + rpm + " rpm, " + strokes);
        }
    }
}
