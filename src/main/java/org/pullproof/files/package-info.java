/**
 * Everything on disk: session folders, profiles, defaults, preferences, and bytes to a table.
 */
@NullMarked
package org.pullproof.files;

import org.jspecify.annotations.NullMarked;
