package org.pullproof.simulation;

import java.util.Collections;

/** A V6 looked at before purchase: the plugs may come out, the oil pressure has not been read, and it may not be driven. */
final class BlueWagonStory {
    private static final long SEED = 3100;

    private final DemoSession session;

    BlueWagonStory(DemoSession session) {
        this.session = session;
    }

    void tell() {
        session.begin(
                "v6-even-fire-60",
                "Blue wagon",
                "access=plugs-out",
                "runs=yes",
                "elevation=1200ft",
                "odometer=142000mi",
                "price=2900USD",
                "least-price=2400USD",
                "worth-sound=4200USD",
                "seller-says=one owner, moved house, no bills kept");
        SimulatedEngine engine =
                new SimulatedEngine(0.52, 7.6, 97.0, Collections.nCopies(6, SimulatedCylinder.sound(0.45)));
        session.readings(
                "at-the-seller.csv",
                new ReadingsTable(engine, SEED)
                        .balance(1, 80)
                        .dry(1, 2, 3, 4, 5, 6)
                        .sign("vacuum", "", "17inHg")
                        .sign("observation", "", "milky-cap"));
    }
}
