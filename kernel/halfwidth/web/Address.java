package halfwidth.web;

import halfwidth.job.Visit;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Addresses within the notebook. */
final class Address {
    private Address() {}

    /** The address of a view of a visit, as in {@code /fill/monitor/pair-null?visit=pair+3}. */
    static String of(String view, Visit visit) {
        String[] folders = visit.page().split("/");
        StringBuilder address = new StringBuilder(view);
        for (String folder : folders) {
            address.append('/').append(encoded(folder).replace("+", "%20"));
        }
        return address + "?visit=" + encoded(visit.name());
    }

    /** One more value behind an address. */
    static String also(String name, String value) {
        return "&" + encoded(name) + "=" + encoded(value);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
