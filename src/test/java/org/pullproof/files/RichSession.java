package org.pullproof.files;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.pullproof.car.Car;
import org.pullproof.car.Fact;
import org.pullproof.changes.Change;
import org.pullproof.changes.RotatingPart;
import org.pullproof.dyno.ColumnChoice;
import org.pullproof.dyno.DayFact;
import org.pullproof.dyno.DayGate;
import org.pullproof.dyno.DayPlan;
import org.pullproof.dyno.DynoDay;
import org.pullproof.dyno.HowRead;
import org.pullproof.dyno.Pull;
import org.pullproof.dyno.PullFile;
import org.pullproof.dyno.Role;
import org.pullproof.dyno.StatedFigure;
import org.pullproof.engine.Setup;
import org.pullproof.health.AirPlace;
import org.pullproof.health.Conditions;
import org.pullproof.health.LeakZone;
import org.pullproof.health.Reading;
import org.pullproof.health.TestKind;
import org.pullproof.session.About;
import org.pullproof.session.Judgement;
import org.pullproof.session.Note;
import org.pullproof.session.Picture;
import org.pullproof.session.Session;
import org.pullproof.testing.Tools;
import org.pullproof.tuneup.AddedPart;
import org.pullproof.tuneup.BaseSettings;
import org.pullproof.tuneup.Bench;
import org.pullproof.tuneup.BreakIn;
import org.pullproof.tuneup.CurvePoint;
import org.pullproof.tuneup.PartRecord;
import org.pullproof.tuneup.PlugRecord;
import org.pullproof.tuneup.Setting;
import org.pullproof.tuneup.ShelfNote;
import org.pullproof.tuneup.TuneUp;
import org.pullproof.tuneup.VacuumSource;
import org.pullproof.tuneup.WireRecord;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;
import org.pullproof.weather.AirReading;
import org.pullproof.weather.Barometer;
import org.pullproof.weather.Humidity;
import org.pullproof.weather.Metar;
import org.pullproof.weather.Standard;
import org.pullproof.weather.Thermometer;
import org.pullproof.weather.TypedAir;
import org.pullproof.worth.MoneyBook;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;

/** An invented session in which every part of the document is used, each kind of reading at least once. */
final class RichSession {
    private static final LocalDateTime NOON = LocalDateTime.of(2026, 6, 14, 12, 0);
    private static final LocalDateTime ODD_TIME = LocalDateTime.of(2026, 6, 14, 13, 40, 7, 250_000_000);
    private static final OptionalInt THREE = OptionalInt.of(3);

    private RichSession() {}

    static Session made() {
        Car car = Car.named("grey coupé \"Nr. 2\"")
                .with(Fact.ACCESS, "own-it")
                .with(Fact.ELEVATION, "250,0 m")
                .with(Fact.BUDGET, "1400USD")
                .with(Fact.IDENTITY, "two doors; äöü 漢字");
        return Session.begin("x", Tools.profile("v8-distributor-order-a"))
                .withCar(car)
                .withReadings(readings())
                .withTuneUp(tuneUp())
                .withSetups(setups(), "timing-32", changes())
                .withStandard(Standard.ISO_1585)
                .withDays(List.of(day()))
                .withMoney(money())
                .withNotes(List.of(new Note(NOON, "Line one\nline two")))
                .withStated(Optional.of(StatedFigure.parse("248.0hp sae-j607 wheels 98.2kPa 30C; seller, March")))
                .withJudgement(Judgement.own().with(Map.of("health.weakDrop", Optional.of(12.0))))
                .withPictures(List.of(
                        new Picture(
                                About.part("battery lead"),
                                "where it lies",
                                "IMG 1.jpg",
                                "IMG 1.jpg",
                                "ab".repeat(32),
                                NOON),
                        new Picture(new About(About.Kind.CAR, ""), "", "b.png", "b-2.png", "0f".repeat(32), NOON)));
    }

