package org.pullproof.ui.tuneup;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.pullproof.app.Toolbox;
import org.pullproof.health.TestKind;
import org.pullproof.health.Words;
import org.pullproof.tuneup.Afterwards.Again;
import org.pullproof.tuneup.BaseSettings;
import org.pullproof.tuneup.BreakIn;
import org.pullproof.tuneup.CurvePoint;
import org.pullproof.tuneup.PartFinding;
import org.pullproof.tuneup.PartRecord;
import org.pullproof.tuneup.PartRecord.Fate;
import org.pullproof.tuneup.Setting;
import org.pullproof.tuneup.TuneUpFindings;
import org.pullproof.tuneup.VacuumSource;
import org.pullproof.ui.shell.SessionViewModel;
import org.pullproof.units.Dimension;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;

/** What the sheet Tune-up shows and does beside the steps: shelf, parts, settings, what is due afterwards. Knows no control. */
final class BenchViewModel {
    private final SessionViewModel model;
    private final Toolbox tools;
    private final Clock clock;

    BenchViewModel(SessionViewModel model, Toolbox tools, Clock clock) {
        this.model = model;
        this.tools = tools;
        this.clock = clock;
    }

    TuneUpFindings findings() {
        return model.appraisal().tuneUp();
    }

    private LocalDateTime now() {
        return LocalDateTime.now(clock).withNano(0);
    }

    // the shelf

    void takeOff(String name, Consumer<String> refused) {
        LocalDateTime when = now();
        model.act(open -> tools.shelveParts().add(open, name, when), refused);
    }

    void note(String part, String words, Consumer<String> refused) {
        model.act(open -> tools.shelveParts().note(open, part, words), refused);
    }

    /** Notes that a part is back on a cylinder, or off it again. */
    void fit(String part, int cylinder, boolean on) {
        model.act(open -> on
                ? tools.shelveParts().fit(open, part, cylinder)
                : tools.shelveParts().unfit(open, part, cylinder));
    }

    int cylinders() {
        return model.session().profile().cylinders();
    }

    // parts

    void fate(PartFinding part, Fate fate, Consumer<String> refused) {
        Optional<PartRecord> told = part.told();
        Optional<Money> price = fate == Fate.KEPT ? Optional.empty() : part.price();
        model.act(open -> tools.recordParts().record(open, record(part.part(), fate, price, told)), refused);
    }

    void price(PartFinding part, Money price, Consumer<String> refused) {
        Fate fate = part.told()
                .map(PartRecord::fate)
                .filter(known -> known != Fate.KEPT)
                .orElse(Fate.TO_BUY);
        model.act(
                open -> tools.recordParts().record(open, record(part.part(), fate, Optional.of(price), part.told())),
                refused);
    }

    void partNote(PartFinding part, String note, Consumer<String> refused) {
        Fate fate = part.told().map(PartRecord::fate).orElse(Fate.TO_BUY);
        Optional<Money> price = fate == Fate.KEPT ? Optional.empty() : part.price();
        PartRecord plain = record(part.part(), fate, price, part.told());
        model.act(
                open -> tools.recordParts()
                        .record(
                                open,
                                new PartRecord(
                                        plain.part(),
                                        fate,
                                        price,
                                        note,
                                        plain.told(),
                                        plain.fitted(),
                                        plain.fittedAt())),
                refused);
    }

    /** Tells since when a part that was kept is on the car: a day, or the odometer then. */
    void keptSince(PartFinding part, String typed, Consumer<String> refused) {
        boolean day = typed.strip().matches("\\d{4}-\\d{2}-\\d{2}");
        model.act(
                open -> tools.recordParts()
                        .record(
                                open,
                                new PartRecord(
                                        part.part(),
                                        Fate.KEPT,
                                        Optional.empty(),
                                        part.told().map(PartRecord::note).orElse(""),
                                        today(),
                                        day ? Optional.of(LocalDate.parse(typed.strip())) : Optional.empty(),
                                        day ? Optional.empty() : Optional.of(Quantity.parse(typed, Dimension.LENGTH)))),
                refused);
    }

    private PartRecord record(String part, Fate fate, Optional<Money> price, Optional<PartRecord> told) {
        return new PartRecord(
                part,
                fate,
                price,
                told.map(PartRecord::note).orElse(""),
                today(),
                told.flatMap(PartRecord::fitted).filter(since -> fate == Fate.KEPT),
                told.flatMap(PartRecord::fittedAt).filter(since -> fate == Fate.KEPT));
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }

