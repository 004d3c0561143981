package org.pullproof.simulation;

import java.util.List;

/** An in-line four with coils on the plugs, just bought; the exhaust valve of cylinder 3 leaks, and every test shows it. */
final class GreenHatchStory {
    private static final long SEED = 1800;

    private final DemoSession session;

    GreenHatchStory(DemoSession session) {
        this.session = session;
    }

    void tell() {
        session.begin(
                "i4-coil-on-plug",
                "Green hatch",
                "access=own-it",
                "runs=yes",
                "elevation=120m",
                "odometer=187000km",
                "fuel=95 octane",
                "worth-sound=3200EUR",
                "budget=900EUR",
                "hour-price=10EUR",
                "seller-says=shakes a little when cold");
        SimulatedEngine engine = new SimulatedEngine(
                0.45,
                8.0,
                100.2,
                List.of(
                        SimulatedCylinder.sound(0.3),
                        SimulatedCylinder.sound(0.35),
                        SimulatedCylinder.leakingExhaustValve(4.5),
                        SimulatedCylinder.sound(0.32)));
        session.readings(
                "first-evening.csv",
                new ReadingsTable(engine, SEED)
                        .balance(1, 115)
                        .balance(2, 115)
                        .dry(1, 2, 3, 4)
                        .wet(3, 2)
                        .leakdown(90, 1.0, 3, 2)
                        .sign("oil-pressure", "", "190kPa")
                        .sign("observation", "", "no-knock")
                        .sign("coolant-gas", "", "negative")
                        .sign("plug", "3", "normal"));
    }
}
