package org.pullproof.ui.shell;

import javafx.beans.value.ChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Appraisal;
import org.pullproof.engine.EngineProfile;
import org.pullproof.ui.parts.Actions;
import org.pullproof.units.Figures;
import org.pullproof.units.Shown;
import org.pullproof.units.UnitSystem;

/** Which car, in which setup, by which standard and in which units; undo, redo, report. */
final class TopBar extends HBox {
    private final Label engine = new Label();
    private final Label car = new Label();
    private final Label setup = new Label();
    private final Label standard = new Label();
    private final Label units = new Label();
    private final Label light = new Label();
    private final Button undo = Actions.plain("Undo", "");
    private final Button redo = Actions.plain("Redo", "");

    /**
     * @param report saves the report
     * @param values opens the values that the program judges by
     * @param versions opens what is kept of earlier sittings
     * @param search opens search
     */
    record Acts(Runnable report, Runnable values, Runnable versions, Runnable search) {}

    TopBar(SessionViewModel model, Acts acts) {
        getStyleClass().add("top");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        getChildren()
                .setAll(
                        carCell(),
                        cell("Setup now", setup),
                        cell("Standard", standard),
                        switchCell("Units", units, model.look()::otherUnits),
                        switchCell("Light", light, model.look()::otherLight),
                        space,
                        actions(model, acts));
        model.appraisalProperty().addListener((of, before, after) -> show(after));
        ChangeListener<Boolean> lightChanged = (of, before, night) -> showLight(night);
        model.look().nightProperty().addListener(lightChanged);
        model.onClose(() -> model.look().nightProperty().removeListener(lightChanged));
        show(model.appraisal());
        showLight(model.look().nightProperty().get());
    }

    private Node carCell() {
        engine.getStyleClass().add("caption");
        VBox cell = cell(engine, car);
        cell.getStyleClass().add("car");
        return cell;
    }

    private static VBox cell(String caption, Label words) {
        Label name = new Label(caption);
        name.getStyleClass().add("caption");
        return cell(name, words);
    }

    private static VBox cell(Label caption, Label words) {
        words.getStyleClass().add("cell-words");
        caption.setMinWidth(USE_PREF_SIZE);
        words.setMinWidth(USE_PREF_SIZE);
        VBox cell = new VBox(caption, words);
        cell.getStyleClass().add("cell");
        return cell;
    }

    private static Button switchCell(String caption, Label words, Runnable change) {
        VBox lines = cell(caption, words);
        lines.getStyleClass().remove("cell");
        lines.setMouseTransparent(true);
        Button cell = new Button("", lines);
        cell.getStyleClass().add("cell");
        cell.setMaxHeight(Double.MAX_VALUE);
        cell.setOnAction(pressed -> change.run());
        words.textProperty().addListener((of, before, now) -> cell.setAccessibleText(caption + ": " + now));
        return cell;
    }

    private Node actions(SessionViewModel model, Acts acts) {
        undo.setOnAction(pressed -> model.undo());
        redo.setOnAction(pressed -> model.redo());
        model.undoNameProperty().addListener((of, before, name) -> name(undo, "Undo", "nothing to undo", name));
        model.redoNameProperty().addListener((of, before, name) -> name(redo, "Redo", "nothing to redo", name));
        name(undo, "Undo", "nothing to undo", model.undoNameProperty().get());
        name(redo, "Redo", "nothing to redo", model.redoNameProperty().get());
        Button print = action("Report", "Ctrl P", "The report and cards on paper", acts.report());
        Button judged = action("Values", "Ctrl J", "What the program judges by", acts.values());
        judged.setId("open-values");
        Button kept = action("Kept", "Ctrl H", "Kept versions of earlier sittings", acts.versions());
        kept.setId("open-versions");
        Button find = action("Search", "Ctrl F", "Search the session and everything that can be done", acts.search());
        find.setId("open-search");
        HBox actions = new HBox(find, undo, redo, kept, judged, print);
        actions.getStyleClass().add("top-actions");
        return actions;
    }

    private static Button action(String words, String key, String tip, Runnable act) {
        Button button = Actions.plain(words, key);
        button.setTooltip(new Tooltip(tip));
        button.setOnAction(pressed -> act.run());
        return button;
    }

    /** An action that can't be done now still says why. */
    private static void name(Button button, String verb, String nothing, String step) {
        String words = step.isEmpty() ? verb + ": " + nothing : verb + ": " + step;
        button.setAccessibleText(words);
        button.setTooltip(new Tooltip(words));
        button.getStyleClass().remove("waits");
        if (step.isEmpty()) {
            button.getStyleClass().add("waits");
        }
    }

    private void show(Appraisal appraisal) {
        engine.setText(inShort(appraisal.session().profile(), appraisal.figures()));
        car.setText(appraisal.session().car().name());
        setup.setText(appraisal.session().present().name());
        standard.setText(appraisal.session().standard().words());
        units.setText(appraisal.figures().system() == UnitSystem.US ? "US" : "metric");
    }

    private void showLight(boolean night) {
        light.setText(night ? "night" : "paper");
    }

    /** "5.6 L V8, carburettor". */
    static String inShort(EngineProfile profile, Figures figures) {
        String layout = switch (profile.layout()) {
            case INLINE -> "in-line ";
            case V -> "V";
            case FLAT -> "flat-";
        };
        return figures.of(profile.displacement(), Shown.DISPLACEMENT) + " " + layout + profile.cylinders() + ", "
                + profile.fuel().words();
    }
}
