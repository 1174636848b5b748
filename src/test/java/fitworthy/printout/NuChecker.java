package fitworthy.printout;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import nu.validator.client.EmbeddedValidator;

/** What the Nu Html Checker has to say of a page. */
public final class NuChecker {

    private NuChecker() {}

    /** Its errors and its warnings; what it calls information is left out. */
    public static List<String> faults(String html) throws Exception {
        EmbeddedValidator checker = new EmbeddedValidator();
        checker.setOutputFormat(EmbeddedValidator.OutputFormat.JSON);
        String told = checker.validate(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
        List<String> faults = new ArrayList<>();
        for (JsonNode each : new ObjectMapper().readTree(told).get("messages")) {
            if (!each.get("type").asText().equals("info")
                    || each.path("subType").asText().equals("warning")) {
                faults.add(each.path("lastLine").asText() + ": "
                        + each.get("message").asText() + " | "
                        + each.path("extract").asText());
            }
        }
        return faults;
    }
}
