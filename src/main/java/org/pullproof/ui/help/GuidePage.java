package org.pullproof.ui.help;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import org.pullproof.ui.parts.Actions;
import org.pullproof.ui.parts.Labels;
import org.pullproof.ui.parts.SheetStyle;

/** The user guide: its chapters on the left, the chosen one beside them. Arrows choose, Page keys and Space scroll, Esc closes. */
public final class GuidePage extends BorderPane {
    private static final double CHAPTERS = 232;
    private static final double WIDEST_LINE = 780;
    private static final double MOST_OF_A_PAGE = 0.9;

    private final Runnable leave;
    private final ListView<GuideChapter> chapters = new ListView<>();
    private final VBox words = new VBox(10);
    private final ScrollPane scroll = new ScrollPane(words);
    private Optional<String> sought = Optional.empty();

    /**
     * @param heading the heading to begin at
     * @param leave closes the page
     */
    public GuidePage(Guide guide, String heading, Runnable leave) {
        this.leave = leave;
        getStyleClass().add("guide-page");
        SheetStyle.onPage(this);
        chapters.setId("guide-chapters");
        chapters.setAccessibleText("Chapters of the user guide");
        chapters.setPrefWidth(CHAPTERS);
        chapters.setCellFactory(of -> new ChapterCell());
        chapters.getItems().setAll(guide.chapters());
        chapters.getSelectionModel().selectedItemProperty().addListener((of, before, chapter) -> show(chapter));
        words.setId("guide-words");
        words.setMaxWidth(WIDEST_LINE);
        words.getStyleClass().add("guide-chapter");
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        setTop(head());
        setLeft(chapters);
        setCenter(scroll);
        addEventFilter(KeyEvent.KEY_PRESSED, this::press);
        open(guide, heading);
    }

    private HBox head() {
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        Button close = Actions.plain("Close", "Esc");
        close.setOnAction(pressed -> leave.run());
        HBox head = new HBox(
                16,
                Labels.whole("User guide", "title"),
                Labels.whole("↑ ↓ chapters · Page ↑ ↓ scroll", "caption"),
                space,
                close);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("guide-top");
        return head;
    }

    private void open(Guide guide, String heading) {
        GuideChapter chapter = guide.chapterWith(heading);
        chapters.getSelectionModel().select(chapter);
        sought = Optional.of(heading);
    }

    /** Where a heading stands is known once the words are laid out. */
    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        scroll.layout();
        if (scroll.getViewportBounds().getHeight() > 0) {
            sought.ifPresent(this::scrollTo);
            sought = Optional.empty();
        }
    }

    private void scrollTo(String heading) {
        words.getChildren().stream()
                .skip(1)
                .filter(node -> node instanceof Label label && label.getText().equals(heading))
                .findFirst()
                .ifPresent(this::scrollTo);
    }

    private void scrollTo(Node node) {
        double beyond = words.getHeight() - scroll.getViewportBounds().getHeight();
        scroll.setVvalue(beyond <= 0 ? 0 : Math.min(1, node.getBoundsInParent().getMinY() / beyond));
    }

    private void show(@Nullable GuideChapter chapter) {
        if (chapter != null) {
            words.getChildren().setAll(Labels.wrapped(chapter.title(), "guide-title"));
            chapter.blocks().stream().map(GuideText::of).forEach(words.getChildren()::add);
            scroll.setVvalue(0);
        }
    }

    private void press(KeyEvent key) {
        switch (key.getCode()) {
            case ESCAPE, F1 -> leave.run();
            case PAGE_DOWN -> scrollBy(1);
            case SPACE -> scrollBy(key.isShiftDown() ? -1 : 1);
            case PAGE_UP -> scrollBy(-1);
            default -> {
                return;
            }
        }
        key.consume();
    }

    private void scrollBy(int pages) {
        double page = scroll.getViewportBounds().getHeight();
        double beyond = words.getHeight() - page;
        if (beyond > 0) {
            double next = scroll.getVvalue() + pages * MOST_OF_A_PAGE * page / beyond;
            scroll.setVvalue(Math.max(0, Math.min(1, next)));
        }
    }

    /** The chapters are where the page begins. */
    @Override
    public void requestFocus() {
        chapters.requestFocus();
    }

    private static final class ChapterCell extends ListCell<GuideChapter> {
        @Override
        protected void updateItem(@Nullable GuideChapter chapter, boolean empty) {
            super.updateItem(chapter, empty);
            setText(empty || chapter == null ? null : chapter.title());
            // as wide as the list, so that a long title wraps
            setPrefWidth(0);
            setWrapText(true);
        }
    }
}
