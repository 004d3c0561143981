/**
 * What one session amounts to: every room's answer computed once, the next step and the cautions due. Start with {@link
 * org.pullproof.advice.Appraisal}.
 */
@NullMarked
package org.pullproof.advice;

import org.jspecify.annotations.NullMarked;
