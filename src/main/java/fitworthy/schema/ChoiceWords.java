package fitworthy.schema;

import fitworthy.source.Words;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The words by which a sheet writes the answers of a choice. */
public final class ChoiceWords {

    private static final Map<Class<?>, List<String>> KNOWN = new ConcurrentHashMap<>();

    private ChoiceWords() {}

    /** The words for the constants of an enum, in their order. */
    public static List<String> of(Class<?> enumType) {
        return KNOWN.computeIfAbsent(enumType, type -> Arrays.stream(type.getEnumConstants())
                .map(constant -> Words.hyphenated(((Enum<?>) constant).name()))
                .toList());
    }
}
