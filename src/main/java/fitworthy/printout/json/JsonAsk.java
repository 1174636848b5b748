package fitworthy.printout.json;

import fitworthy.book.Ask;
import fitworthy.source.Words;
import java.util.List;
import java.util.function.UnaryOperator;

/** Whom a card asks, of what, what, and what to bring; null what it does not say. */
public record JsonAsk(String party, String of, String what, String bring) {

    /** @param filled what becomes of a text's placeholders */
    public static List<JsonAsk> all(List<Ask> asks, UnaryOperator<String> filled) {
        return asks.stream()
                .map(ask -> new JsonAsk(
                        Words.hyphenated(ask.party().value().name()),
                        said(ask.of(), filled),
                        said(ask.what(), filled),
                        said(ask.bring(), filled)))
                .toList();
    }

    private static String said(String text, UnaryOperator<String> filled) {
        return text.isEmpty() ? null : filled.apply(text);
    }
}
