package org.pullproof.ui.start;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.OverrunStyle;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.pullproof.app.RecentSession;
import org.pullproof.ui.parts.Labels;

/** The sessions opened not long ago, each with its place and when it was changed; one that is gone says so. */
final class RecentList extends VBox {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH);
    private static final double LINE = 430;

    private final ZoneId zone;
    private final Consumer<Path> open;

    /**
     * @param zone in which times are told
     * @param open opens a session; one that is gone is tried too, and says why it can't be opened
     */
    RecentList(List<RecentSession> recent, ZoneId zone, Consumer<Path> open) {
        super(2);
        this.zone = zone;
        this.open = open;
        if (!recent.isEmpty()) {
            getChildren().add(Labels.whole("Not long ago", "caption"));
            recent.forEach(session -> getChildren().add(line(session)));
        }
    }

    private Button line(RecentSession session) {
        String name = String.valueOf(session.folder().getFileName());
        String where = String.valueOf(session.folder().getParent());
        String when = session.changed().map(this::words).orElse("not there any more");
        Label place = new Label(where);
        place.getStyleClass().add("caption");
        place.setTextOverrun(OverrunStyle.CENTER_ELLIPSIS);
        place.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(place, Priority.ALWAYS);
        HBox words = new HBox(
                10, Labels.whole(name, "strong"), place, Labels.whole(when, session.isThere() ? "caption" : "red"));
        words.setAlignment(Pos.BASELINE_LEFT);
        words.setPrefWidth(LINE);
        Button line = new Button("", words);
        line.getStyleClass().add("recent");
        line.setMaxWidth(Double.MAX_VALUE);
        line.setAccessibleText(name + " in " + where + ", " + when);
        line.setOnAction(pressed -> open.accept(session.folder()));
        words.prefWidthProperty().bind(line.widthProperty().subtract(24));
        return line;
    }

    private String words(Instant changed) {
        return "changed " + WHEN.format(changed.atZone(zone));
    }
}
