/** Tests of the page of what can be printed. */
@NullMarked
package org.pullproof.ui.paper;

import org.jspecify.annotations.NullMarked;
