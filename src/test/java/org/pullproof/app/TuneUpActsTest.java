package org.pullproof.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pullproof.engine.Setup;
import org.pullproof.files.BadFileException;
import org.pullproof.health.Reading;
import org.pullproof.session.About;
import org.pullproof.session.Picture;
import org.pullproof.testing.Tools;
import org.pullproof.tuneup.BreakIn;
import org.pullproof.tuneup.PartRecord;
import org.pullproof.tuneup.PartRecord.Fate;
import org.pullproof.tuneup.Setting;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import org.pullproof.units.Unit;
import org.pullproof.worth.Spending;

/** What is told beside the ticks of a tune-up, and what follows from a tick in the rest of the session. */
class TuneUpActsTest {
    private static final LocalDateTime WHEN = LocalDateTime.of(2026, 6, 14, 13, 40);

    private final Toolbox tools = Tools.ofTheProgram();

    @TempDir
    private Path folder;

    private OpenSession open;

    @BeforeEach
    void makeASession() throws Exception {
        open = tools.desk().create(folder.resolve("car"), "car", Tools.profile("v8-distributor-order-a"));
    }

    private OpenSession ticked(String... steps) throws BadFileException {
        OpenSession next = tools.tickStep().want(open, List.of("plugs and wires only"));
        for (String step : steps) {
            next = tools.tickStep().tick(next, step, WHEN);
        }
        return next;
    }

    private static List<String> work(OpenSession open) {
        return open.session().readings().stream()
                .map(reading -> ((Reading.Work) reading).what())
                .toList();
    }

    @Test
    void fittingThePlugsIsKeptAsWorkDoneAndTakingTheTickAwayTakesItBack() throws Exception {
        OpenSession fitted = ticked("a", "b", "c", "d", "e", "h");
        assertThat(work(fitted)).containsExactly("ignition-parts");

        OpenSession undone = tools.desk().undo(fitted);
        assertThat(undone.session().readings()).isEmpty();

        OpenSession again = tools.desk().redo(undone);
        assertThat(tools.tickStep().untick(again, "h").session().readings()).isEmpty();
    }

    @Test
    void lashIsKeptForTheCylindersItWasSetOn() throws Exception {
        OpenSession set = tools.recordWork().record(open, "lash-set", List.of(3, 6), WHEN);
        assertThat(set.session().readings())
                .extracting(Reading::cylinder)
                .containsExactly(OptionalInt.of(3), OptionalInt.of(6));
    }

