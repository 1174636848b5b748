package fitworthy.document;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;

/**
 * Records as JSON, their components in order: {@code notAssessed} is written {@code not-assessed}, and what is null is
 * left out.
 */
public final class Json {

    public static final ObjectMapper MAPPER = JsonMapper.builder()
            .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
            .serializationInclusion(JsonInclude.Include.NON_NULL)
            .build();

    private Json() {}

    /** A record as one line, without its end. */
    public static String line(Object written) {
        try {
            return MAPPER.writeValueAsString(written);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a record cannot be written as JSON", e);
        }
    }

    /** Prints a record over several lines, as people read it. */
    public static void print(PrintWriter out, Object written) {
        try {
            MAPPER.writerWithDefaultPrettyPrinter()
                    .without(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
                    .writeValue(out, written);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        out.println();
        out.flush();
    }
}
