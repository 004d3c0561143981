package org.pullproof.ui.worth;

import org.pullproof.car.Fact;
import org.pullproof.ui.shell.Act;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;
import org.pullproof.worth.trade.JudgedNumber;

/** What the sheet Worth it does to the session. */
public interface MoneyActs {
    /** Adds something that is paid. */
    Act spend(Spending spending);

    /**
     * Puts a spending in the place of another.
     *
     * @param place in the list, from 0
     */
    Act correct(int place, Spending spending);

    /**
     * @param place in the list, from 0
     */
    Act removeSpending(int place);

    /**
     * Adds an option, or puts it in the place of the entered one of that name.
     *
     * @param before name of the option it was made from, which goes; empty for a new one
     */
    Act offer(Option option, String before);

    /** Removes an entered option; one of the program of that name shows again. */
    Act removeOption(String name);

    /** Tells an answer of the owner; an empty text forgets it. */
    Act tell(Fact fact, String text);

    /** Puts a number of the owner in the place of a usual one. */
    Act judge(JudgedNumber number, double value);

    /** Puts the usual number back. */
    Act reset(JudgedNumber number);

    /** Puts every usual number back. */
    Act resetAll();
}
