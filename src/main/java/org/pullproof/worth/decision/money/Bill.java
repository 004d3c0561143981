package org.pullproof.worth.decision.money;

import java.util.List;
import org.pullproof.worth.decision.draws.Batches;

/** The sum of some cost lines in every draw. Arrays are shared and not written to. */
final class Bill {
    final double[] money;
    /** The part of the money that is engine work. */
    final double[] engine;

    final double[] hours;
    final double[] weeks;
    final double[] meanMoney;
    final double[] meanHours;
    final double[] meanWeeks;

    Bill(int draws, List<LineDraws> lines) {
        money = new double[draws];
        engine = new double[draws];
        hours = new double[draws];
        weeks = new double[draws];
        lines.forEach(line -> line.addTo(money, engine, hours, weeks));
        meanMoney = Batches.means(money);
        meanHours = Batches.means(hours);
        meanWeeks = Batches.means(weeks);
    }

    /** The share of draws above a cap, batch by batch. */
    double[] over(double cap) {
        double[] over = new double[meanMoney.length];
        int each = money.length / over.length;
        for (int i = 0; i < money.length; i++) {
            over[i / each] += money[i] > cap ? 1.0 / each : 0;
        }
        return over;
    }
}
