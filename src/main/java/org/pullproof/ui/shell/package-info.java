/**
 * The frame of the window: top cells, job rail, the sheet, next step and foot. Start with {@link
 * org.pullproof.ui.shell.SessionViewModel}, which every sheet reads and acts through, and {@link
 * org.pullproof.ui.shell.Sheet}, which every stage implements.
 */
@NullMarked
package org.pullproof.ui.shell;

import org.jspecify.annotations.NullMarked;
