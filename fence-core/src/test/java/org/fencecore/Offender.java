package org.fencecore;

import com.tngtech.archunit.core.domain.JavaClass;
import java.util.List;

/** What {@link ArchitectureTest} must object to, and beside it what it must leave alone. */
@SuppressWarnings("unused")
public final class Offender {
    public static final Double HALF = 0.5;

    public Offender() {}

    public void weight(double pounds) {}

    public List<Double> widths() {
        return List.of();
    }

    public void slice(JavaClass foreign) {}

    public int count(int pickets) {
        return pickets;
    }

    double hidden() {
        return 0.5;
    }
}