    static List<Reading> readings() {
        Conditions none = Conditions.notRecorded();
        return List.of(
                new Reading.Balance(THREE, Quantity.of("85", Unit.RPM), 2, none, NOON, ""),
                new Reading.Compression(
                        THREE, false, psi("158"), Optional.of(psi("60")), 1, fullyMade(), ODD_TIME, "hot"),
                new Reading.Compression(THREE, true, psi("160"), Optional.empty(), 1, none, NOON, ""),
                leakdown(new Reading.Leak.Percentage(Quantity.of("14.0", Unit.PERCENT)), Optional.of(Set.of())),
                leakdown(new Reading.Leak.Behind(psi("70")), Optional.of(Set.of(AirPlace.EXHAUST, AirPlace.COOLANT))),
                leakdown(new Reading.Leak.Zone(LeakZone.MODERATE), Optional.empty()),
                sign(TestKind.PLUG, THREE, "fuel-wet"),
                sign(TestKind.CODES, OptionalInt.empty(), "P0301 P0420"),
                new Reading.Sign(
                        TestKind.OIL_PRESSURE,
                        OptionalInt.empty(),
                        Optional.of(psi("22")),
                        Optional.empty(),
                        none,
                        NOON,
                        ""),
                new Reading.Work(OptionalInt.empty(), "head", none, NOON, "one gasket"));
    }

    private static Reading leakdown(Reading.Leak leak, Optional<Set<AirPlace>> air) {
        return new Reading.Leakdown(
                THREE,
                leak,
                Optional.of(psi("100")),
                Optional.of(Quantity.of("0.040", Unit.IN)),
                air,
                1,
                Conditions.notRecorded(),
                NOON,
                "");
    }

    private static Reading sign(TestKind test, OptionalInt cylinder, String word) {
        return new Reading.Sign(
                test, cylinder, Optional.empty(), Optional.of(word), Conditions.notRecorded(), NOON, "");
    }

    private static Conditions fullyMade() {
        return new Conditions(
                OptionalInt.of(5),
                Optional.of(Conditions.Throttle.OPEN),
                Optional.of(Conditions.Plugs.ALL_OUT),
                Optional.of(Conditions.Warmth.HOT),
                Optional.of(Quantity.of("10.4", Unit.VOLT)),
                Optional.of(Quantity.of("210", Unit.RPM)),
                Optional.of(Quantity.of("98.20", Unit.KPA)),
                Optional.of("the old brass one"),
                Optional.of(psi("2")),
                Optional.of(Quantity.of("5", Unit.ML)),
                Optional.of("A. Friend"),
                Optional.of(Quantity.of("2", Unit.PERCENT)));
    }

    private static Quantity psi(String figure) {
        return Quantity.of(figure, Unit.PSI);
    }

    private static TuneUp tuneUp() {
        return TuneUp.notBegun()
                .withDone("b", NOON)
                .withDone("a", ODD_TIME)
                .withWanted(Set.of("h"))
                .withBack("battery lead")
                .withLeftOff("hot-air duct", "a new one comes on Monday")
                .withWire(new WireRecord(
                        3,
                        Optional.of(Quantity.of("9.8", Unit.KOHM)),
                        Optional.of(Quantity.of("62", Unit.CM)),
                        "upper loom"))
                .withCapOrder(List.of(1, 8, 4, 3, 6, 5, 7, 2))
                .withBench(bench())
                .withOwn(Optional.of(new TradeFiles().stepGraphs().all().get(0)))
                .withPlug(new PlugRecord(
                        3,
                        Optional.of(Quantity.of("0.050", Unit.IN)),
                        Optional.of(Quantity.of("0.035", Unit.IN)),
                        Optional.empty(),
                        "7"));
    }

    private static Bench bench() {
        return new Bench(
                List.of(new ShelfNote("plugs", "in the tray, cap of 3 cracked", Set.of(1, 3))),
                List.of(new AddedPart("hose of the canister", NOON)),
                List.of(
                        new PartRecord(
                                "spark plugs",
                                PartRecord.Fate.BOUGHT,
                                Optional.of(Money.parse("28.50USD")),
                                "the resistor kind",
                                NOON.toLocalDate(),
                                Optional.empty(),
                                Optional.empty()),
                        new PartRecord(
                                "plug wires",
                                PartRecord.Fate.KEPT,
                                Optional.empty(),
                                "",
                                NOON.toLocalDate(),
                                Optional.of(NOON.toLocalDate().minusYears(5)),
                                Optional.of(Quantity.of("61000", Unit.MI)))),
                new BaseSettings(
                        Map.of(
                                Setting.BASE_TIMING,
                                Quantity.of("10", Unit.DEGREE),
                                Setting.THROTTLE,
                                Quantity.of("99", Unit.PERCENT)),
                        Optional.of(VacuumSource.PORTED),
                        List.of(new CurvePoint(Quantity.of("800", Unit.RPM), Quantity.of("0.5", Unit.DEGREE)))),
                List.of(new BreakIn(
                        BreakIn.What.RINGS,
                        NOON.toLocalDate(),
                        Optional.of(Quantity.of("84000", Unit.MI)),
                        Optional.of("the builder says so"))),
                Set.of("Coolant level, cold"),
                Optional.of(Quantity.of("84000", Unit.MI)));
    }

