package org.pullproof.report;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pullproof.advice.Appraisal;
import org.pullproof.car.Access;
import org.pullproof.car.Fact;
import org.pullproof.health.TestKind;
import org.pullproof.report.ReportModel.Answer;
import org.pullproof.report.ReportModel.Item;
import org.pullproof.report.ReportModel.Section;
import org.pullproof.session.Picture;
import org.pullproof.session.Session;
import org.pullproof.units.Sentence;
import org.pullproof.units.Shown;

/** Lays out what one appraisal says as a report. Nothing is computed here: every figure comes from the appraisal. */
public final class ReportMaker {
    private static final String PRECEDENCE =
            "The maker's service manual and a licensed professional take precedence over anything shown here.";

    /** The report with its photographs in words only. */
    public ReportModel make(Appraisal appraisal, LocalDateTime made) {
        return make(appraisal, made, picture -> Optional.of(new byte[0]));
    }

    /**
     * @param appraisal what the session amounts to
     * @param made when the report is made
     * @param small makes a small JPEG of a picture; empty where its file is lost or was changed
     */
    public ReportModel make(Appraisal appraisal, LocalDateTime made, Function<Picture, Optional<byte[]>> small) {
        Wording wording = new Wording(appraisal.figures());
        Session session = appraisal.session();
        return new ReportModel(
                session.car().name(),
                Wording.engine(session.profile()),
                head(session, wording, made),
                answers(appraisal),
                sections(appraisal, wording, small),
                foot(appraisal, wording));
    }

    private static List<Item> head(Session session, Wording wording, LocalDateTime made) {
        return List.of(
                new Item("made", "Made", Wording.minute(made)),
                new Item("setupNow", "Setup now", session.present().name()),
                new Item("odometer", "Odometer", odometer(session, wording)),
                new Item("standard", "Standard", session.standard().words()),
                new Item("units", "Units", wording.units()),
                new Item(
                        "access",
                        "Access",
                        session.car().access().map(Access::words).orElse("not told")));
    }

    private static String odometer(Session session, Wording wording) {
        return session.car()
                .quantity(Fact.ODOMETER)
                .map(read -> wording.figures().of(read.si(), Shown.DISTANCE))
                .orElse("not told");
    }

    private static List<Answer> answers(Appraisal appraisal) {
        return List.of(
                new Answer("sound", "Is this engine sound?", appraisal.health().answer()),
                new Answer("inTune", "Is it in tune?", appraisal.tuneUp().answer()),
                new Answer("changes", "Which adjustment made power?", madePower(appraisal)),
                new Answer("worth", "Is it worth more money?", appraisal.worth().sentence()));
    }

    private static Sentence madePower(Appraisal appraisal) {
        return new Sentence(appraisal.changes().answer().marked() + " "
                + appraisal.dyno().answer().marked());
    }

    private static List<Section> sections(
            Appraisal appraisal, Wording wording, Function<Picture, Optional<byte[]>> small) {
        List<Section> sections = new ArrayList<>();
        sections.add(new HealthSections(appraisal, wording).inShort());
        new ChangesSections(appraisal, wording).inShort().ifPresent(sections::add);
        sections.add(NextSection.of(appraisal.next()));
        sections.add(new CarSection(appraisal, wording).section());
        new HealthSections(appraisal, wording).inFull().ifPresent(sections::add);
        if (appraisal.health().missing().contains(TestKind.LEAKDOWN) || leakDownRead(appraisal)) {
            sections.add(new TdcSection(appraisal.session().profile()).section());
        }
        new TuneUpSection(appraisal, wording).section().ifPresent(sections::add);
        new DynoSection(appraisal, wording).section().ifPresent(sections::add);
        new ChangesSections(appraisal, wording).inFull().ifPresent(sections::add);
        sections.addAll(new WorthSection(appraisal, wording).sections());
        new PicturesSection(appraisal.session(), small).section().ifPresent(sections::add);
        sections.add(new MethodsSection(appraisal).section());
        return sections;
    }

    private static boolean leakDownRead(Appraisal appraisal) {
        return appraisal.session().readings().stream().anyMatch(reading -> reading.test() == TestKind.LEAKDOWN);
    }

    private static List<String> foot(Appraisal appraisal, Wording wording) {
        List<String> foot = new ArrayList<>();
        air(appraisal, wording).ifPresent(foot::add);
        if (!appraisal.worth().tooEarly()) {
            foot.add("Costs and chances marked “judgement” are defaults the owner can edit.");
        }
        foot.add(PRECEDENCE);
        return foot;
    }

    private static Optional<String> air(Appraisal appraisal, Wording wording) {
        return appraisal
                .dyno()
                .latestAir()
                .map(air -> "Air: " + wording.air(air)
                        + appraisal
                                .dyno()
                                .latestFactor()
                                .map(factor -> " → " + Wording.factor(factor))
                                .orElse("")
                        + ".");
    }
}
