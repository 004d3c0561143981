package org.pullproof.ui.dynoday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.pullproof.engine.Setup;
import org.pullproof.session.Edit;
import org.pullproof.ui.DynoFixture;
import org.pullproof.ui.SheetFixture;
import org.pullproof.ui.UiFixture;
import org.pullproof.ui.dynoday.DynoDayViewModel.Row;
import org.pullproof.ui.shell.SessionViewModel;

class DynoDayViewModelTest {
    private final SessionViewModel session = SheetFixture.model(UiFixture.open(), DynoFixture::appraise);
    private final DynoPictures.Acts acts = new DynoPictures.Acts();
    private final DynoDayViewModel model = DynoPictures.model(session, acts);

    @Test
    void filesGoToTheSetupThatWasNamed() {
        model.setupProperty().set("timing 32°");

        model.takeIn(List.of(Path.of("a.csv"), Path.of("b.csv")));

        assertThat(acts.taken).containsExactly(Path.of("a.csv"), Path.of("b.csv"));
        assertThat(acts.setup).isEqualTo("timing 32°");
    }

    @Test
    void aRowLeftOutOfAFileIsSaidOnTheSheet() {
        model.takeIn(List.of(Path.of("a.csv")));

        assertThat(model.leftOut()).containsExactly("a.csv, line 9: the row is not a sample");
    }

    @Test
    void filesWithoutASetupAreNotTakenInAndTheSheetAsksForIt() {
        model.setupProperty().set(" ");

        model.takeIn(List.of(Path.of("a.csv")));

        assertThat(acts.taken).isEmpty();
        assertThat(model.problemProperty().get()).isEqualTo("Say first which setup these pulls were made on.");
    }

    @Test
    void aFileThatCannotBeReadIsSaidOnTheSheet() {
        model.takeIn(List.of(Path.of("scan.pdf")));

        assertThat(model.problemProperty().get()).isEqualTo("scan.pdf: the file has no rpm column");
    }

    @Test
    void theListNamesEveryPullAndMarksTheExcludedOne() {
        DynoDayViewModel day = DynoPictures.model(SheetFixture.model(DynoFixture.open(), DynoFixture::appraise), acts);

        assertThat(day.rows()).hasSize(11);
        assertThat(day.rows()).filteredOn(Row::excluded).extracting(Row::flag).containsExactly("out");
        assertThat(day.rows().get(3).name()).isEqualTo("timing 32°-1");
        assertThat(day.rows().get(3).order()).isEqualTo(1);
    }

    @Test
    void aPullIsExcludedWithAReasonAndCountedAgain() {
        SessionViewModel filled = SheetFixture.model(DynoFixture.open(), DynoFixture::appraise);
        DynoDayViewModel day = DynoPictures.model(filled, acts);

        day.exclude(day.rows().get(0).pull(), "wheels slipped");
        assertThat(day.rows().get(0).pull().pull().excluded()).contains("wheels slipped");
        day.include(day.rows().get(0).pull());

        assertThat(day.rows().get(0).excluded()).isFalse();
    }

    @Test
    void aPullIsNotExcludedWithoutAReason() {
        DynoDayViewModel day = DynoPictures.model(SheetFixture.model(DynoFixture.open(), DynoFixture::appraise), acts);

        assertThatThrownBy(() -> day.exclude(day.rows().get(0).pull(), "  "))
                .hasMessage("Say why base-1 does not count.");
    }

    @Test
    void theTableCopiedHasALineForEachPull() {
        DynoDayViewModel day = DynoPictures.model(SheetFixture.model(DynoFixture.open(), DynoFixture::appraise), acts);

        assertThat(day.table().lines()).hasSize(12).anyMatch(line -> line.endsWith("belt slipped"));
    }

    @Test
    void filesAreTakenInForTheSetupTheEngineIsInNow() {
        assertThat(model.setupProperty().get()).isEqualTo("as found");

        Setup next = Setup.named("timing-32", "timing 32");
        session.act(open -> UiFixture.after(
                open, new Edit("Change", now -> now.withSetups(List.of(now.present(), next), "timing-32", List.of()))));

        assertThat(model.setupProperty().get()).isEqualTo("timing 32");
    }
}
