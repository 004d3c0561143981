/**
 * What a chart or an engine plan says, as plain shapes without a toolkit; painted on the screen and as SVG. Start with
 * {@link org.pullproof.drawing.Drawing}.
 */
@NullMarked
package org.pullproof.drawing;

import org.jspecify.annotations.NullMarked;
