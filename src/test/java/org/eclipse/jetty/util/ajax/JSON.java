package org.eclipse.jetty.util.ajax;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;

/**
 * Stands in for a class of an older Jetty than the counter's, which the Nu Html Checker reads its tables of languages by
 * and cannot start without.
 */
public final class JSON {

    /** Lists as arrays and whole numbers as long ones, as that class gave them. */
    private static final ObjectMapper MAPPER = new ObjectMapper()
            .enable(DeserializationFeature.USE_JAVA_ARRAY_FOR_JSON_ARRAY)
            .enable(DeserializationFeature.USE_LONG_FOR_INTS);

    private JSON() {}

    public static Object parse(InputStream in) throws IOException {
        return MAPPER.readValue(in, Object.class);
    }

    public static Object parse(String text) throws IOException {
        return MAPPER.readValue(text, Object.class);
    }
}
