package org.pullproof.dyno;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pullproof.weather.AirReading;

/**
 * One day on one dyno.
 *
 * @param date the day
 * @param air the air as read, in order of time
 * @param pulls the pulls in the order they were made
 * @param gate what was done at the gate before the first pull
 * @param facts how the car stood on the dyno, in words as typed
 * @param plan the order in which setups are to be pulled, if one was made
 */
public record DynoDay(
        LocalDate date,
        List<AirReading> air,
        List<Pull> pulls,
        DayGate gate,
        Map<DayFact, String> facts,
        Optional<DayPlan> plan) {
    public DynoDay {
        air = List.copyOf(air);
        pulls = List.copyOf(pulls);
        Map<DayFact, String> ordered = new EnumMap<>(DayFact.class);
        ordered.putAll(facts);
        facts = Collections.unmodifiableMap(ordered);
    }

    /** A day of which nothing but air and pulls is told. */
    public DynoDay(LocalDate date, List<AirReading> air, List<Pull> pulls) {
        this(date, air, pulls, DayGate.untouched(), Map.of(), Optional.empty());
    }

    public DynoDay withAir(List<AirReading> next) {
        return new DynoDay(date, next, pulls, gate, facts, plan);
    }

    public DynoDay withPulls(List<Pull> next) {
        return new DynoDay(date, air, next, gate, facts, plan);
    }

    public DynoDay withGate(DayGate next) {
        return new DynoDay(date, air, pulls, next, facts, plan);
    }

    public DynoDay withPlan(Optional<DayPlan> next) {
        return new DynoDay(date, air, pulls, gate, facts, next);
    }

    /** Tells a fact; blank forgets it. */
    public DynoDay withFact(DayFact fact, String words) {
        Map<DayFact, String> next = new EnumMap<>(DayFact.class);
        next.putAll(facts);
        if (words.isBlank()) {
            next.remove(fact);
        } else {
            next.put(fact, words.strip());
        }
        return new DynoDay(date, air, pulls, gate, next, plan);
    }
}