    private static List<Setup> setups() {
        return List.of(
                Setup.named("as-found", "as found"),
                new Setup(
                        "timing-32",
                        "timing 32°",
                        Map.of("timing", Quantity.of("32", Unit.DEGREE), "jet", Quantity.of("1.80", Unit.MM)),
                        "vacuum line plugged"));
    }

    private static List<Change> changes() {
        return List.of(
                new Change("as-found", "timing-32", "4° more", NOON, Optional.of(Money.parse("12.50EUR")), Set.of()),
                new Change("timing-32", "as-found", "back", NOON, Optional.empty(), Set.of()),
                new Change(
                        "as-found",
                        "timing-32",
                        "again",
                        ODD_TIME,
                        Optional.empty(),
                        Set.of(RotatingPart.FLYWHEEL, RotatingPart.GEAR)));
    }

    private static DynoDay day() {
        PullFile file = new PullFile("C:\\dyno\\run 1.csv", "run 1.csv", "0a".repeat(32));
        ColumnChoice column = new ColumnChoice(Role.TORQUE, "Trq", Optional.of(Unit.LB_FT));
        return new DynoDay(
                LocalDate.of(2026, 6, 14),
                air(),
                List.of(
                        new Pull("as-found", 1, file, NOON, List.of(column), Optional.empty(), Optional.empty()),
                        new Pull(
                                "as-found",
                                2,
                                file,
                                ODD_TIME,
                                Optional.of(NOON.plusDays(1)),
                                HowRead.by(List.of()),
                                Optional.of(Standard.SAE_J607),
                                Optional.of("throttle not fully open"))),
                new DayGate(
                        Map.of("brakes", ODD_TIME),
                        Map.of("codes", "no computer, \"1968\""),
                        List.of(new DayGate.Abort(NOON, "strap moved"))),
                Map.of(DayFact.TYRES, "240 kPa cold", DayFact.GEAR, "fourth"),
                Optional.of(new DayPlan(List.of("as found", "timing 32°", "as found"), 2)));
    }

    /** Every form of pressure, temperature and moisture there is. */
    private static List<AirReading> air() {
        Quantity warm = Quantity.of("85", Unit.FAHRENHEIT);
        Quantity high = Quantity.of("600", Unit.M);
        Metar report = Metar.parse("XXXX 141255Z 25/10 A3002 RMK T02530098");
        Quantity setting = Quantity.of("30.02", Unit.INHG);
        return List.of(
                new AirReading(NOON, Quantity.of("28.90", Unit.INHG), warm, Quantity.of("60", Unit.PERCENT)),
                read(
                        10,
                        new Barometer.Station(Quantity.of("94.2", Unit.KPA), Optional.of(high)),
                        new Thermometer.Intake(warm),
                        new Humidity.Unknown()),
                read(
                        20,
                        new Barometer.Elsewhere(Quantity.of("29.35", Unit.INHG), Quantity.of("520", Unit.FT), high),
                        new Thermometer.Intake(warm),
                        new Humidity.DewPoint(Quantity.of("9.50", Unit.CELSIUS))),
                read(
                        30,
                        new Barometer.Altimeter(setting, high),
                        new Thermometer.Intake(warm),
                        new Humidity.WetBulb(Quantity.of("18", Unit.CELSIUS))),
                read(40, new Barometer.SeaLevel(setting, high), new Thermometer.Intake(warm), new Humidity.Unknown()),
                read(
                        50,
                        new Barometer.Report(report, high),
                        new Thermometer.Report(report),
                        new Humidity.Report(report)));
    }

    private static AirReading read(int minute, Barometer barometer, Thermometer thermometer, Humidity humidity) {
        return new AirReading(
                NOON.plusMinutes(minute), "gate of the hall", new TypedAir(barometer, thermometer, humidity));
    }

    private static MoneyBook money() {
        Money low = Money.parse("300USD");
        Money high = Money.parse("900USD");
        return new MoneyBook(
                List.of(new Spending("plugs", Money.parse("48.00USD"), LocalDate.of(2026, 5, 1))),
                List.of(
                        new Option("valve job", low, low, high, 12.5, Optional.of(new Option.Gain(-1, 2, 4.5)), false),
                        new Option("nothing", low, low, low, 0, Optional.empty(), true)));
    }
}
