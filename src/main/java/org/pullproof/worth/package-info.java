/**
 * What more money would buy: spending, options, cost per horsepower. Start with {@link
 * org.pullproof.worth.WorthFindings}.
 */
@NullMarked
package org.pullproof.worth;

import org.jspecify.annotations.NullMarked;
