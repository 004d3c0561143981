package org.pullproof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** The ground of every UI test: a stage opens, the fonts load, a click arrives, a picture has text in it. */
@ExtendWith({HeadlessFx.class, ApplicationExtension.class})
class HeadlessFxTest {
    private Stage stage;
    private Label label;

    @Start
    void open(Stage stage) throws IOException {
        this.stage = stage;
        label = new Label("not asked");
        label.setFont(font("IBMPlexSans-Medium.ttf", 24));
        Button button = new Button("Ask");
        button.setId("ask");
        button.setOnAction(event -> label.setText("λ 0.98 · 31.5 °C"));
        VBox sheet = new VBox(label, button);
        sheet.setStyle("-fx-background-color: white");
        stage.setScene(new Scene(sheet, 320, 120));
        stage.show();
    }

    @Test
    void textIsSetInTheEmbeddedFont() {
        assertThat(label.getFont().getFamily()).isEqualTo("IBM Plex Sans Medium");
        assertThat(label.getFont().getName()).isEqualTo("IBM Plex Sans Medium");
    }

    @Test
    void aClickReachesTheButtonAndThePictureShowsTheNewText(FxRobot robot) throws Exception {
        int inkBefore = darkPixels(picture());

        robot.clickOn("#ask");

        assertThat(label.getText()).isEqualTo("λ 0.98 · 31.5 °C");
        WritableImage after = picture();
        assertThat(after.getWidth()).isEqualTo(320);
        assertThat(after.getHeight()).isEqualTo(120);
        assertThat(darkPixels(after)).isGreaterThan(inkBefore).isGreaterThan(200);
    }

    private WritableImage picture() throws Exception {
        WaitForAsyncUtils.waitForFxEvents();
        return WaitForAsyncUtils.waitForAsyncFx(
                TimeUnit.SECONDS.toMillis(10), () -> stage.getScene().snapshot(null));
    }

    /** Counts the pixels in the row of the label that are darker than half. */
    private static int darkPixels(WritableImage picture) {
        return (int) IntStream.range(0, 30 * (int) picture.getWidth())
                .mapToObj(i ->
                        picture.getPixelReader().getColor(i % (int) picture.getWidth(), i / (int) picture.getWidth()))
                .mapToDouble(Color::getBrightness)
                .filter(brightness -> brightness < 0.5)
                .count();
    }

    private static Font font(String file, double size) throws IOException {
        try (InputStream ttf = HeadlessFxTest.class.getResourceAsStream("/org/pullproof/fonts/" + file)) {
            return Font.loadFont(Objects.requireNonNull(ttf, file), size);
        }
    }
}
