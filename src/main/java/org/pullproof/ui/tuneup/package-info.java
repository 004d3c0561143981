/** The sheet Tune-up: steps, plugs, the off-car shelf and the start gate. */
@NullMarked
package org.pullproof.ui.tuneup;

import org.jspecify.annotations.NullMarked;
