package fitworthy.schema;

import fitworthy.source.Words;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The words by which a sheet writes the answers of a choice. */
public final class ChoiceWords {

    private static final Map<Class<?>, List<String>> KNOWN = new ConcurrentHashMap<>();

    /** On a constant that no file may give, so that nobody is told of it. */
    @Retention(RetentionPolicy.RUNTIME)
    @Target(ElementType.FIELD)
    public @interface NotOffered {}

    private ChoiceWords() {}

    /** The words for the constants of an enum, in their order. */
    public static List<String> of(Class<?> enumType) {
        return KNOWN.computeIfAbsent(enumType, type -> Arrays.stream(type.getEnumConstants())
                .map(constant -> Words.hyphenated(((Enum<?>) constant).name()))
                .toList());
    }

    /** The words to choose from. */
    static List<String> offered(Class<?> enumType) {
        return Arrays.stream(enumType.getFields())
                .filter(field -> field.isEnumConstant() && !field.isAnnotationPresent(NotOffered.class))
                .map(field -> Words.hyphenated(field.getName()))
                .toList();
    }
}
