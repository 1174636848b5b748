package fitworthy.counter.handbook;

import fitworthy.book.Book;
import fitworthy.sheet.ShopWords;
import fitworthy.sheet.ShopWords.Thing;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads what somebody looks for in the words of the book: what the trade calls a part is that part, and a word with a slip
 * of the finger is the word next to it.
 *
 * @param trade what the trade's words mean
 * @param known every word that the rules are written in
 */
record SearchWords(ShopWords trade, Set<String> known) {

    private static final Pattern WORD = Pattern.compile("[a-z]{2,}");
    /** No rule has its figures in its words. */
    private static final Pattern FIGURE =
            Pattern.compile("[0-9][0-9.,]*(?:\\s*(?:kg|mm|cm|km/h|l|m|t|w|ah|a|v|%))?(?=\\s|$)");
    /** How many words a part may be called by. */
    private static final int MOST = 3;

    static SearchWords of(Book book, Collection<String> texts) {
        Set<String> known = new LinkedHashSet<>();
        for (String text : texts) {
            Matcher word = WORD.matcher(text);
            while (word.find()) {
                known.add(word.group());
            }
        }
        return new SearchWords(book.tables().shopWords(), known);
    }

    /** For each thing that is looked for the words of which one has to stand in a text. */
    List<Set<String>> read(String typed) {
        String[] words = FIGURE.matcher(typed.toLowerCase(Locale.ROOT))
                .replaceAll(" ")
                .strip()
                .split("\\s+");
        List<Set<String>> read = new ArrayList<>();
        int next = 0;
        while (next < words.length) {
            int many = many(words, next);
            read.add(any(String.join(" ", Arrays.copyOfRange(words, next, next + many))));
            next += many;
        }
        return read;
    }

    /** How many of the next words are one of the trade's, such as bull bar. */
    private int many(String[] words, int from) {
        for (int many = Math.min(MOST, words.length - from); many > 1; many--) {
            if (isTrade(String.join(" ", Arrays.copyOfRange(words, from, from + many)))) {
                return many;
            }
        }
        return 1;
    }

    private boolean isTrade(String words) {
        return trade.all().contains(words);
    }

    private Set<String> any(String looked) {
        String word = isTrade(looked) || known.stream().anyMatch(one -> one.startsWith(looked)) ? looked : next(looked);
        Set<String> any = new LinkedHashSet<>(List.of(word));
        trade.of(word).filter(meaning -> isTrade(ShopWords.plain(word))).ifPresent(meaning -> {
            meaning.kinds()
                    .forEach(kind -> any.add(Words.hyphenated(kind.name()).replace('-', ' ')));
            meaning.things().forEach(thing -> any.add(noun(thing)));
        });
        any.remove("other");
        return any;
    }

    /** The word that it is with a slip of the finger; the same where it is none. */
    private String next(String looked) {
        Set<String> all = new LinkedHashSet<>(known);
        trade.all().forEach(word -> all.addAll(List.of(word.split(" "))));
        String meant = looked.length() > MOST ? Words.oneSlip(looked, all) : null;
        return meant == null ? looked : meant;
    }

    private static String noun(Thing thing) {
        String name = thing.name().toLowerCase(Locale.ROOT);
        return thing == Thing.CARGO ? "load" : name.substring(name.indexOf('_') + 1);
    }

    /** Whether one of the words for each thing stands in a text. */
    static boolean stand(List<Set<String>> wanted, String text) {
        return wanted.stream()
                .allMatch(any -> stands(any.iterator().next(), text)
                        || any.stream().skip(1).anyMatch(word -> startsIn(word, text)));
    }

    private static boolean stands(String word, String text) {
        return Stream.of(word.split(" ")).allMatch(text::contains);
    }

    private static boolean startsIn(String word, String text) {
        return Pattern.compile("\\b" + Pattern.quote(word)).matcher(text).find();
    }
}
