package org.pullproof.ui.shell;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.input.KeyCode;
import org.pullproof.advice.Stage;
import org.pullproof.ui.search.Found;
import org.pullproof.ui.search.Group;
import org.pullproof.ui.search.SessionIndex;

/** Everything that search finds: what can be done on this window, then what the session holds. */
final class EverythingToFind {
    private final MainView view;
    private final SessionViewModel model;
    private final ShellActs acts;

    EverythingToFind(MainView view, SessionViewModel model, ShellActs acts) {
        this.view = view;
        this.model = model;
        this.acts = acts;
    }

    List<Found> list() {
        List<Found> all = new ArrayList<>();
        all.add(Found.act(
                "Next step: " + model.appraisal().next().action(),
                model.appraisal().next().stage().words(),
                "Ctrl Enter",
                view::doNextStep));
        all.addAll(sheets());
        all.addAll(onASheet());
        all.addAll(everywhere());
        all.addAll(acts.more());
        all.addAll(view.offers());
        SessionIndex.of(model.appraisal())
                .forEach(place -> all.add(Found.inSession(place, () -> view.open(place.stage()))));
        acts.guide().headings().forEach(heading -> all.add(chapter(heading)));
        return all;
    }

    private Found chapter(String heading) {
        return new Found(Group.GUIDE, heading, "user guide", "", () -> view.openGuide(heading));
    }

    private List<Found> sheets() {
        List<Found> sheets = new ArrayList<>();
        for (Stage stage : Stage.values()) {
            sheets.add(Found.act(
                    "Go to " + stage.words(), stage.question(), "Ctrl " + (sheets.size() + 1), () -> view.open(stage)));
        }
        return sheets;
    }

    private List<Found> onASheet() {
        return List.of(
                Found.act(
                        "Type readings at the car: fender mode",
                        "balance, compression, leak-down, plugs by keys alone",
                        "F2",
                        () -> view.press(Stage.HEALTH, KeyCode.F2, false)),
                Found.act(
                        "Turn the engine to a cylinder: TDC guide",
                        "top dead centre by the crank",
                        "F3",
                        () -> view.press(Stage.HEALTH, KeyCode.F3, false)),
                Found.act(
                        "Print a tally sheet",
                        "for the test chosen on Health",
                        "F4",
                        () -> view.press(Stage.HEALTH, KeyCode.F4, false)),
                Found.act(
                        "Take in pull files", "Dyno day", "Ctrl I", () -> view.press(Stage.DYNO_DAY, KeyCode.I, true)));
    }

    private List<Found> everywhere() {
        return List.of(
                step("Undo", "nothing to undo", model.undoNameProperty().get(), "Ctrl Z", model::undo),
                step("Redo", "nothing to redo", model.redoNameProperty().get(), "Ctrl Shift Z", model::redo),
                Found.act(
                        "Report",
                        "the whole job on paper or parts of it: PDF, HTML or text",
                        "Ctrl P",
                        view::openPaper),
                Found.act("Values that the program judges by", "search, edit, put back", "Ctrl J", view::openValues),
                Found.act(
                        model.look().nightProperty().get() ? "Light: paper" : "Light: night",
                        "paper or night",
                        "Ctrl L",
                        model.look()::otherLight),
                Found.act("Help on this sheet", "its chapter of the user guide", "F1", view::openGuide),
                Found.act("How this sheet's figures are made", "formulas and sources", "Shift F1", view::openMethod),
                Found.act("Units: the other system", "US or metric", "", model.look()::otherUnits));
    }

    /** What can't be done now says why. */
    private static Found step(String verb, String nothing, String name, String key, Runnable act) {
        return name.isEmpty() ? Found.act(verb, nothing, key, () -> {}) : Found.act(verb + ": " + name, "", key, act);
    }
}
