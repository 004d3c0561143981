package org.pullproof.simulation.faults;

import java.util.Arrays;
import org.pullproof.files.TradeConstants;
import org.pullproof.health.faults.EngineReadings;
import org.pullproof.health.faults.FaultConstants;
import org.pullproof.health.faults.FaultModel;
import org.pullproof.health.faults.FaultPosterior;
import org.pullproof.session.Judgement;

/** Prints how long one answer for eight cylinders with everything read takes, warm: the middle of some. */
public final class FaultTiming {
    private static final int TIMES = 41;

    private FaultTiming() {}

    public static void main(String[] arguments) {
        FaultConstants constants = new TradeConstants().faults(Judgement.own());
        FaultModel model = new FaultModel(constants);
        EngineReadings readings = eightCylinders(constants);
        double[] seconds = new double[TIMES];
        double sound = 0;
        for (int i = 0; i < TIMES; i++) {
            long from = System.nanoTime();
            FaultPosterior answer = model.weigh(readings);
            seconds[i] = (System.nanoTime() - from) / 1e9;
            sound = answer.sound();
        }
        double first = seconds[0];
        Arrays.sort(seconds);
        System.out.printf(
                "8 cylinders, everything read: %.3f s, the first %.3f s (sound %.3f)%n",
                seconds[TIMES / 2], first, sound);
    }

    private static EngineReadings eightCylinders(FaultConstants constants) {
        for (long seed = 1; ; seed++) {
            Dice dice = new Dice(seed);
            InventedEngine engine = new InventedEngine(dice);
            if (engine.cylinders() == 8) {
                return new Bench(engine, dice, constants).all();
            }
        }
    }
}
