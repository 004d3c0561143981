package org.pullproof.ui.shell;

import java.util.function.Function;
import javafx.scene.Node;

/**
 * What the window offers on every sheet.
 *
 * @param report saves the report
 * @param values makes the page of the values that the program judges by; it is handed what closes it
 */
public record ShellActs(Runnable report, Function<Runnable, Node> values) {}
