package org.pullproof.files;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pullproof.engine.Bank;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.FiringOrder;
import org.pullproof.engine.FuelSystem;
import org.pullproof.engine.Geometry;
import org.pullproof.engine.Ignition;
import org.pullproof.engine.Known;
import org.pullproof.engine.Layout;
import org.pullproof.engine.OtherEngine;
import org.pullproof.engine.PlugSpec;
import org.pullproof.engine.Rotor;
import org.pullproof.units.Dimension;
import org.pullproof.units.Quantity;
import org.pullproof.units.Quoted;
import org.pullproof.units.Unit;

/** An engine profile as it is written in a file of its own and inside a session. */
final class ProfileJson {
    private static final int FORMAT = 1;
    private static final int MM_DECIMALS = 6;

    private ProfileJson() {}

    static EngineProfile read(JsonPlace place) throws BadFileException {
        DocumentFormat.require(place, FORMAT);
        for (String key : List.of("name", "layout", "cycle", "ignition", "fuel")) {
            refuseOther(place, key);
        }
        place.onlyKeys(
                "format",
                "id",
                "name",
                "layout",
                "bankAngleDegrees",
                "banks",
                "firingOrder",
                "intervals",
                "rotor",
                "bore",
                "stroke",
                "rod",
                "compressionRatio",
                "intakeClosing",
                "assumed",
                "plugs",
                "ignition",
                "fuel",
                "charged",
                "interference",
                "steps",
                "sources");
        List<Bank> banks = place.at("banks").list(ProfileJson::bank);
        FiringOrder firing = firing(place, banks);
        Geometry geometry = geometry(place);
        PlugSpec plugs = place.need("plugs", ProfileJson::plugs);
        String id = place.at("id").text();
        String name = place.at("name").text();
        Layout layout = place.at("layout").oneOf(Layout.class);
        int angle = place.at("bankAngleDegrees").whole();
        Rotor rotor = place.at("rotor").oneOf(Rotor.class);
        Ignition ignition = place.at("ignition").oneOf(Ignition.class);
        FuelSystem fuel = place.at("fuel").oneOf(FuelSystem.class);
        boolean charged = place.at("charged").flag();
        Known interference = place.at("interference").oneOf(Known.class);
        String steps = place.need("steps", ProfileJson::steps);
        List<String> sources = place.each("sources", JsonPlace::text);
        return place.checked(() -> new EngineProfile(
                id,
                name,
                layout,
                angle,
                banks,
                firing,
                rotor,
                geometry,
                plugs,
                ignition,
                fuel,
                charged,
                interference,
                steps,
                sources));
    }

    /** An engine of another kind is told so, and not that one of its words is unknown. */
    private static void refuseOther(JsonPlace place, String key) throws BadFileException {
        Optional<OtherEngine> other = place.maybe(key, JsonPlace::text).flatMap(OtherEngine::namedIn);
        if (other.isPresent()) {
            throw place.at(key).problem(other.get().sentence());
        }
    }

    private static Bank bank(JsonPlace place) throws BadFileException {
        place.onlyKeys("name", "cylinders", "leads");
        String name = place.at("name").text();
        List<Integer> cylinders = place.at("cylinders").list(JsonPlace::whole);
        boolean leads = place.at("leads").flag();
        return place.checked(() -> new Bank(name, cylinders, leads));
    }

    private static String steps(JsonPlace place) throws BadFileException {
        String steps = place.text();
        if (!TradeFiles.GRAPHS.contains(steps)) {
            throw place.problem("\"" + Quoted.of(steps) + "\" is no tune-up known here; there are "
                    + String.join(", ", TradeFiles.GRAPHS) + ".");
        }
        return steps;
    }

