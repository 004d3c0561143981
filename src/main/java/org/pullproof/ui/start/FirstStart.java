package org.pullproof.ui.start;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.pullproof.advice.Stage;
import org.pullproof.app.RecentSession;
import org.pullproof.drawing.EnginePlan;
import org.pullproof.drawing.FiringStrip;
import org.pullproof.engine.EngineProfile;
import org.pullproof.ui.parts.Choice;
import org.pullproof.ui.parts.DrawingView;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.SentenceFlow;
import org.pullproof.ui.parts.WindowSteps;
import org.pullproof.ui.shell.Look;
import org.pullproof.units.Sentence;
import org.pullproof.units.UnitSystem;

/** The title sheet: a drawing, and three ways to begin. */
public final class FirstStart extends HBox {
    private static final double WAY = 470;
    private static final double WAY_HEIGHT = 84;
    private static final double PLAN_HEIGHT = 300;
    private static final double STRIP_HEIGHT = 60;
    private static final String CAUTION =
            "The maker's service manual and a licensed professional take precedence over anything shown here.";

    private final Button demo;
    private final Label problem = Labels.wrapped("", "red");

    /** What a person can do here. */
    public interface Ways {
        void openDemo();

        void beginOwnCar();

        void openSession();

        /** Opens one of those opened not long ago. */
        void open(Path session);
    }

    /**
     * @param drawn the engine on the title drawing
     * @param version of the program
     * @param recent sessions opened not long ago
     * @param zone in which times are told
     */
    public FirstStart(
            EngineProfile drawn, String version, Look look, List<RecentSession> recent, ZoneId zone, Ways ways) {
        this.demo = way(
                "Open the demo car",
                "Enter",
                "An invented V8, its tune-up, three dyno days and what the changes made. You work on a copy.",
                ways::openDemo);
        Button own = way(
                "Begin with your own car",
                "Ctrl N",
                "Choose the engine, say what the owner permits. Two minutes.",
                ways::beginOwnCar);
        Button open = way(
                "Open a session",
                "Ctrl O",
                "A folder with session.json and the untouched pull files. Or drop it, or a shared zip, on the window.",
                ways::openSession);
        VBox right = new VBox(
                12,
                Labels.whole(recent.isEmpty() ? "No session yet" : "No session open", "question"),
                answer(),
                demo,
                own,
                open,
                new RecentList(recent, zone, ways::open),
                choices(look),
                Labels.wrapped(CAUTION, "caption"),
                problem);
        right.getStyleClass().add("title-ways");
        HBox.setHgrow(right, Priority.ALWAYS);
        getChildren().setAll(plan(drawn, version), right);
        WindowSteps.follow(this);
    }

    private static SentenceFlow answer() {
        SentenceFlow words = new SentenceFlow("answer", "title-answer");
        words.show(new Sentence("One used car, one engine, six sheets. Start with a look at a finished one."));
        return words;
    }

    private static Button way(String name, String key, String words, Runnable act) {
        Label title = Labels.whole(name, "way-name");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox head = new HBox(title, space, Labels.whole(key, "key"));
        Label what = Labels.wrapped(words, "second");
        what.setPrefWidth(WAY);
        VBox lines = new VBox(2, head, what);
        lines.setPrefWidth(WAY);
        lines.getStyleClass().add("way-lines");
        Button way = new Button("", lines);
        way.getStyleClass().add("way");
        way.setMaxWidth(Double.MAX_VALUE);
        way.setAccessibleText(name + ". " + words);
        // a wrapping label tells a button no honest height
        way.setMinHeight(WAY_HEIGHT);
        way.setPrefHeight(WAY_HEIGHT);
        way.setOnAction(pressed -> act.run());
        return way;
    }

    private static HBox choices(Look look) {
        Choice<UnitSystem> units =
                new Choice<>("Units", List.of(UnitSystem.values()), unit -> unit == UnitSystem.US ? "US" : "metric");
        units.show(Optional.of(look.unitsProperty().get()));
        units.onChosen(look.unitsProperty()::set);
        Choice<Boolean> light = new Choice<>("Light", List.of(false, true), night -> night ? "night" : "paper");
        light.show(Optional.of(look.nightProperty().get()));
        light.onChosen(look.nightProperty()::set);
        HBox line = new HBox(14, Labels.whole("Units", "caption"), units, Labels.whole("Light", "caption"), light);
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    private static StackPane plan(EngineProfile drawn, String version) {
        DrawingView engine = new DrawingView(
                (width, height) -> EnginePlan.of(drawn, List.of(new EnginePlan.Pair(5, 7)), width, height));
        engine.setMinHeight(PLAN_HEIGHT);
        engine.setPrefHeight(PLAN_HEIGHT);
        DrawingView strip = new DrawingView((width, height) -> FiringStrip.of(drawn.firing(), width, height));
        strip.setMinHeight(STRIP_HEIGHT);
        strip.setPrefHeight(STRIP_HEIGHT);
        strip.getStyleClass().add("title-strip");
        Region above = new Region();
        Region below = new Region();
        VBox.setVgrow(above, Priority.ALWAYS);
        VBox.setVgrow(below, Priority.ALWAYS);
        VBox paper = new VBox(24, above, engine, strip, below, block(version));
        paper.getStyleClass().add("title-paper");
        StackPane desk = new StackPane(paper);
        desk.getStyleClass().add("title-plan");
        return desk;
    }

    private static HBox block(String version) {
        HBox cells = new HBox(
                cell("Sheet", "1 of " + Stage.values().length, ""),
                cell("Version", version, ""),
                cell("Kept", "on this disk only", ""));
        cells.getStyleClass().add("title-cells");
        VBox block = new VBox(cell("Title", "Pullproof", "name"), cells);
        block.getStyleClass().add("title-block");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        return new HBox(space, block);
    }

    private static VBox cell(String caption, String words, String styleClass) {
        VBox cell = new VBox(Labels.whole(caption, "caption"), Labels.whole(words, styleClass));
        cell.getStyleClass().add("title-cell");
        HBox.setHgrow(cell, Priority.ALWAYS);
        return cell;
    }

    /** Says why something could not be opened. */
    public void say(String sentence) {
        problem.setText(sentence);
    }

    /** Gives the first way the keyboard. */
    public void focusFirst() {
        demo.requestFocus();
    }
}
