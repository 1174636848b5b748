package fitworthy.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.source.FaultsException;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Whoever the buying of a part waits for is asked by the same card, so that a letter asks them for it. */
class BuyingPartiesTest {

    private static final Map<Party, Pattern> WORDS = Map.of(
            Party.ENGINEER, Pattern.compile("\\bengineer\\b"),
            Party.AUTHORITY, Pattern.compile("\\bauthority\\b"),
            Party.PART_MAKER, Pattern.compile("\\bmaker\\b"),
            Party.CUSTOMER, Pattern.compile("\\bcustomer\\b"),
            Party.BUILDER, Pattern.compile("\\b(workshop|fitter|body builder)\\b"),
            Party.AUTO_ELECTRICIAN, Pattern.compile("\\bauto electrician\\b"),
            Party.GASFITTER, Pattern.compile("\\bcertifies the gas\\b"));

    @Test
    void whoIsWaitedForIsAsked() throws FaultsException {
        Map<String, Set<Party>> unasked = new TreeMap<>();
        Set<Party> named = new TreeSet<>();
        Books.shipped().cards().forEach((id, card) -> {
            Set<Party> asked =
                    card.ask().stream().map(ask -> ask.party().value()).collect(Collectors.toSet());
            Set<Party> waited = WORDS.entrySet().stream()
                    .filter(word ->
                            word.getValue().matcher(card.buying().waitFor()).find())
                    .map(Map.Entry::getKey)
                    .collect(Collectors.toCollection(TreeSet::new));
            named.addAll(waited);
            waited.removeAll(asked);
            if (!waited.isEmpty()) {
                unasked.put(id, waited);
            }
        });
        assertEquals(Map.of(), unasked);
        assertEquals(WORDS.keySet(), named);
    }
}
