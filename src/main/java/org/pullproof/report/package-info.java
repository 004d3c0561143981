/**
 * One report model, written as text, HTML and PDF.
 */
@NullMarked
package org.pullproof.report;

import org.jspecify.annotations.NullMarked;
