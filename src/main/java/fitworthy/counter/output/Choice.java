package fitworthy.counter.output;

import fitworthy.source.Words;
import io.javalin.http.BadRequestResponse;
import java.util.Optional;
import java.util.stream.Stream;

/** One of a few words in an address. */
final class Choice {

    private Choice() {}

    /** The first where none was asked for. @throws BadRequestResponse where there is none of this name */
    static <E extends Enum<E>> E of(Class<E> among, String asked) {
        E[] all = among.getEnumConstants();
        String name = Optional.ofNullable(asked).orElse(word(all[0]));
        return Stream.of(all)
                .filter(one -> word(one).equals(name))
                .findFirst()
                .orElseThrow(() -> new BadRequestResponse("There is no '" + name + "' to choose."));
    }

    static String word(Enum<?> one) {
        return Words.hyphenated(one.name());
    }
}
