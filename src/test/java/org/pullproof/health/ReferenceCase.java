package org.pullproof.health;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.pullproof.car.Car;
import org.pullproof.engine.Bank;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.FiringOrder;
import org.pullproof.engine.FuelSystem;
import org.pullproof.engine.Geometry;
import org.pullproof.engine.Ignition;
import org.pullproof.engine.Known;
import org.pullproof.engine.Layout;
import org.pullproof.engine.Rotor;
import org.pullproof.files.TradeConstants;
import org.pullproof.health.faults.FaultConstants;
import org.pullproof.health.faults.FaultModel;
import org.pullproof.health.faults.FaultPosterior;
import org.pullproof.session.Judgement;

/**
 * One of ten invented cases with its posteriors, computed apart from this program from the method alone.
 *
 * @param readings as a table gives them
 * @param expected profile and posteriors
 */
record ReferenceCase(String name, EngineProfile profile, List<Reading> readings, JsonNode expected) {
    static final FaultConstants CONSTANTS = new TradeConstants().faults(Judgement.own());
    static final FaultModel MODEL = new FaultModel(CONSTANTS);
    static final List<String> NAMES = List.of(
            "d1-sound-v8",
            "d2-dead-cylinder-i4",
            "d3-exhaust-valve-v6",
            "d4a-neighbours-i4",
            "d4b-neighbours-heard-i4",
            "d5-rings-all-v8-high",
            "d6-intake-valve-i4",
            "d7-one-wild-reading-i6",
            "d8-altitude-only-i4",
            "d9-rings-one-i6");

    static ReferenceCase named(String name) {
        JsonNode expected = json("diagnosis/" + name + ".expected.json");
        EngineProfile profile = profile(expected.required("profile"));
        return new ReferenceCase(
                name, profile, readings(profile, expected, Sheets.table("diagnosis/" + name + ".csv")), expected);
    }

    /** With more rows below the table. */
    ReferenceCase with(String... rows) {
        String[] table = Sheets.with(Sheets.table("diagnosis/" + name + ".csv"), rows);
        return new ReferenceCase(name, profile, readings(profile, expected, table), expected);
    }

    Evidence evidence() {
        return Evidence.of(readings, profile, car(), Sheets.US);
    }

    FaultPosterior posterior() {
        return MODEL.weigh(new WeighedReadings(evidence(), CONSTANTS).all());
    }

    Car car() {
        return Car.named("test");
    }

    double tolerance() {
        return expected.required("tolerance").doubleValue();
    }

    /** The station pressure of the case is that of every reading. */
    private static List<Reading> readings(EngineProfile profile, JsonNode expected, String[] table) {
        String station = expected.required("stationPressureKpa").asText() + "kPa";
        List<String> lines = new ArrayList<>();
        for (String line : table) {
            lines.add(line + (lines.isEmpty() ? ",station" : "," + station));
        }
        return Sheets.readings(profile, lines.toArray(String[]::new));
    }

    private static EngineProfile profile(JsonNode of) {
        List<Bank> banks = new ArrayList<>();
        List<Integer> cylinders = new ArrayList<>();
        for (JsonNode size : of.required("banks")) {
            List<Integer> bank = new ArrayList<>();
            for (int i = 0; i < size.intValue(); i++) {
                bank.add(cylinders.size() + 1);
                cylinders.add(cylinders.size() + 1);
            }
            banks.add(new Bank("bank " + (banks.size() + 1), bank, banks.isEmpty()));
        }
        return new EngineProfile(
                "reference",
                "Reference",
                banks.size() > 1 ? Layout.V : Layout.INLINE,
                banks.size() > 1 ? 90 : 0,
                banks,
                evenFiring(cylinders),
                Rotor.NONE,
                new Geometry(
                        of.required("boreMm").doubleValue() / 1e3,
                        of.required("strokeMm").doubleValue() / 1e3,
                        of.required("rodMm").doubleValue() / 1e3,
                        of.required("compressionRatio").doubleValue(),
                        of.required("intakeClosesDegreesAbdc").doubleValue(),
                        false),
                Sheets.I4.plugs(),
                Ignition.COIL_ON_PLUG,
                FuelSystem.PORT_INJECTION,
                false,
                Known.NOT_KNOWN,
                "inline-coil-on-plug",
                List.of());
    }

    private static FiringOrder evenFiring(List<Integer> cylinders) {
        int interval = 720 / cylinders.size();
        return new FiringOrder(
                cylinders, cylinders.stream().map(number -> interval).toList());
    }

    static JsonNode json(String name) {
        try (InputStream in = ReferenceCase.class.getResourceAsStream(name)) {
            return new ObjectMapper().readTree(Objects.requireNonNull(in));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
