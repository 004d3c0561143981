package org.pullproof.ui.parts;

import java.util.Objects;
import javafx.scene.Parent;

/** The stylesheets of what only some parts of the window have. */
public final class SheetStyle {
    private static final String SHEETS = "/org/pullproof/ui/sheets.css";

    private static final String PAGES = "/org/pullproof/ui/pages.css";

    private SheetStyle() {}

    /** Tiles, ledgers, strips. */
    public static void on(Parent sheet) {
        add(sheet, SHEETS);
    }

    /** Search and the guide. */
    public static void onPage(Parent page) {
        add(page, PAGES);
    }

    private static void add(Parent part, String style) {
        part.getStylesheets()
                .add(Objects.requireNonNull(SheetStyle.class.getResource(style), style)
                        .toExternalForm());
    }
}
