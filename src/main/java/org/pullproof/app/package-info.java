/**
 * One class for each thing a user does, shared by the command line and the window. Start with {@link
 * org.pullproof.app.OpenSession}.
 */
@NullMarked
package org.pullproof.app;

import org.jspecify.annotations.NullMarked;
