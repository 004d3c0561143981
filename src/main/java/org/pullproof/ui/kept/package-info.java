/**
 * The page of what is kept of earlier sittings: when, what was done since, and the way back. Begin with {@link
 * org.pullproof.ui.kept.KeptPage}. Keeping itself is done by {@code app}.
 */
@NullMarked
package org.pullproof.ui.kept;

import org.jspecify.annotations.NullMarked;
