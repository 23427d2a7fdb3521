package halfwidth.command;

import com.sun.management.HotSpotDiagnosticMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Map;

/** Makes a JVM that runs all day give back the memory that it needs no more. */
final class Thrift {
    /** In this order, since the least may not be above the most. */
    private static final List<Map.Entry<String, String>> OPTIONS =
            List.of(
                    Map.entry("MinHeapFreeRatio", "10"),
                    Map.entry("MaxHeapFreeRatio", "30"),
                    Map.entry("G1PeriodicGCInterval", "30000"));

    private Thrift() {}

    /** Sets what can be set while it runs; a JVM that has no such options stays as it is. */
    static void begin() {
        HotSpotDiagnosticMXBean machine =
                ManagementFactory.getPlatformMXBean(HotSpotDiagnosticMXBean.class);
        for (Map.Entry<String, String> option : OPTIONS) {
            try {
                machine.setVMOption(option.getKey(), option.getValue());
            } catch (IllegalArgumentException none) {
                // Another collector, or another JVM.
            }
        }
    }
}
