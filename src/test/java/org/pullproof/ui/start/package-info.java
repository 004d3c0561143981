@NullMarked
package org.pullproof.ui.start;

import org.jspecify.annotations.NullMarked;
