package org.pullproof.ui.worth;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pullproof.app.EditJudgement;
import org.pullproof.app.RecordMoney;
import org.pullproof.app.SetFacts;
import org.pullproof.car.Fact;
import org.pullproof.files.TradeConstants;
import org.pullproof.ui.shell.Act;
import org.pullproof.worth.Option;
import org.pullproof.worth.Spending;
import org.pullproof.worth.trade.JudgedNumber;

/** Books money on the disk. */
public final class DeskMoneyActs implements MoneyActs {
    private final RecordMoney money;
    private final SetFacts facts;
    private final EditJudgement judgement;

    public DeskMoneyActs(RecordMoney money, SetFacts facts, EditJudgement judgement) {
        this.money = money;
        this.facts = facts;
        this.judgement = judgement;
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
    public Act judge(JudgedNumber number, double value) {
        return open -> judgement.edit(open, Map.of(name(number), Optional.of(value)));
    }

    @Override
    public Act reset(JudgedNumber number) {
        return open -> judgement.edit(open, Map.of(name(number), Optional.empty()));
    }

    @Override
    public Act resetAll() {
        return open -> judgement.edit(
                open,
                open.session().judgement().edited().keySet().stream()
                        .filter(name -> name.startsWith(TradeConstants.MONEY))
                        .collect(Collectors.toMap(name -> name, name -> Optional.empty())));
    }

    private static String name(JudgedNumber number) {
        return TradeConstants.MONEY + number.key();
    }
}
