@NullMarked
package org.pullproof.ui.help;

import org.jspecify.annotations.NullMarked;
