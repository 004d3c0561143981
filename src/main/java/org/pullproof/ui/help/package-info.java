/**
 * The user guide, read in a page of the window.
 */
@NullMarked
package org.pullproof.ui.help;

import org.jspecify.annotations.NullMarked;
