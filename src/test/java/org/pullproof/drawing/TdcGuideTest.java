package org.pullproof.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pullproof.drawing.Shape.Text;
import org.pullproof.engine.EngineProfile;
import org.pullproof.testing.Tools;

/**
 * Angles follow from the list of intervals of each profile: mark at the crank angle modulo 360°, post at half of it (Army TM 9-8000,
 * page 2-18: the distributor turns once in two turns of the crank). The damper turns clockwise, so what comes later lies left.
 */
class TdcGuideTest {
    private static final EngineProfile ODD_V6 = Tools.profile("v6-odd-fire-90");

    /** At this size one dial is drawn at full scale. */
    private static Picture guide(EngineProfile profile, int now, int dials) {
        return new Picture(TdcGuide.of(profile, now, dials * 330, 330));
    }

    private static double fromTop(Text text, double x, double y) {
        double up = y - (text.y() - 0.35 * text.size());
        return Math.floorMod(Math.round(Math.toDegrees(Math.atan2(text.x() - x, up))), 360);
    }

    private static double onDamper(Picture picture, String numbers) {
        return fromTop(picture.text(numbers), 165, 164);
    }

    /** The number on the cap is the second of that cylinder, the first stands on the damper. */
    private static double onCap(Picture picture, int cylinder) {
        Text post = picture.texts().stream()
                .filter(text -> text.words().equals(String.valueOf(cylinder)) && text.x() > 330)
                .findFirst()
                .orElseThrow();
        return fromTop(post, 495, 164);
    }

    @ParameterizedTest
    @CsvSource({"6, 0", "5, 270", "4, 120", "3, 30", "2, 240", "1, 150"})
    void anOddFireDamperHasItsMarksByTheListOfIntervals(String cylinder, double angle) {
        assertThat(onDamper(guide(ODD_V6, 6, 2), cylinder)).isCloseTo(angle, within(1.0));
    }

    @ParameterizedTest
    @CsvSource({"1, 0", "6, 75", "5, 120", "4, 195", "3, 240", "2, 315"})
    void thePostsStandAtHalfTheCrankAnglesFromPostOne(int cylinder, int halfAngle) {
        Picture picture = guide(ODD_V6, 6, 2);

        double fromFirst = Math.floorMod(Math.round(onCap(picture, cylinder) - onCap(picture, 1)), 360);
        assertThat(fromFirst).isCloseTo(halfAngle, within(1.5));
    }

    @Test
    void aCounterclockwiseRotorHasItsPostsTheOtherWayRound() {
        Picture picture = guide(Tools.profile("v8-distributor-order-b"), 1, 2);

        double fromFirst = Math.floorMod(Math.round(onCap(picture, 1) - onCap(picture, 5)), 360);
        assertThat(fromFirst).isCloseTo(45, within(1.5));
    }

    @Test
    void twoCylindersOfAnEvenEngineShareAMark() {
        assertThat(onDamper(guide(Tools.profile("i4-coil-on-plug"), 3, 1), "3 · 2"))
                .isZero();
    }

    @Test
    void theArrowsSayTheNextTurn() {
        assertThat(guide(ODD_V6, 6, 2).words()).contains("90°", "45°");
        assertThat(guide(ODD_V6, 1, 2).words()).contains("150°", "75°");
    }

    @Test
    void anEngineWithoutADistributorHasNoCap() {
        assertThat(guide(Tools.profile("i4-coil-on-plug"), 3, 1).words()).noneMatch(words -> words.contains("Cap"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "v6-odd-fire-90",
                "i4-coil-on-plug",
                "i3-coil-on-plug",
                "flat4-distributor",
                "v8-distributor-order-b",
                "v10-coil-on-plug",
                "v12-coil-on-plug"
            })
    void everyEngineFitsForEachOfItsCylinders(String id) {
        EngineProfile profile = Tools.profile(id);
        for (int cylinder : profile.firing().cylinders()) {
            Picture guide = new Picture(TdcGuide.of(profile, cylinder, 608, 320));
            guide.hasNothingOutside();
            guide.hasNoWordsOnWords();
            Picture strip = new Picture(CycleStrip.of(profile, cylinder, 698, 66));
            strip.hasNothingOutside();
            strip.hasNoWordsOnWords();
        }
    }

    @Test
    void theStripShowsTheTrueIntervals() {
        Picture strip = new Picture(CycleStrip.of(ODD_V6, 6, 760, 66));

        assertThat(strip.text("6").x()).isEqualTo(20 + 150);
        assertThat(strip.text("5").x()).isEqualTo(20 + 240);
        assertThat(strip.words()).contains("150°", "90°", "720°").doesNotContain("120°");
    }
}