    @Test
    void workThatHasNoWordIsRefusedWithThoseThereAre() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> tools.recordWork().record(open, "magic", List.of(), WHEN))
                .withMessageContaining("lash-set, plug");
    }

    @Test
    void newRingsHaveToBedInUntilSomeoneSaysWhyTheyDoNot() throws Exception {
        OpenSession rings = tools.recordWork().record(open, "rings", List.of(), WHEN);
        assertThat(rings.session().tuneUp().bench().breakIns())
                .extracting(BreakIn::what)
                .containsExactly(BreakIn.What.RINGS);

        OpenSession bedded = tools.recordWork().bedded(rings, BreakIn.What.RINGS, "the builder says so");
        assertThat(bedded.session().tuneUp().bench().breakIns())
                .singleElement()
                .extracting(BreakIn::bedded)
                .isEqualTo(Optional.of("the builder says so"));
    }

    private static PartRecord plugs(Fate fate, String price) {
        return new PartRecord(
                "spark plugs",
                fate,
                Optional.of(Money.parse(price)),
                "",
                WHEN.toLocalDate(),
                Optional.empty(),
                Optional.empty());
    }

    @Test
    void whatWasPaidStandsAmongTheMoneySpentOnceHoweverOftenItIsCorrected() throws Exception {
        OpenSession paid = tools.recordParts().record(open, plugs(Fate.BOUGHT, "28USD"));
        OpenSession corrected = tools.recordParts().record(paid, plugs(Fate.BOUGHT, "31USD"));

        assertThat(corrected.session().money().spent())
                .containsExactly(new Spending("spark plugs", Money.parse("31USD"), WHEN.toLocalDate()));
        assertThat(tools.recordParts()
                        .forget(corrected, "spark plugs")
                        .session()
                        .money()
                        .spent())
                .isEmpty();
    }

    @Test
    void whatIsStillToBuyIsNoMoneySpent() throws Exception {
        assertThat(tools.recordParts()
                        .record(open, plugs(Fate.TO_BUY, "28USD"))
                        .session()
                        .money()
                        .spent())
                .isEmpty();
    }

    @Test
    void theSettingsAreSavedAsTheSetupTheEngineIsIn() throws Exception {
        OpenSession set = tools.recordSettings()
                .edit(
                        open,
                        "Set",
                        settings -> settings.with(Setting.BASE_TIMING, Optional.of(Quantity.of("10", Unit.DEGREE)))
                                .with(Setting.MECHANICAL, Optional.of(Quantity.of("22", Unit.DEGREE))));
        Setup tuned =
                tools.recordSettings().keepAs(set, "as tuned", WHEN).session().present();

        assertThat(tuned.name()).isEqualTo("as tuned");
        assertThat(tuned.levels())
                .hasEntrySatisfying(
                        "timing", total -> assertThat(total.in(Unit.DEGREE)).isEqualTo(32));
        assertThat(tuned.levels()).containsEntry("base-timing", Quantity.of("10", Unit.DEGREE));
    }

    @Test
    void withoutASettingThereIsNothingToSave() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> tools.recordSettings().keepAs(open, "as tuned", WHEN))
                .withMessageContaining("nothing to save");
    }

    private Path photograph(String name) throws IOException {
        Path file = folder.resolve(name);
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
        return file;
    }

    @Test
    void aPictureIsCopiedUntouchedUnderASafeNameAndOpensAgain() throws Exception {
        Path file = photograph("IMG:1 (2).png");
        OpenSession attached = tools.attachPicture().attach(open, About.part("battery lead"), "left shelf", file, WHEN);
        Picture picture = tools.desk().open(open.folder()).session().pictures().get(0);

        assertThat(picture.kept()).isEqualTo("IMG_1 _2_.png");
        assertThat(picture.original()).isEqualTo("IMG:1 (2).png");
        assertThat(Files.readAllBytes(open.folder().resolve("pictures").resolve(picture.kept())))
                .isEqualTo(Files.readAllBytes(file));
        assertThat(tools.attachPicture().thumbnail(open.folder(), picture, 20)).isNotEmpty();
        assertThat(attached.session().pictures(About.part("battery lead"))).containsExactly(picture);
    }

    @Test
    void aPictureTakenAwayComesBackByUndo() throws Exception {
        OpenSession attached = tools.attachPicture().attach(open, About.cylinder(3), "", photograph("plug.png"), WHEN);
        OpenSession removed = tools.attachPicture()
                .remove(attached, attached.session().pictures().get(0));
        assertThat(removed.session().pictures()).isEmpty();

        OpenSession again = tools.desk().undo(removed);
        assertThat(tools.attachPicture()
                        .thumbnail(open.folder(), again.session().pictures().get(0), 20))
                .isNotEmpty();
    }

    @Test
    void aPictureThatWasChangedOnTheDiskIsNotShown() throws Exception {
        OpenSession attached = tools.attachPicture().attach(open, About.cylinder(3), "", photograph("plug.png"), WHEN);
        Picture picture = attached.session().pictures().get(0);
        Files.write(open.folder().resolve("pictures").resolve(picture.kept()), new byte[] {1, 2, 3});
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> tools.attachPicture().thumbnail(open.folder(), picture, 20))
                .withMessageContaining("SHA-256 differs");
    }

    @Test
    void aTextIsNoPicture() throws Exception {
        Path file = Files.writeString(folder.resolve("a.jpg"), "no picture");
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> tools.attachPicture().attach(open, About.part("x"), "", file, WHEN))
                .withMessageContaining("JPEG or PNG");
        assertThat(open.folder().resolve("pictures")).doesNotExist();
    }
}
