package org.pullproof.ui;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.pullproof.health.FaultFindings;
import org.pullproof.tuneup.Afterwards;
import org.pullproof.tuneup.PartsToBuy;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.units.Money;

/** Records with nothing in them, for tests that show an empty sheet. */
final class Blank {
    private static final Map<Class<?>, Object> NOTHING = Map.ofEntries(
            Map.entry(List.class, List.of()),
            Map.entry(Set.class, Set.of()),
            Map.entry(Map.class, Map.of()),
            Map.entry(Optional.class, Optional.empty()),
            Map.entry(OptionalDouble.class, OptionalDouble.empty()),
            Map.entry(OptionalInt.class, OptionalInt.empty()),
            Map.entry(String.class, "USD"),
            Map.entry(FaultFindings.class, FaultFindings.none()),
            Map.entry(TuneUpFindings.Plan.class, new TuneUpFindings.Plan(Map.of(), List.of(), 0)),
            Map.entry(PartsToBuy.class, new PartsToBuy(List.of())),
            Map.entry(
                    TuneUpFindings.Settings.class, new TuneUpFindings.Settings(List.of(), Optional.empty(), List.of())),
            Map.entry(Afterwards.class, new Afterwards(List.of(), List.of(), Optional.empty())),
            Map.entry(Money.class, Money.of(0, "USD")),
            Map.entry(boolean.class, false),
            Map.entry(int.class, 0),
            Map.entry(double.class, 0.0));

    private Blank() {}

    /** A record whose components hold the given values where the type fits, and nothing elsewhere. */
    static <R extends Record> R of(Class<R> type, Object... given) {
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        Object[] values = Arrays.stream(types).map(part -> value(part, given)).toArray();
        try {
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Object value(Class<?> type, Object... given) {
        Optional<Object> fits = Arrays.stream(given).filter(type::isInstance).findFirst();
        if (fits.isPresent()) {
            return fits.get();
        }
        Object nothing = type.isEnum() ? type.getEnumConstants()[0] : NOTHING.get(type);
        if (nothing == null) {
            throw new IllegalStateException("No empty value for " + type);
        }
        return nothing;
    }
}
