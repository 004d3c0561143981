package org.pullproof.ui.parts;

import java.util.Objects;
import javafx.scene.Parent;

/** The stylesheet of what only sheets have: tiles, ledgers, strips. */
public final class SheetStyle {
    private static final String SHEETS = "/org/pullproof/ui/sheets.css";

    private SheetStyle() {}

    public static void on(Parent sheet) {
        sheet.getStylesheets()
                .add(Objects.requireNonNull(SheetStyle.class.getResource(SHEETS), SHEETS)
                        .toExternalForm());
    }
}
