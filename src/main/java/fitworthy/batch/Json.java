package fitworthy.batch;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;

/**
 * Records as one line of JSON each: {@code notAssessed} is written {@code not-assessed}, and what is null is left out.
 */
public final class Json {

    public static final ObjectMapper MAPPER = JsonMapper.builder()
            .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
            .serializationInclusion(JsonInclude.Include.NON_NULL)
            .build();

    private Json() {}

    public static String line(Object written) {
        try {
            return MAPPER.writeValueAsString(written);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a record cannot be written as JSON", e);
        }
    }
}
