package fitworthy.counter.told;

import fitworthy.counter.desk.OpenSheet;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/** The addresses of what is told of a sheet. */
final class Addresses {

    private Addresses() {}

    /** The page of a sheet. */
    static String of(OpenSheet sheet) {
        return "/sheets/" + sheet.name();
    }

    /** Behind that page, why a rule came out as it did on some subjects. */
    static String why(String rule, List<String> subjects) {
        return "/explain?rule=" + encoded(rule)
                + subjects.stream()
                        .map(subject -> "&subject=" + encoded(subject))
                        .collect(Collectors.joining());
    }

    /** What may stand in an address, and in the name of an element. */
    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
