package org.pullproof;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import javafx.scene.text.Font;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Runs a UI test only where JavaFX can load the fonts of the window, which also without a display needs one system
 * library. Where it is missing the test is skipped and the reason names the package; with {@code -Dui.tests=required}
 * it fails instead. Place it first: {@code @ExtendWith({HeadlessFx.class, ApplicationExtension.class})}.
 */
public final class HeadlessFx implements ExecutionCondition {
    private static final String FONT = "/org/pullproof/fonts/IBMPlexSans-Regular.ttf";

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        Optional<String> missing = whatIsMissing();
        if (missing.isEmpty()) {
            return ConditionEvaluationResult.enabled("JavaFX loads its fonts");
        }
        if ("required".equals(System.getProperty("ui.tests"))) {
            throw new IllegalStateException(missing.get());
        }
        return ConditionEvaluationResult.disabled(missing.get());
    }

    private static Optional<String> whatIsMissing() {
        try (InputStream ttf = HeadlessFx.class.getResourceAsStream(FONT)) {
            if (ttf == null || Font.loadFont(ttf, 12) == null) {
                throw new IllegalStateException("JavaFX cannot read the font " + FONT);
            }
            return Optional.empty();
        } catch (LinkageError e) {
            return Optional.of("UI tests need Pango: install libpangoft2-1.0-0 (" + e.getMessage() + ")");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
