package org.pullproof.health.hole;

/**
 * Areas of holes spaced evenly in their logarithm, and a table over them, interpolated linearly in ln(area) and held constant
 * beyond its ends.
 */
public final class Areas {
    private final double lnFirst;
    private final double lnStep;
    private final int count;

    /**
     * @param fromMm2 smallest area, mm²
     * @param toMm2 largest area, mm²
     */
    public Areas(double fromMm2, double toMm2, int count) {
        this.lnFirst = Math.log(fromMm2);
        this.lnStep = (Math.log(toMm2) - lnFirst) / (count - 1);
        this.count = count;
    }

    public int count() {
        return count;
    }

    /** Area number {@code index}, mm². */
    public double at(int index) {
        return Math.exp(lnFirst + index * lnStep);
    }

    /** All of them, mm². */
    public double[] all() {
        double[] areas = new double[count];
        for (int i = 0; i < count; i++) {
            areas[i] = at(i);
        }
        return areas;
    }

    /** Reads a table of one value an area. */
    double read(double[] table, double areaMm2) {
        double place = (Math.log(areaMm2) - lnFirst) / lnStep;
        if (!(place > 0)) {
            return table[0];
        }
        int before = (int) place;
        return before >= count - 1
                ? table[count - 1]
                : table[before] + (place - before) * (table[before + 1] - table[before]);
    }
}
