package org.pullproof.ui.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.pullproof.advice.Appraisal;
import org.pullproof.advice.Stage;
import org.pullproof.session.About;
import org.pullproof.session.Picture;
import org.pullproof.session.Session;
import org.pullproof.testing.GreyCoupe;

/** Looked for in an invented car whose every reading, pull and part is written down in {@link GreyCoupe}. */
class SessionIndexTest {
    private final List<Place> places = SessionIndex.of(GreyCoupe.appraisal());

    private void stands(String title, String detail, Stage stage) {
        assertThat(places).contains(new Place(title, detail, stage));
    }

    @Test
    void factsAndNotesStandOnCar() {
        stands("Garage lies at: 250\u00a0m", "told", Stage.CAR);
        stands("Note: “Battery on the charger during the cranking tests.”", "13 Jun 2026, 10:05", Stage.CAR);
    }

    @Test
    void readingsStandOnHealthWithTheirCylinder() {
        stands("Cylinder 8: leak-down 14\u00a0%", "Leak-down, typed 13 Jun 2026, 10:05", Stage.HEALTH);
        stands(
                "Whole engine: oil, hot idle 24\u00a0psi",
                "Oil, hot idle, typed 13 Jun 2026, 10:05, hot idle, 700 rpm",
                Stage.HEALTH);
    }

    @Test
    void stepsAndPartsOffTheCarStandOnTuneUp() {
        stands("Step n: Everything back, start", "now, 10\u00a0min", Stage.TUNE_UP);
        stands("Part off the car: battery lead", "since step a, 13 Jun 2026, 10:05", Stage.TUNE_UP);
    }

    @Test
    void setupsAndPullsStandOnDynoDayAndSayWhatDoesNotCount() {
        stands("Setup: timing 32°", "setup now, timing 32 °", Stage.DYNO_DAY);
        assertThat(places)
                .filteredOn(place -> place.title().equals("Pull base-2"))
                .singleElement()
                .satisfies(pull -> assertThat(pull.detail()).contains("does not count: lifted at 4,000 rpm"))
                .returns(Stage.DYNO_DAY, Place::stage);
    }

    @Test
    void changesAndTheirCallsStandOnChanges() {
        stands("Change: Main jets two sizes up", "14 Jun 2026, 14:25", Stage.CHANGES);
        assertThat(places)
                .filteredOn(place -> place.stage() == Stage.CHANGES)
                .extracting(Place::title)
                .contains("Call: base → timing 32°");
    }

    @Test
    void photographsStandWhereTheyWereAttached() {
        Picture of = new Picture(
                About.part("distributor cap"),
                "a crack between 5 and 7",
                "cap.jpg",
                "0001.jpg",
                "0".repeat(64),
                LocalDateTime.of(2026, 6, 13, 11, 20));
        Appraisal plain = GreyCoupe.appraisal();
        Session session = plain.session().withPictures(List.of(of));

        assertThat(SessionIndex.of(GreyCoupe.appraise(session)))
                .contains(new Place(
                        "Picture of distributor cap: a crack between 5 and 7",
                        "cap.jpg, 13 Jun 2026, 11:20",
                        Stage.TUNE_UP));
    }

    @Test
    void moneyAndOptionsStandOnWorthIt() {
        stands("Option: one head, valve job", "about $450", Stage.WORTH_IT);
        stands("Spent: plugs and wires, $96", "12 Jun 2026", Stage.WORTH_IT);
    }
}
