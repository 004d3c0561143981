/**
 * The command line: one thin class a command; the work is in {@code app}.
 */
@NullMarked
package org.pullproof.cli;

import org.jspecify.annotations.NullMarked;
