package org.pullproof.ui.worth;

import java.util.Map;
import org.pullproof.app.RecordMoney;
import org.pullproof.app.SetFacts;
import org.pullproof.car.Fact;
import org.pullproof.ui.shell.Act;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;
import org.pullproof.worth.trade.Judgement;

/** Books money on the disk. */
public final class DeskMoneyActs implements MoneyActs {
    private final RecordMoney money;
    private final SetFacts facts;

    public DeskMoneyActs(RecordMoney money, SetFacts facts) {
        this.money = money;
        this.facts = facts;
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

    @Override
    public Act tell(Fact fact, String text) {
        return open -> facts.set(open, Map.of(fact.key(), text));
    }

    @Override
    public Act judge(Judgement number, double value) {
        return open -> money.judge(open, number, value);
    }

    @Override
    public Act reset(Judgement number) {
        return open -> money.reset(open, number);
    }

    @Override
    public Act resetAll() {
        return money::resetAll;
    }
}
