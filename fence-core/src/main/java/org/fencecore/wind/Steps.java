package org.fencecore.wind;

/**
 * A value that changes in steps with the distance from an end.
 *
 * <p>Held here for one use after another within a calculation, so its arrays are neither copied nor changed.
 */
final class Steps {

    private final double[] starts;
    private final double[] values;

    /** Takes rising starts, of which the first is 0, and as many values. */
    Steps(double[] starts, double[] values) {
        this.starts = starts;
        this.values = values;
    }

    Steps times(double factor) {
        double[] scaled = values.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= factor;
        }
        return new Steps(starts, scaled);
    }

    int count() {
        return starts.length;
    }

    double start(int step) {
        return starts[step];
    }

    double at(double distance) {
        int step = starts.length - 1;
        while (starts[step] > distance) {
            step--;
        }
        return values[step];
    }
}
