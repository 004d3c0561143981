/**
 * The window: thin views over view-models. The only room that knows JavaFX.
 */
@NullMarked
package org.pullproof.ui;

import org.jspecify.annotations.NullMarked;