    private static FiringOrder firing(JsonPlace place, List<Bank> banks) throws BadFileException {
        JsonPlace order = place.at("firingOrder");
        List<Integer> cylinders = order.list(JsonPlace::whole);
        List<Integer> intervals = place.at("intervals").list(JsonPlace::whole);
        List<Integer> standing = banks.stream()
                .flatMap(bank -> bank.cylinders().stream())
                .sorted()
                .toList();
        if (!cylinders.stream().sorted().toList().equals(standing)) {
            throw order.problem(
                    "the firing order " + cylinders + " must name each cylinder of the banks once: " + standing + ".");
        }
        return place.at("intervals").checked(() -> new FiringOrder(cylinders, intervals));
    }

    private static Geometry geometry(JsonPlace place) throws BadFileException {
        double bore = place.at("bore").quantity(Dimension.LENGTH).si();
        double stroke = place.at("stroke").quantity(Dimension.LENGTH).si();
        double rod = place.at("rod").quantity(Dimension.LENGTH).si();
        double ratio = place.at("compressionRatio").number();
        double closing = place.at("intakeClosing").quantity(Dimension.ANGLE).si();
        boolean assumed = place.at("assumed").flag();
        return place.checked(() -> new Geometry(bore, stroke, rod, ratio, closing, assumed));
    }

    private static PlugSpec plugs(JsonPlace place) throws BadFileException {
        place.onlyKeys("gapFrom", "gapTo", "torqueFrom", "torqueTo", "seat");
        Quantity gapFrom = place.at("gapFrom").quantity(Dimension.LENGTH);
        Quantity gapTo = place.at("gapTo").quantity(Dimension.LENGTH);
        Quantity torqueFrom = place.at("torqueFrom").quantity(Dimension.TORQUE);
        Quantity torqueTo = place.at("torqueTo").quantity(Dimension.TORQUE);
        String seat = place.at("seat").text();
        return place.checked(() -> new PlugSpec(gapFrom, gapTo, torqueFrom, torqueTo, seat));
    }

    static Map<String, Object> write(EngineProfile profile) {
        Geometry geometry = profile.geometry();
        return new JsonObject()
                .put("format", FORMAT)
                .put("id", profile.id())
                .put("name", profile.name())
                .key("layout", profile.layout())
                .put("bankAngleDegrees", profile.bankAngleDegrees())
                .put("banks", profile.banks().stream().map(ProfileJson::write).toList())
                .put("firingOrder", profile.firing().cylinders())
                .put("intervals", profile.firing().intervals())
                .key("rotor", profile.rotor())
                .text("bore", millimetre(geometry.boreMetre()))
                .text("stroke", millimetre(geometry.strokeMetre()))
                .text("rod", millimetre(geometry.rodMetre()))
                .put("compressionRatio", geometry.compressionRatio())
                .text("intakeClosing", degrees(geometry.intakeClosingDegrees()))
                .put("assumed", geometry.assumed())
                .put("plugs", write(profile.plugs()))
                .key("ignition", profile.ignition())
                .key("fuel", profile.fuel())
                .put("charged", profile.charged())
                .key("interference", profile.interference())
                .put("steps", profile.steps())
                .put("sources", profile.sources())
                .entries();
    }

    private static Map<String, Object> write(Bank bank) {
        return new JsonObject()
                .put("name", bank.name())
                .put("cylinders", bank.cylinders())
                .put("leads", bank.leads())
                .entries();
    }

    private static Map<String, Object> write(PlugSpec plugs) {
        return new JsonObject()
                .text("gapFrom", plugs.gapFrom())
                .text("gapTo", plugs.gapTo())
                .text("torqueFrom", plugs.torqueFrom())
                .text("torqueTo", plugs.torqueTo())
                .put("seat", plugs.seat())
                .entries();
    }

    private static Quantity degrees(double angle) {
        BigDecimal figure = BigDecimal.valueOf(angle).stripTrailingZeros();
        return new Quantity(figure, Unit.DEGREE);
    }

    /** To the nanometre, so that a length read from a text is written as that text again. */
    private static Quantity millimetre(double metre) {
        BigDecimal mm = BigDecimal.valueOf(metre * 1e3)
                .setScale(MM_DECIMALS, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return new Quantity(mm, Unit.MM);
    }
}
