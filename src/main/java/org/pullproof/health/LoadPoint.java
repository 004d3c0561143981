package org.pullproof.health;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.pullproof.health.HealthFindings.CylinderFindings;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/**
 * One thing that must be known of the engine before it is loaded: a sick engine is not pulled to obtain a baseline. The limits
 * are judgement of this project, common practice without a source.
 *
 * @param key a word that stays when the name is reworded
 * @param name of the point: "no gas in the coolant"
 * @param standing whether it is fulfilled
 * @param why what was found, or what is not known
 * @param ruinous whether running the engine at all would ruin it, not only a pull
 */
public record LoadPoint(String key, String name, Standing standing, String why, boolean ruinous) {
    private static final double GREATEST_LEAK_PERCENT = 50;
    private static final double LEAST_OIL_PSI = 8;

    /** The generic codes for misfires, P0300 to P0312. */
    private static final Pattern MISFIRE_CODE = Pattern.compile("(?i)P03(0\\d|1[0-2])");

    private record Named(String key, String words) {}

    /** Whether a point is fulfilled. */
    public enum Standing {
        MET("met"),
        NOT_MET("not met"),
        NOT_KNOWN("not known");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The points of the engine, in the order they are looked at. */
    public static List<LoadPoint> of(HealthFindings findings) {
        return List.of(
                coolant(findings).thatRuins(),
                leak(findings),
                knock(findings).thatRuins(),
                oil(findings).thatRuins(),
                codes(findings));
    }

    private LoadPoint thatRuins() {
        return new LoadPoint(key, name, standing, why, true);
    }

    /** Whether what was read forbids to run the engine at all. */
    public boolean forbidsRunning() {
        return ruinous && standing == Standing.NOT_MET;
    }

    private static LoadPoint coolant(HealthFindings findings) {
        Named name = new Named("coolant", "no gas in the coolant");
        return word(findings, TestKind.COOLANT_GAS)
                .map(word -> word.equals("negative")
                        ? met(name, "the coolant-gas test is negative")
                        : notMet(name, "the coolant-gas test is positive"))
                .orElseGet(() -> notKnown(name, "the coolant-gas test has not been made"));
    }

    private static LoadPoint leak(HealthFindings findings) {
        Named name = new Named(
                "leak",
                "every cylinder holds: leak-down under " + Figures.percent(GREATEST_LEAK_PERCENT, 0)
                        + ", or compression level with the others");
        List<Integer> leaky =
                numbers(findings, cylinder -> cylinder.leakPercent().orElse(0) >= GREATEST_LEAK_PERCENT);
        if (!leaky.isEmpty()) {
            return notMet(name, "as much or more leaks from " + Phrase.cylinders(leaky));
        }
        List<Integer> low = numbers(findings, cylinder -> cylinder.state() == HealthFindings.State.LOW);
        if (!low.isEmpty()) {
            return notMet(name, "low: " + Phrase.cylinders(low));
        }
        List<Integer> open = numbers(findings, cylinder -> !holds(cylinder));
        return open.isEmpty()
                ? met(name, "all of them do")
                : notKnown(name, "neither is known of " + Phrase.cylinders(open));
    }

    private static boolean holds(CylinderFindings cylinder) {
        OptionalDouble leak = cylinder.leakPercent();
        return leak.isPresent() || (cylinder.dry().isPresent() && cylinder.state() == HealthFindings.State.LEVEL);
    }

    private static List<Integer> numbers(
            HealthFindings findings, java.util.function.Predicate<CylinderFindings> holds) {
        return findings.cylinders().stream()
                .filter(holds)
                .map(CylinderFindings::number)
                .toList();
    }

    private static LoadPoint knock(HealthFindings findings) {
        Named name = new Named("knock", "no deep knock");
        if (observed(findings, "knock-at-2500")) {
            return notMet(name, "a knock was heard at 2,500 rpm");
        }
        return observed(findings, "no-knock")
                ? met(name, "none was heard at 2,500 rpm")
                : notKnown(name, "nobody listened at 2,500 rpm");
    }

    private static LoadPoint oil(HealthFindings findings) {
        Named name = new Named(
                "oil-pressure",
                "oil pressure at hot idle " + Figures.number(LEAST_OIL_PSI, 0) + " psi (55 kPa) or more");
        Optional<Quantity> read = sign(findings, TestKind.OIL_PRESSURE).flatMap(Reading.Sign::figure);
        return read.map(pressure -> pressure.pressure().in(Unit.PSI) >= LEAST_OIL_PSI
                        ? met(name, pressure + " was read")
                        : notMet(name, pressure + " was read"))
                .orElseGet(() -> notKnown(name, "it has not been read"));
    }

    private static LoadPoint codes(HealthFindings findings) {
        Named name = new Named("codes", "no stored code of a misfire");
        return word(findings, TestKind.CODES)
                .map(word -> codes(name, word))
                .orElseGet(() -> notKnown(name, "no codes were read; an engine without a computer has none"));
    }

    private static LoadPoint codes(Named name, String word) {
        if (word.equals("not-ready")) {
            return notKnown(name, "the monitors are not ready");
        }
        return MISFIRE_CODE.matcher(word).find() ? notMet(name, word + " is stored") : met(name, word + " was read");
    }

    private static LoadPoint met(Named name, String why) {
        return new LoadPoint(name.key(), name.words(), Standing.MET, why, false);
    }

    private static LoadPoint notMet(Named name, String why) {
        return new LoadPoint(name.key(), name.words(), Standing.NOT_MET, why, false);
    }

    private static LoadPoint notKnown(Named name, String why) {
        return new LoadPoint(name.key(), name.words(), Standing.NOT_KNOWN, why, false);
    }

    private static Optional<Reading.Sign> sign(HealthFindings findings, TestKind test) {
        return findings.engineSigns().stream()
                .filter(sign -> sign.test() == test && sign instanceof Reading.Sign)
                .map(Reading.Sign.class::cast)
                .findFirst();
    }

    private static Optional<String> word(HealthFindings findings, TestKind test) {
        return sign(findings, test).flatMap(Reading.Sign::word);
    }

    private static boolean observed(HealthFindings findings, String word) {
        return findings.engineSigns().stream()
                .filter(sign -> sign.test() == TestKind.OBSERVATION)
                .anyMatch(
                        sign -> sign instanceof Reading.Sign told && told.word().equals(Optional.of(word)));
    }

    /** "not met: no deep knock (a knock was heard at 2,500 rpm)". */
    public String sentence() {
        return standing.words() + ": " + name + " (" + why + ")";
    }
}
