package org.pullproof.tuneup;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pullproof.units.Quantity;

/**
 * How the engine is set after the tune-up. What is not told is absent.
 *
 * @param values by name
 * @param source where the vacuum canister draws from
 * @param curve points of the mechanical advance, in order of engine speed
 */
public record BaseSettings(Map<Setting, Quantity> values, Optional<VacuumSource> source, List<CurvePoint> curve) {
    /** Nothing told yet. */
    public static final BaseSettings NONE = new BaseSettings(Map.of(), Optional.empty(), List.of());

    public BaseSettings {
        Map<Setting, Quantity> known = new EnumMap<>(Setting.class);
        known.putAll(values);
        known.forEach((setting, value) -> value.requireDimension(setting.dimension()));
        values = Collections.unmodifiableMap(known);
        curve = curve.stream()
                .sorted(Comparator.comparingDouble(point -> point.speed().si()))
                .toList();
    }

    public Optional<Quantity> of(Setting setting) {
        return Optional.ofNullable(values.get(setting));
    }

    /** Tells a setting, or forgets it. */
    public BaseSettings with(Setting setting, Optional<Quantity> value) {
        Map<Setting, Quantity> next = new EnumMap<>(Setting.class);
        next.putAll(values);
        value.ifPresentOrElse(told -> next.put(setting, told), () -> next.remove(setting));
        return new BaseSettings(next, source, curve);
    }

    public BaseSettings withSource(Optional<VacuumSource> next) {
        return new BaseSettings(values, next, curve);
    }

    public BaseSettings withCurve(List<CurvePoint> points) {
        return new BaseSettings(values, source, points);
    }

    public boolean isEmpty() {
        return values.isEmpty() && source.isEmpty() && curve.isEmpty();
    }

    /**
     * Total timing at pull speed, crank degrees: base + mechanical. At full throttle there is next to no vacuum, so the canister
     * adds nothing. Source: common practice, no source. Empty unless both are known.
     */
    public OptionalDouble totalDegrees() {
        Optional<Quantity> base = of(Setting.BASE_TIMING);
        Optional<Quantity> mechanical = of(Setting.MECHANICAL);
        return base.isPresent() && mechanical.isPresent()
                ? OptionalDouble.of(base.get().si() + mechanical.get().si())
                : OptionalDouble.empty();
    }
}
