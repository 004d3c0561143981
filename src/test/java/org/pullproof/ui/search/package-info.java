@NullMarked
package org.pullproof.ui.search;

import org.jspecify.annotations.NullMarked;
