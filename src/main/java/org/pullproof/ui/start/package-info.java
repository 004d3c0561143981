/** The title sheet before a session is open. */
@NullMarked
package org.pullproof.ui.start;

import org.jspecify.annotations.NullMarked;
