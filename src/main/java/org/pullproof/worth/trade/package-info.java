/**
 * What the trade brings along to weigh money: works with their bills, what each fault does to the money, the options as plans, and
 * every assumption as a number with a key. All of it is judgement and read from one file; the owner may put another number in the
 * place of each. Start with {@link org.pullproof.worth.trade.Catalogue}.
 */
@NullMarked
package org.pullproof.worth.trade;

import org.jspecify.annotations.NullMarked;
