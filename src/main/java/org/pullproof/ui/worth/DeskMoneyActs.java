package org.pullproof.ui.worth;

import org.pullproof.app.RecordMoney;
import org.pullproof.ui.shell.Act;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;

/** Books money on the disk. */
public final class DeskMoneyActs implements MoneyActs {
    private final RecordMoney money;

    public DeskMoneyActs(RecordMoney money) {
        this.money = money;
    }

    @Override
    public Act spend(Spending spending) {
        return open -> money.spend(open, spending);
    }

    @Override
    public Act correct(int place, Spending spending) {
        return open -> money.correct(open, place, spending);
    }

    @Override
    public Act removeSpending(int place) {
        return open -> money.removeSpending(open, place);
    }

    @Override
    public Act offer(Option option, String before) {
        return open -> money.offer(open, option, before);
    }

    @Override
    public Act removeOption(String name) {
        return open -> money.removeOption(open, name);
    }
}
