@NullMarked
package org.pullproof.car;

import org.jspecify.annotations.NullMarked;
