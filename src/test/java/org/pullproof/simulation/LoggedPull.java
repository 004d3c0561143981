package org.pullproof.simulation;

import java.util.Locale;
import java.util.Random;

/**
 * A pull with everything a good logger writes, 20 times a second: clean, or with one thing wrong in it. The law of power and all scatter
 * are invented; nothing of the program is asked.
 */
final class LoggedPull {
    /** What is wrong with it. */
    enum Flaw {
        NONE,
        SLIP,
        LIFT,
        LEAN,
        HOT_START,
        KNOCK,
        HALF_THROTTLE,
        WEAK_SUPPLY,
        MISFIRE,
        STEEP_SWEEP,
        POWER_IN_HP_HEADED_KW
    }

    private static final double STEP_SECOND = 0.05;
    private static final int FROM_RPM = 2200;
    private static final int TO_RPM = 5600;

    private final Random random;
    private final Flaw flaw;
    private final int ofTheDay;

    LoggedPull(Random random, Flaw flaw, int ofTheDay) {
        this.random = random;
        this.flaw = flaw;
        this.ofTheDay = ofTheDay;
    }

    /** The whole of a pull's own scatter, drawn once. */
    private record Day(
            double level, double rate, double lambda, double coolant, double oil, double intake, double volts) {}

    private Day drawn() {
        boolean hot = flaw == Flaw.HOT_START;
        return new Day(
                1 + 0.0035 * random.nextGaussian(),
                (flaw == Flaw.STEEP_SWEEP ? 430 : 350) * (1 + 0.015 * random.nextGaussian()),
                (flaw == Flaw.LEAN ? 0.95 : 0.87) + 0.003 * random.nextGaussian(),
                88 + 0.7 * random.nextGaussian() + (hot ? 9 : 0),
                96 + random.nextGaussian() + (hot ? 9 : 0),
                31 + 0.15 * ofTheDay + 0.4 * random.nextGaussian() + (hot ? 7 : 0),
                (flaw == Flaw.WEAK_SUPPLY ? 12.6 : 13.9) + 0.05 * random.nextGaussian());
    }

    String file() {
        Day day = drawn();
        StringBuilder lines = new StringBuilder(
                "time s,rpm,power kW,torque Nm,throttle %,lambda,knock count,battery V,coolant C,oil temp C,intake air C,roll speed km/h\n");
        double rpm = FROM_RPM;
        for (int row = 0; rpm <= TO_RPM; row++) {
            lines.append(row(day, row * STEP_SECOND, rpm));
            rpm += day.rate() * STEP_SECOND * (1 + 0.1 * Math.sin(rpm / 900));
        }
        return lines.toString();
    }

    private String row(Day day, double second, double rpm) {
        boolean lifted = flaw == Flaw.LIFT && rpm > 4000 && rpm < 4250;
        double open = lifted ? 40 : flaw == Flaw.HALF_THROTTLE ? 92 : 99.6 + 0.1 * random.nextGaussian();
        double slip = flaw == Flaw.SLIP ? 1 + 0.022 * Math.max(0, (rpm - 3200) / 2400) : 1;
        boolean missed = flaw == Flaw.MISFIRE && rpm > 3400 && rpm < 4600 && random.nextInt(4) == 0;
        double torque = newtonMetre(rpm)
                * day.level()
                * (1 + 0.003 * random.nextGaussian())
                * (lifted ? 0.35 : 1)
                * (missed ? 0.88 : 1);
        double kilowatt = torque * rpm * Math.PI / 30 / 1e3;
        double shown = flaw == Flaw.POWER_IN_HP_HEADED_KW ? kilowatt / 0.7457 : kilowatt;
        double roll = rpm / slip * 0.021 * (1 + 0.0005 * random.nextGaussian());
        int knock = flaw == Flaw.KNOCK && rpm > 3000 && rpm < 3100 ? 2 : 0;
        return String.format(
                        Locale.ROOT,
                        "%.2f,%.0f,%.2f,%.1f,%.1f,%.3f,%d,%.2f,%.1f,%.1f,%.1f,%.2f%n",
                        second,
                        rpm,
                        shown,
                        torque,
                        open,
                        day.lambda() + 0.004 * random.nextGaussian(),
                        knock,
                        day.volts() + 0.03 * random.nextGaussian(),
                        day.coolant() + 0.3 * second,
                        day.oil() + 0.2 * second,
                        day.intake() + 0.1 * second,
                        roll)
                .replace("\r", "");
    }

    private static double newtonMetre(double rpm) {
        double x = (rpm - 3600) / 1000;
        return 290 * (1 - 0.055 * x * x);
    }
}
