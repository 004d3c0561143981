package org.pullproof.tuneup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;
import org.pullproof.units.Unit;

/**
 * What the settings amount to in words. Limits are judgement, common practice without a source: the pedal opens the throttle to 98 %
 * or more; a sound canister holds its vacuum for 60 s; two readings of one advance agree within 2°.
 */
final class SettingsWords {
    private static final double FULLY_OPEN = 0.98;
    private static final double HOLDS_SECONDS = 60;
    private static final double AGREE_DEGREES = 2;

    private final BaseSettings settings;
    private final Figures figures;

    SettingsWords(BaseSettings settings, Figures figures) {
        this.settings = settings;
        this.figures = figures;
    }

    /** "Base 10° + mechanical 22° = total 32° at 3,500 rpm, full throttle." Empty while nothing of it is known. */
    Optional<String> timing() {
        Optional<Quantity> base = settings.of(Setting.BASE_TIMING);
        Optional<Quantity> mechanical = settings.of(Setting.MECHANICAL);
        OptionalDouble total = settings.totalDegrees();
        if (total.isPresent()) {
            return Optional.of("Base " + degrees(base.orElseThrow()) + " + mechanical "
                    + degrees(mechanical.orElseThrow()) + " = total " + degrees(total.getAsDouble()) + at()
                    + ", full throttle. " + vacuum());
        }
        return base.map(told -> "Base " + degrees(told) + "; the total at full throttle is not known before the"
                        + " mechanical advance at pull rpm is read.")
                .or(() -> mechanical.map(told -> "Mechanical " + degrees(told)
                        + "; the total at full throttle is not known before the base timing is read."));
    }

    private String at() {
        return settings.of(Setting.PULL_RPM)
                .map(rpm -> " at " + figures.of(rpm.si(), Shown.SPEED))
                .orElse("");
    }

    private String vacuum() {
        if (settings.source().filter(source -> source == VacuumSource.NONE).isPresent()) {
            return "There is no vacuum advance.";
        }
        return settings.of(Setting.CANISTER_ADVANCE)
                .map(told -> "The vacuum canister adds " + degrees(told)
                        + " at part load, next to nothing at full throttle.")
                .orElse("What the vacuum canister adds at part load is not told.");
    }

    /** What is remarkable, one sentence each. */
    List<String> remarks() {
        return Stream.of(throttle(), canister(), falling(), disagreeing())
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<String> throttle() {
        return settings.of(Setting.THROTTLE)
                .filter(open -> open.si() < FULLY_OPEN)
                .map(open -> "The pedal opens the throttle to " + Figures.percent(open.in(Unit.PERCENT), 0)
                        + ": 98" + Figures.NO_BREAK_SPACE + "% or more is wanted (carpet, slack of the cable,"
                        + " secondaries); no power is cheaper (judgement).");
    }

    private Optional<String> canister() {
        return settings.of(Setting.CANISTER_HOLDS)
                .filter(held -> held.si() < HOLDS_SECONDS)
                .map(held -> "The canister lost its vacuum after " + Figures.number(held.si(), 0)
                        + Figures.NO_BREAK_SPACE + "s; a sound one holds 15 inHg for 60 s (judgement).");
    }

    private Optional<String> falling() {
        List<CurvePoint> curve = settings.curve();
        for (int i = 1; i < curve.size(); i++) {
            if (curve.get(i).advance().si() < curve.get(i - 1).advance().si()) {
                return Optional.of(
                        "The advance falls from " + degrees(curve.get(i - 1).advance()) + " to "
                                + degrees(curve.get(i).advance()) + " at "
                                + figures.of(curve.get(i).speed().si(), Shown.SPEED)
                                + ": weights that stick, or a reading to take again.");
            }
        }
        return Optional.empty();
    }

    private Optional<String> disagreeing() {
        Optional<Quantity> mechanical = settings.of(Setting.MECHANICAL);
        Optional<Quantity> speed = settings.of(Setting.PULL_RPM);
        if (mechanical.isEmpty() || speed.isEmpty()) {
            return Optional.empty();
        }
        double told = mechanical.get().si();
        return onCurve(speed.get().si()).stream()
                .filter(read -> Math.abs(read - told) > AGREE_DEGREES)
                .mapToObj(read -> "The curve reads " + degrees(read) + at() + ", the mechanical advance told is "
                        + degrees(told) + ": read one of them again.")
                .findFirst();
    }

    /** The curve between its points, degrees; empty outside them. */
    private OptionalDouble onCurve(double rpm) {
        List<CurvePoint> curve = settings.curve();
        for (int i = 1; i < curve.size(); i++) {
            double from = curve.get(i - 1).speed().si();
            double to = curve.get(i).speed().si();
            if (from <= rpm && rpm <= to && to > from) {
                double low = curve.get(i - 1).advance().si();
                double high = curve.get(i).advance().si();
                return OptionalDouble.of(low + (high - low) * (rpm - from) / (to - from));
            }
        }
        return OptionalDouble.empty();
    }

    /** Every setting told, in words with its figure. */
    List<String> told() {
        List<String> told = new ArrayList<>();
        settings.values().forEach((setting, value) -> told.add(setting.words() + ": " + value));
        settings.source().ifPresent(source -> told.add("Vacuum taken " + source.words()));
        if (!settings.curve().isEmpty()) {
            told.add("Mechanical advance: "
                    + String.join(
                            ", ",
                            settings.curve().stream()
                                    .map(point -> degrees(point.advance()) + " at "
                                            + figures.of(point.speed().si(), Shown.SPEED))
                                    .toList()));
        }
        return told;
    }

    private static String degrees(Quantity angle) {
        return degrees(angle.si());
    }

    private static String degrees(double angle) {
        return Figures.number(angle, angle == Math.rint(angle) ? 0 : 1) + "°";
    }
}
