package org.pullproof.simulation;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.pullproof.app.ChangeSetup;
import org.pullproof.tuneup.PlugRecord;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/**
 * A healthy 5.6 litre V8, tuned in six changes after its tune-up. The truth planted here, percent over base: timing 32° +3.0, 35°
 * +2.9, jets two sizes up +1.2 (so 1.8 lost on timing 32°), cold-air duct +5.0 (2.0 gained), spacer +5.1 (nothing to speak of),
 * wider pipe +6.6 (1.6 gained).
 */
final class GreyCoupeStory {
    private static final long SEED = 5600;
    static final double TIMING_32 = 3.0;
    static final double TIMING_35 = 2.9;
    static final double JETS = 1.2;
    static final double DUCT = 5.0;
    static final double SPACER = 5.1;
    static final double PIPE = 6.6;

    private final DemoSession session;

    GreyCoupeStory(DemoSession session) {
        this.session = session;
    }

    void tell() {
        session.begin(
                "v8-distributor-order-a",
                "Grey coupé",
                "access=own-it",
                "runs=yes",
                "elevation=820ft",
                "odometer=84300mi",
                "fuel=91 octane, up to 10 % ethanol",
                "gear=3rd, 1.00 : 1",
                "price=6400USD",
                "worth-sound=9000USD",
                "value-per-hp=30USD",
                "hour-price=15USD",
                "budget=1500USD",
                "months=36",
                "band=2600-5000rpm",
                "seller-says=stood two winters, new carburettor, never hot");
        health();
        tuneUp();
        firstDay();
        secondDay();
        thirdDay();
    }

    private void health() {
        SimulatedEngine engine = new SimulatedEngine(0.7, 7.1, 98.3, cylinders());
        session.readings(
                "before-tune-up.csv",
                new ReadingsTable(engine, SEED)
                        .balance(1, 62)
                        .balance(2, 62)
                        .dry(IntStream.rangeClosed(1, 8).toArray())
                        .leakdown(80, 1.0, 1, 2, 6)
                        .sign("oil-pressure", "", "24psi")
                        .sign("vacuum", "", "18.5inHg")
                        .sign("coolant-gas", "", "negative")
                        .sign("observation", "", "no-knock"));
    }

    private static List<SimulatedCylinder> cylinders() {
        return IntStream.of(30, 34, 38, 31, 33, 40, 30, 35)
                .mapToObj(hundredths -> SimulatedCylinder.sound(hundredths / 100.0))
                .toList();
    }

    private void tuneUp() {
        LocalDateTime morning = LocalDateTime.of(2026, 6, 6, 9, 0);
        int[] found = {45, 43, 44, 46, 44, 52, 45, 44};
        for (int i = 0; i < found.length; i++) {
            session.plug(new PlugRecord(
                    i + 1,
                    Optional.of(Quantity.of("0.0" + found[i], Unit.IN)),
                    Optional.of(Quantity.of("0.035", Unit.IN)),
                    Optional.of(Quantity.of("25", Unit.LB_FT))));
        }
        session.tuneUp(morning);
        changed("base", "plugs, wires, cap and rotor", 146, morning.plusHours(9));
    }

    private void changed(String setup, String what, double dollars, LocalDateTime time) {
        session.change(
                new ChangeSetup.Wanted(setup, what, Map.of(), Optional.of(Money.of(dollars, "USD")), time, Set.of()));
    }

    private void firstDay() {
        DemoDay day = new DemoDay(
                session, SEED + 1, 0, LocalDateTime.of(2026, 6, 13, 13, 42), new SimulatedAir(98.6, 27, 55));
        day.pulls("base", 0, 3, "--level", "timing=26deg");
        changed("timing 32°", "total timing 26° to 32°", 0, day.time());
        day.pulls("timing 32°", TIMING_32, 3, "--level", "timing=32deg").pulls("base", 0, 2);
        changed("timing 35°", "total timing 26° to 35°", 0, day.time());
        day.pulls("timing 35°", TIMING_35, 3, "--level", "timing=35deg").pulls("timing 32°", TIMING_32, 3);
        session.spend("dyno hour, 13 June", Money.of(140, "USD"));
    }

    private void secondDay() {
        DemoDay day = new DemoDay(
                session, SEED + 2, 0.7, LocalDateTime.of(2026, 6, 20, 13, 30), new SimulatedAir(98.2, 24, 60));
        day.pulls("timing 32°", TIMING_32, 2);
        changed("jets two up", "main jets two sizes up", 18, day.time());
        day.pulls("jets two up", JETS, 3).pulls("timing 32°", TIMING_32, 2);
        changed("cold-air duct", "cold-air duct fitted", 85, day.time());
        day.pulls("cold-air duct", DUCT, 3).pulls("timing 32°", TIMING_32, 2);
        session.spend("dyno hour, 20 June", Money.of(140, "USD"));
    }

    private void thirdDay() {
        DemoDay day = new DemoDay(
                session, SEED + 3, -0.9, LocalDateTime.of(2026, 6, 27, 14, 5), new SimulatedAir(98.9, 29, 48));
        day.pulls("cold-air duct", DUCT, 2);
        changed("spacer", "10 mm spacer under the carburettor", 30, day.time());
        day.pulls("spacer", SPACER, 3).pulls("cold-air duct", DUCT, 2);
        changed("wider pipe", "wider tail pipe", 160, day.time());
        day.pulls("wider pipe", PIPE, 3).pulls("cold-air duct", DUCT, 2).pulls("wider pipe", PIPE, 2);
        session.spend("dyno hour, 27 June", Money.of(140, "USD"));
    }
}
