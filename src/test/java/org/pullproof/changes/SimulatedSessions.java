package org.pullproof.changes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * Invented sessions with a known truth, drawn as section 5 of the method tells in words: six settings, five changes whose true
 * size is 0 (40 %) or ±1, ±2, ±3 (10 % each), a scatter lognormal (median 0.55, 0.35) within 0.25 to 1.2.
 */
final class SimulatedSessions {
    /** What else goes on in a session. */
    enum Trouble {
        NONE,
        /** −0.1 to −0.4 % a pull. */
        LIN,
        /** 1 to 3 % that settles within 2 to 5 pulls, 30 % of them rising. */
        EXP,
        /** Another 0.3 % for each run of pulls on a setting, with a drift of 0 to −0.2 % a pull. */
        BLOCK,
        /** 7 % of the pulls bad: four in five by −1.5 to −6 %, else +1 to +4 %; with a drift of 0 to −0.2 % a pull. */
        OUT
    }

    /**
     * @param pulls what the fit sees
     * @param levels the true level of each setting
     */
    record Drawn(List<Observation> pulls, List<Double> levels) {}

    private final Random random;

    SimulatedSessions(long seed) {
        this.random = new Random(seed);
    }

    /**
     * @param order letters of the settings, one a visit
     * @param pulls at each visit
     */
    Drawn draw(String order, int pulls, Trouble trouble) {
        double scatter = Math.min(1.2, Math.max(0.25, 0.55 * Math.exp(0.35 * random.nextGaussian())));
        return draw(order, pulls, trouble, scatter);
    }

    /** The same with a scatter that is given; a setting that stays is one run. */
    Drawn draw(String order, int pulls, Trouble trouble, double scatter) {
        double[] levels = levels(backEveryTime(order));
        double shift = 0;
        int block = -1;
        Course course = new Course(trouble);
        List<Observation> drawn = new ArrayList<>();
        for (int visit = 0; visit < order.length(); visit++) {
            if (visit == 0 || order.charAt(visit) != order.charAt(visit - 1)) {
                block++;
                shift = trouble == Trouble.BLOCK ? 0.3 * random.nextGaussian() : 0;
            }
            for (int i = 0; i < pulls; i++) {
                int clock = drawn.size() + 1;
                int setting = order.charAt(visit) - 'A';
                double y = 460 + levels[setting] + shift + course.at(clock) + scatter * random.nextGaussian();
                drawn.add(new Observation(0, clock, block, setting, y));
            }
        }
        return new Drawn(drawn, Arrays.stream(levels).boxed().toList());
    }

    /**
     * Several days, one pull a letter: each with a level and a course of its own, one scatter for all. The settings are a chain from
     * the first letter of the first day.
     */
    Drawn days(List<String> days, Trouble trouble, double daySd) {
        double scatter = Math.min(1.2, Math.max(0.25, 0.55 * Math.exp(0.35 * random.nextGaussian())));
        double[] levels = chain(7);
        char first = days.get(0).charAt(0);
        List<Observation> drawn = new ArrayList<>();
        int block = -1;
        for (int day = 0; day < days.size(); day++) {
            String order = days.get(day);
            double level = 460 + daySd * random.nextGaussian();
            Course course = new Course(trouble);
            double shift = 0;
            for (int i = 0; i < order.length(); i++) {
                if (i == 0 || order.charAt(i) != order.charAt(i - 1)) {
                    block++;
                    shift = trouble == Trouble.BLOCK ? 0.3 * random.nextGaussian() : 0;
                }
                int setting = order.charAt(i) - first;
                double y = level + levels[setting] + shift + course.at(i + 1) + scatter * random.nextGaussian();
                drawn.add(new Observation(day, i + 1, block, setting, y));
            }
        }
        return new Drawn(drawn, Arrays.stream(levels).boxed().toList());
    }

    private double[] chain(int settings) {
        double[] levels = new double[settings];
        for (int i = 1; i < settings; i++) {
            levels[i] = levels[i - 1] + change();
        }
        return levels;
    }

    /** Nought in four of ten, else ±1, ±2 or ±3. */
    private double change() {
        int which = random.nextInt(10);
        double size = which < 4 ? 0 : 1 + (which - 4) / 2;
        return which % 2 == 0 ? size : -size;
    }

    /** Whether the first setting comes back after every other one; each change is then one from that setting. */
    static boolean backEveryTime(String order) {
        return order.startsWith("ABACA");
    }

    /** Each setting against the one it is judged against: nought in four of ten, else ±1, ±2 or ±3. */
    private double[] levels(boolean fromTheFirst) {
        double[] levels = new double[6];
        for (int i = 1; i < levels.length; i++) {
            levels[i] = (fromTheFirst ? 0 : levels[i - 1]) + change();
        }
        return levels;
    }

    /** What time and bad luck do to one session. */
    private final class Course {
        private final Trouble trouble;
        private final double slope;
        private final double height;
        private final double settles;

        Course(Trouble trouble) {
            this.trouble = trouble;
            this.slope = slope(trouble);
            double size = 1 + 2 * random.nextDouble();
            this.height = random.nextDouble() < 0.3 ? -size : size;
            this.settles = 2 + 3 * random.nextDouble();
        }

        private double slope(Trouble of) {
            return switch (of) {
                case LIN -> -0.1 - 0.3 * random.nextDouble();
                case BLOCK, OUT -> -0.2 * random.nextDouble();
                case NONE, EXP -> 0;
            };
        }

        double at(int clock) {
            return slope * clock
                    + (trouble == Trouble.EXP ? height * Math.exp(-(clock - 1) / settles) : 0)
                    + (trouble == Trouble.OUT ? badLuck() : 0);
        }

        private double badLuck() {
            if (random.nextDouble() >= 0.07) {
                return 0;
            }
            return random.nextDouble() < 0.8 ? -1.5 - 4.5 * random.nextDouble() : 1 + 3 * random.nextDouble();
        }
    }
}