    /** Reads a price; a bare figure is in the currency of the other prices. */
    Money money(String typed) {
        String currency = findings().parts().stream()
                .flatMap(part -> part.price().stream())
                .map(Money::currency)
                .findFirst()
                .orElse("USD");
        return Money.parse(typed.strip().matches("\\d+([.,]\\d{1,2})?") ? typed.strip() + currency : typed);
    }

    // settings

    BaseSettings settings() {
        return model.session().tuneUp().bench().settings();
    }

    /** The settings this engine has: without a distributor there is nothing to set at one. */
    List<Setting> offered() {
        boolean distributor = model.session().profile().ignition() == org.pullproof.engine.Ignition.DISTRIBUTOR;
        return Stream.of(Setting.values())
                .filter(setting -> distributor || !AT_THE_DISTRIBUTOR.contains(setting))
                .toList();
    }

    private static final List<Setting> AT_THE_DISTRIBUTOR = List.of(
            Setting.MECHANICAL,
            Setting.CANISTER_ADVANCE,
            Setting.CANISTER_STARTS,
            Setting.CANISTER_ENDS,
            Setting.CANISTER_HOLDS,
            Setting.DWELL,
            Setting.POINT_GAP);

    boolean hasCurve() {
        return offered().contains(Setting.MECHANICAL);
    }

    void tell(Setting setting, Optional<Quantity> value, Consumer<String> refused) {
        model.act(
                open -> tools.recordSettings().edit(open, setting.words(), told -> told.with(setting, value)), refused);
    }

    void vacuum(VacuumSource source) {
        model.act(open ->
                tools.recordSettings().edit(open, "Source of vacuum", told -> told.withSource(Optional.of(source))));
    }

    void curve(List<CurvePoint> points, Consumer<String> refused) {
        model.act(open -> tools.recordSettings().edit(open, "Advance curve", told -> told.withCurve(points)), refused);
    }

    /** The curve as it is typed: "800 0, 1600 8". */
    String curveText() {
        return String.join(
                ", ",
                settings().curve().stream()
                        .map(point -> point.speed().figure().toPlainString() + " "
                                + point.advance().figure().toPlainString())
                        .toList());
    }

    /**
     * Reads the curve.
     *
     * @throws IllegalArgumentException with a sentence if it is no list of pairs
     */
    static List<CurvePoint> readCurve(String typed) {
        return Stream.of(typed.strip().split("\\s*[,;]\\s*", -1))
                .map(BenchViewModel::readPoint)
                .toList();
    }

    private static CurvePoint readPoint(String typed) {
        String[] pair = typed.split("\\s+", -1);
        if (pair.length != 2) {
            throw new IllegalArgumentException("Write pairs of rpm and degrees, such as 800 0, 1600 8, 2800 22.");
        }
        return new CurvePoint(Quantity.parse(pair[0], Unit.RPM), Quantity.parse(pair[1], Unit.DEGREE));
    }

    void saveAs(String setup, Consumer<String> refused) {
        LocalDateTime when = now();
        model.act(open -> tools.recordSettings().keepAs(open, setup, when), refused);
    }

    // afterwards

    /** The words for work done. */
    static List<String> work() {
        return Words.of(TestKind.WORK);
    }

    void worked(String what, List<Integer> cylinders, Consumer<String> refused) {
        LocalDateTime when = now();
        model.act(open -> tools.recordWork().record(open, what, cylinders, when), refused);
    }

    void lookedAt(Again again, boolean done) {
        model.act(open -> tools.recordWork().rechecked(open, again.what(), done));
    }

    void fresh(BreakIn.What what) {
        LocalDate since = today();
        model.act(open -> tools.recordWork().breakIn(open, what, since));
    }

    /** What has to bed in and does not count as bedded yet. */
    List<BreakIn> bedding() {
        return model.session().tuneUp().bench().breakIns().stream()
                .filter(breakIn -> breakIn.bedded().isEmpty())
                .toList();
    }

    void bedded(BreakIn.What what, String why, Consumer<String> refused) {
        model.act(open -> tools.recordWork().bedded(open, what, why), refused);
    }
}
