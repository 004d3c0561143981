/**
 * The sheet Worth it: options with their costs and what one horsepower costs. Start with {@link org.pullproof.ui.worth.WorthSheet}.
 */
@NullMarked
package org.pullproof.ui.worth;

import org.jspecify.annotations.NullMarked;
