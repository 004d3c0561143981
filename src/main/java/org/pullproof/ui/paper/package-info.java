/**
 * The page of what can be printed: the parts of the report that are wanted, the paper, and the cards beside it. Begin with {@link
 * org.pullproof.ui.paper.PaperPage}. Nothing is laid out here; that is done by {@code report}.
 */
@NullMarked
package org.pullproof.ui.paper;

import org.jspecify.annotations.NullMarked;
