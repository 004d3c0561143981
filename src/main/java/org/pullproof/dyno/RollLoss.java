package org.pullproof.dyno;

/** What bearings and air take from a roll at a speed. */
interface RollLoss {
    /** Nothing is known of it, so nothing is added; whoever uses this says so. */
    RollLoss NOT_MEASURED = new RollLoss() {
        @Override
        public double watt(double radian) {
            return 0;
        }

        @Override
        public double errorWatt(double radian) {
            return 0;
        }
    };

    /** Power in W at a speed in rad/s. */
    double watt(double radian);

    /** Standard error of that power in W. */
    double errorWatt(double radian);
}
