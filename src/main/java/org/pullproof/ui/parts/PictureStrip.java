package org.pullproof.ui.parts;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.pullproof.session.About;
import org.pullproof.session.Picture;

/** The photographs of one thing at a time, small and upright, and a button that attaches another. */
public final class PictureStrip extends FlowPane {
    private static final double LONGEST = 72;

    /** What a strip shows and does. */
    public interface Acts {
        List<Picture> pictures(About about);

        /** Makes the small picture away from the screen; a sentence where its file is lost. */
        void small(Picture picture, Consumer<byte[]> made, Consumer<String> lost);

        /** Asks for a file and attaches it. */
        void attach(About about);

        void remove(Picture picture);
    }

    private About about;
    private final Acts acts;
    private List<Picture> shown = List.of();

    public PictureStrip(About about, Acts acts) {
        super(8, 4);
        this.about = about;
        this.acts = acts;
        getChildren().setAll(attach());
        show();
    }

    /** Shows the pictures of something else, and attaches to that from now on. */
    public void show(About other) {
        if (!other.equals(about)) {
            about = other;
            show(acts.pictures(other));
        } else {
            show();
        }
    }

    /** Shows the pictures there are now. */
    public void show() {
        List<Picture> now = acts.pictures(about);
        if (!now.equals(shown)) {
            show(now);
        }
    }

    private void show(List<Picture> now) {
        shown = now;
        getChildren().setAll(now.stream().map(this::frame).toList());
        getChildren().add(attach());
    }

    private Button attach() {
        Button attach = link("picture…");
        attach.setAccessibleText("Attach a picture of " + about.words());
        attach.setOnAction(pressed -> acts.attach(about));
        return attach;
    }

    private static Button link(String words) {
        Button button = Actions.plain(words, "");
        button.getStyleClass().add("link");
        return button;
    }

    private VBox frame(Picture picture) {
        Button remove = link("remove");
        remove.setAccessibleText("Take away the picture " + picture.original() + " of " + about.words());
        remove.setOnAction(pressed -> acts.remove(picture));
        HBox place = new HBox();
        acts.small(
                picture,
                made -> place.getChildren().setAll(view(picture, made)),
                lost -> place.getChildren().setAll(Labels.wrapped(lost, "caption", "red")));
        return new VBox(2, place, remove);
    }

    private ImageView view(Picture picture, byte[] made) {
        ImageView view = new ImageView(new Image(new ByteArrayInputStream(made)));
        view.setFitWidth(LONGEST);
        view.setFitHeight(LONGEST);
        view.setPreserveRatio(true);
        view.setAccessibleText("Picture of " + about.words() + ". " + picture.words());
        return view;
    }
}
