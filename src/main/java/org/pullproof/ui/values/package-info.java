/**
 * The page of the values that the program judges by: found, read, edited for one session, put back. Start with
 * {@link org.pullproof.ui.values.ValuesPage}.
 */
@NullMarked
package org.pullproof.ui.values;

import org.jspecify.annotations.NullMarked;
