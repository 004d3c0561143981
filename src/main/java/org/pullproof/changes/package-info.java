/**
 * Which change really made power: the drift model, intervals and calls. Start with {@link
 * org.pullproof.changes.ChangeLedger}.
 */
@NullMarked
package org.pullproof.changes;

import org.jspecify.annotations.NullMarked;
