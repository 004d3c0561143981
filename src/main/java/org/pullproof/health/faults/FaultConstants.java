package org.pullproof.health.faults;

import java.util.List;
import java.util.Map;
import org.pullproof.health.AirPlace;
import org.pullproof.health.hole.Cranking;

/**
 * Every constant of the fault model. All are judgement of this project and stand in {@code faults.json} with name, unit and words.
 */
public record FaultConstants(
        Priors priors,
        RingLeak ringLeak,
        Level level,
        Oil oil,
        Idle idle,
        Steps holes,
        Steps tableAreas,
        Cranking cranking,
        LeakDown leakDown,
        Hearing hearing,
        GaugeScatter gauge,
        BalanceScatter balance,
        PlugLooks plugs,
        Strange strange,
        Signs signs,
        Verdicts verdicts,
        FurtherTests furtherTests) {

    /**
     * What is believed before any reading.
     *
     * @param faultyCylinders λ, expected faulty cylinders in an engine
     * @param shares part of each fault among them, percent
     * @param holes size of the hole by fault, mm²
     * @param states weight of each state of the engine
     * @param heldOpenToExhaust chance that a valve held open is the exhaust valve
     * @param wholeEngine prior chance of what has no readings here, by key
     */
    public record Priors(
            double faultyCylinders,
            Map<Fault, Double> shares,
            Map<Fault, LogNormal> holes,
            Map<EngineState, Double> states,
            double heldOpenToExhaust,
            Map<String, Double> wholeEngine) {}

    /**
     * R, the ring leak common to the engine.
     *
     * @param usual in a usual engine, mm²
     * @param allTired with all rings tired, mm²
     * @param grid where it is looked at
     * @param ownSd how far a cylinder's own leak differs, standard deviation of the logarithm
     */
    public record RingLeak(LogNormal usual, LogNormal allTired, Steps grid, double ownSd) {}

    /**
     * g, the common ln-scale of all compression readings: gauge, starter's speed, errors of the profile.
     *
     * @param sd its standard deviation
     * @param means its mean by state of the engine
     * @param guessedGeometry factor on every sd where the geometry is a guess
     * @param step of its grid
     * @param below how far the grid goes below the readings
     * @param above how far above
     * @param atLeast where the grid ends at the earliest
     * @param wetToDry what a wet reading is multiplied by where no dry one is
     * @param tightMm2 hole of a cylinder that seals well, mm²
     */
    public record Level(
            double sd,
            Map<EngineState, Double> means,
            double guessedGeometry,
            double step,
            double below,
            double above,
            double atLeast,
            double wetToDry,
            double tightMm2) {}

    /**
     * w, what oil does.
     *
     * @param putInCm3 oil put in where it was not recorded, cm³
     * @param staysIn share of it that stays in the chamber
     * @param leakLeft ring leak left when wet
     * @param leakLeftFlat the same in a flat engine, where oil runs off to one side
     * @param weights of these
     * @param wornRings factors on the leak left where the rings are worn
     * @param holedPiston leak left of a holed piston, whatever the oil
     */
    public record Oil(
            double putInCm3,
            List<Double> staysIn,
            List<Double> leakLeft,
            List<Double> leakLeftFlat,
            List<Double> weights,
            List<Double> wornRings,
            List<Double> holedPiston) {}

    /**
     * u, what a cylinder still gives at idle.
     *
     * @param left places of u
     * @param weights of these by fault, for faults without a hole
     * @param lossPerMm2 k in u = exp(−k x), for a hole of x mm²
     * @param lossDeviations where k is looked at, standard deviations
     * @param fillings φ, share of the charge that comes in where a valve does not open
     * @param exhaustSide chance that it is the exhaust valve
     * @param exhaustSideLeft u then
     */
    public record Idle(
            List<Double> left,
            Map<Fault, List<Double>> weights,
            LogNormal lossPerMm2,
            List<Double> lossDeviations,
            List<Double> fillings,
            double exhaustSide,
            List<Double> exhaustSideLeft) {}

    /**
     * The leak-down test.
     *
     * @param supplyPsi where not recorded, psi
     * @param restrictorMm where not recorded, mm
     * @param airKelvin of its air, K
     * @param staticSd how far the hole at rest differs from the hole while cranked, sd of the logarithm
     * @param staticDeviations where that is looked at, standard deviations
     * @param readingSd of a reading, percent points
     * @param zoneSd of the edges of a zone, percent points
     */
    public record LeakDown(
            double supplyPsi,
            double restrictorMm,
            double airKelvin,
            double staticSd,
            List<Double> staticDeviations,
            double readingSd,
            double zoneSd) {}

    /**
     * Whether escaping air is heard.
     *
     * @param half q₅₀, flow heard by half the listeners, g/s
     * @param falsely f, chance that a place is named where no air goes
     * @param most chance that a loud flow is heard
     * @param steepness exponent is 1/steepness
     * @param least flow always there, g/s
     */
    public record Hearing(
            Map<AirPlace, Double> half, Map<AirPlace, Double> falsely, double most, double steepness, double least) {}

    /**
     * Scatter of compression readings, in ln units unless told.
     *
     * @param blunder ε, chance that a reading is a blunder
     * @param blunderWidth of the flat density of a blunder, ln units
     * @param dry of a dry reading
     * @param notOpening besides, where a valve does not open
     * @param first of first over last stroke
     * @param firstLoss besides, times the loss by the hole
     * @param mostLoss largest loss counted
     * @param bumpSd besides, where rings or piston leak
     * @param bumpRings how much less the first stroke of worn rings shows
     * @param bumpPiston the same of a holed piston
     * @param wet of wet over dry
     * @param wetGain besides, times the gain by oil
     * @param readPsi error of reading the gauge, psi
     * @param stepPsi resolution of the gauge where not recorded, psi
     * @param floorKpa least reading that is taken to the logarithm, kPa
     */
    public record GaugeScatter(
            double blunder,
            double blunderWidth,
            double dry,
            double notOpening,
            double first,
            double firstLoss,
            double mostLoss,
            double bumpSd,
            double bumpRings,
            double bumpPiston,
            double wet,
            double wetGain,
            double readPsi,
            double stepPsi,
            double floorKpa) {}

    /**
     * Scatter of the balance test.
     *
     * @param fewest drops that are needed
     * @param levels ln of b over the mean of the upper half
     * @param relative κ, scatter of a reading relative to b
     * @param relativeWeights of these
     * @param floor of the scatter, rpm
     * @param rounding besides, rpm
     * @param even τ/κ of most sound cylinders
     * @param uneven τ/κ of the others
     * @param evenShare share of the former
     * @param constant part of the unevenness that a dead cylinder keeps
     * @param blunder chance that one round is a blunder
     * @param widthShare width of a blunder's density over the largest mean drop
     */
    public record BalanceScatter(
            int fewest,
            List<Double> levels,
            List<Double> relative,
            List<Double> relativeWeights,
            double floor,
            double rounding,
            double even,
            double uneven,
            double evenShare,
            double constant,
            double blunder,
            double widthShare) {}

    /**
     * How a plug looks.
     *
     * @param looks the words, in the order of the percentages
     * @param percent P(look | fault)
     * @param trust share of looks that mean something; the rest is any look
     */
    public record PlugLooks(List<String> looks, Map<Fault, List<Double>> percent, double trust) {}

    /**
     * What {@code other} makes of readings: anything.
     *
     * @param zone chance of a zone of a leak-down tester
     * @param heard chance that a place is named
     * @param leakWidth width of its density and of a blunder's in leak-down, percent points
     */
    public record Strange(double zone, double heard, double leakWidth) {}

    /**
     * Likelihood ratios of signs of the whole engine.
     *
     * @param ratios by sign, then by what it speaks of: a state, a fault, or a name of several faults
     * @param slowVolts cranking below this is slow, V
     * @param lowHump a starter hump below this percent of the highest is low
     * @param evenHump humps all above this percent of the highest are even
     * @param vacuumLow steady vacuum up to here is low, inHg at sea level
     * @param vacuumFrom from here it is in range, inHg
     * @param vacuumTo up to here
     * @param metresAnInHg height that lowers the vacuum by 1 inHg, m
     */
    public record Signs(
            Map<String, Map<String, Double>> ratios,
            double slowVolts,
            double lowHump,
            double evenHump,
            double vacuumLow,
            double vacuumFrom,
            double vacuumTo,
            double metresAnInHg) {}

    /**
     * Where words begin.
     *
     * @param sound p(sound) from here is yes
     * @param notSound up to here it may be no
     * @param called a cylinder, pair or state is called faulty from here
     * @param named a fault or its family is named from here
     * @param settled from here no test is worth proposing for its information alone
     * @param doubtful chance of a blunder from which a reading is repeated
     * @param fits Δ from which a reading fits
     * @param strongly Δ from which it does so strongly
     * @param thinAirKpa altitude is spoken of below this, kPa
     * @param thinAirPercent and where sea level makes readings this much higher
     */
    public record Verdicts(
            double sound,
            double notSound,
            double called,
            double named,
            double settled,
            double doubtful,
            double fits,
            double strongly,
            double thinAirKpa,
            double thinAirPercent) {}

    /**
     * The next test.
     *
     * @param leakZones edges of the classes of a leak-down reading, percent
     * @param wetGains classes of a wet reading over the dry one
     * @param dryShares classes of a dry reading over the others'
     * @param dropShares classes of a drop over T
     * @param positive P(positive | fault) of tests without physics here, by test; {@code else} for all other faults
     * @param borescope P(burnt edge, bore mark, clean | fault); {@code else} for all other faults
     * @param wholeEngine tests of the whole engine, by test
     * @param lowRunning running compression below this percent of the highest is low
     * @param acts money by act
     * @param cures faults by act
     * @param left money a fault costs that is left, or missed
     * @param worthwhile least net value proposed
     */
    public record FurtherTests(
            List<Double> leakZones,
            List<Double> wetGains,
            List<Double> dryShares,
            List<Double> dropShares,
            Map<String, Map<String, Double>> positive,
            Map<String, List<Double>> borescope,
            Map<String, WholeEngineTest> wholeEngine,
            double lowRunning,
            Map<String, Double> acts,
            Map<String, List<Fault>> cures,
            double left,
            double worthwhile) {}

    /**
     * A test of the whole engine that speaks of one fault.
     *
     * @param fault its key
     * @param results what may be found
     * @param with P(result | fault), sums 1
     * @param without P(result | no such fault), sums 1
     */
    public record WholeEngineTest(String fault, List<String> results, List<Double> with, List<Double> without) {
        public WholeEngineTest {
            results = List.copyOf(results);
            with = List.copyOf(with);
            without = List.copyOf(without);
        }
    }
}
