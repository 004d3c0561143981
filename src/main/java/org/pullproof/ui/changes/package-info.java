/**
 * The sheet Changes: the ledger with intervals and calls, and the step to another setup. Start with {@link org.pullproof.ui.changes.ChangesSheet}.
 */
@NullMarked
package org.pullproof.ui.changes;

import org.jspecify.annotations.NullMarked;
