/**
 * What every sheet is made of: fonts and colours of the look, fields, tables' marks, and the painter of drawings. Start with
 * {@link org.pullproof.ui.parts.DrawingView} for pictures and {@link org.pullproof.ui.parts.CheckedField} for entry.
 */
@NullMarked
package org.pullproof.ui.parts;

import org.jspecify.annotations.NullMarked;
