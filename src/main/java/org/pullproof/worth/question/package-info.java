/**
 * From what a session knows to the question put to the decision engine: hidden states from the joint chances of faults, options from
 * the catalogue of the trade, gains from the judged changes, tests with the chances of <i>Health</i>. Start with {@link
 * org.pullproof.worth.question.Questioner}.
 */
@NullMarked
package org.pullproof.worth.question;

import org.jspecify.annotations.NullMarked;
