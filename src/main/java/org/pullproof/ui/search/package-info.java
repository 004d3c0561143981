/**
 * Search over everything in the session and everything a person can do. The index is plain; only the page knows the screen.
 */
@NullMarked
package org.pullproof.ui.search;

import org.jspecify.annotations.NullMarked;
