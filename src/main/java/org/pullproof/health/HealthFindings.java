package org.pullproof.health;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.pullproof.units.Quantity;
import org.pullproof.units.Sentence;

/**
 * What the readings amount to.
 *
 * @param verdict sound, not sound, not settled
 * @param answer the answer in one sentence, for the head of the sheet
 * @param reasons why, one sentence each, strongest first
 * @param remarks what else must be said: what was not recorded and is taken as alike, what the air explains, what to read again
 * @param missing tests whose reading the verdict still lacks
 * @param spreadPercent (highest − lowest)/highest of comparable dry readings, percent
 * @param rules rules of compression side by side, strictest first
 * @param cylinders findings by cylinder, 1 first
 * @param engineSigns what was read of the whole engine, the last of each kind
 * @param faults what may be wrong, how sure, and which test is worth doing next
 */
public record HealthFindings(
        Verdict verdict,
        Sentence answer,
        List<String> reasons,
        List<String> remarks,
        List<TestKind> missing,
        OptionalDouble spreadPercent,
        List<Rule> rules,
        List<CylinderFindings> cylinders,
        List<Reading> engineSigns,
        FaultFindings faults) {
    public HealthFindings {
        reasons = List.copyOf(reasons);
        remarks = List.copyOf(remarks);
        missing = List.copyOf(missing);
        rules = List.copyOf(rules);
        cylinders = List.copyOf(cylinders);
        engineSigns = List.copyOf(engineSigns);
    }

    /** Whether the engine is sound. */
    public enum Verdict {
        SOUND("yes", "Sound"),
        NOT_SOUND("no", "Not sound"),
        NOT_SETTLED("not-settled", "Not settled");

        private final String key;
        private final String words;

        Verdict(String key, String words) {
            this.key = key;
            this.words = words;
        }

        public String key() {
            return key;
        }

        public String words() {
            return words;
        }
    }

    /**
     * A rule of the trade applied to the dry readings.
     *
     * @param name the rule in words
     * @param met whether the readings meet it
     * @param source where it is published, or "common practice, no source"
     * @param found what was found, in words: "lowest 92 psi is 57 % of the highest, 162 psi"
     */
    public record Rule(String name, boolean met, String source, String found) {}

    /** How a cylinder stands beside the others; word first, shape second (look.md 5). */
    public enum State {
        LEVEL,
        LOW,
        IN_DOUBT,
        NOT_MEASURED,
        NOT_COMPARABLE
    }

    /**
     * One cylinder.
     *
     * @param number its number
     * @param state how it stands
     * @param words a few words: "low, air at the exhaust"
     * @param dry the dry reading that counts
     * @param drySeaLevel the dry reading restated for 101.325 kPa, Pa over the surroundings, where the air's pressure is known
     * @param first its first stroke
     * @param wet the wet reading that counts
     * @param strokes strokes of the dry reading
     * @param leakPercent leak-down, percent, where the tester told a figure
     * @param leakWords leak-down as the tester told it: "14 %", "high"
     * @param leakAreaMm2 effective leak area, mm²
     * @param referenceLeakPercent the leak as the reference tester would show it, percent
     * @param air where air was heard
     * @param dropRpm mean drop of speed over the rounds, rpm
     * @param sharePercent drop as a share of the sum of all drops, percent
     * @param plugLook the plug's look
     * @param before what was read before work closed a chapter, one sentence each
     */
    public record CylinderFindings(
            int number,
            State state,
            String words,
            Optional<Quantity> dry,
            OptionalDouble drySeaLevel,
            Optional<Quantity> first,
            Optional<Quantity> wet,
            OptionalInt strokes,
            OptionalDouble leakPercent,
            Optional<String> leakWords,
            OptionalDouble leakAreaMm2,
            OptionalDouble referenceLeakPercent,
            Set<AirPlace> air,
            OptionalDouble dropRpm,
            OptionalDouble sharePercent,
            Optional<String> plugLook,
            List<String> before) {
        public CylinderFindings {
            air = Set.copyOf(air);
            before = List.copyOf(before);
        }
    }
}
