package halfwidth.engine;

import java.util.Locale;
import java.util.Properties;
import java.util.TimeZone;

/**
 * The state of the JVM that a step could change for the next run. Put back after every run, since a
 * run must not depend on the ones before it.
 */
final class Ambient {
    private final Properties properties = (Properties) System.getProperties().clone();
    private final Locale locale = Locale.getDefault();
    private final Locale display = Locale.getDefault(Locale.Category.DISPLAY);
    private final Locale format = Locale.getDefault(Locale.Category.FORMAT);
    private final TimeZone zone = TimeZone.getDefault();

    void restore() {
        System.setProperties((Properties) properties.clone());
        Locale.setDefault(locale);
        Locale.setDefault(Locale.Category.DISPLAY, display);
        Locale.setDefault(Locale.Category.FORMAT, format);
        TimeZone.setDefault(zone);
    }
}
