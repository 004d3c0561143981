package org.pullproof.ui.shell;

import java.util.List;
import java.util.function.Function;
import javafx.scene.Node;
import org.pullproof.ui.help.Guide;
import org.pullproof.ui.search.Found;

/**
 * What the window offers on every sheet.
 *
 * @param paper makes the page of what can be printed; it is handed what closes it
 * @param copy saves the session elsewhere and goes on there
 * @param readAgain takes the session as it is on disk
 * @param values makes the page of the values that the program judges by; it is handed what closes it
 * @param versions makes the page of what is kept of earlier sittings; it is handed what closes it
 * @param guide the user guide
 * @param more what else can be done, found by search alone or by its key
 */
public record ShellActs(
        Function<Runnable, Node> paper,
        Runnable copy,
        Runnable readAgain,
        Function<Runnable, Node> values,
        Function<Runnable, Node> versions,
        Guide guide,
        List<Found> more) {
    public ShellActs {
        more = List.copyOf(more);
    }
}
