/**
 * The whole document of one car, its edits and undo. Start with {@link org.pullproof.session.Session}. What can be computed
 * is never stored here.
 */
@NullMarked
package org.pullproof.session;

import org.jspecify.annotations.NullMarked;
