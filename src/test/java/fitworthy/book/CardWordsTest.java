package fitworthy.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.quantity.Choice;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Three cards of which the first two may be told under another one. */
class CardWordsTest {

    private static final List<Ask> OFFICE = List.of(new Ask(Choice.of(Party.AUTHORITY), "", "", ""));

    private static final Buying NOT_BOUGHT = new Buying(Choice.missing(null), List.of(), "", "", List.of());

    private static Card card(String remedy, List<String> with, Card.Regional... own) {
        return card(remedy, List.of(new Ask(Choice.of(Party.PART_MAKER), "", "", "")), with, NOT_BOUGHT, own);
    }

    private static Card asking(Ask... asks) {
        return card("Do.", List.of(asks), List.of(), NOT_BOUGHT);
    }

    private static Card card(String remedy, List<Ask> asks, List<String> with, Buying buying, Card.Regional... own) {
        return card("limit", remedy, asks, with, buying, own);
    }

    private static Card card(
            String against, String remedy, List<Ask> asks, List<String> with, Buying buying, Card.Regional... own) {
        return new Card(
                "Too heavy",
                Choice.of(Severity.STOP),
                Choice.missing(null),
                with,
                List.of("mass.loaded"),
                against,
                Choice.of(Card.Sense.AT_MOST),
                List.of("mass.gvm-reserve"),
                "Light enough",
                "It breaks.",
                remedy,
                asks,
                List.of(own),
                List.of(),
                buying,
                Choice.of(Basis.CALCULATION),
                List.of(),
                LocalDate.of(2026, 11, 27),
                null,
                List.of());
    }

    private static List<String> faults(Map<String, Card> cards) {
        List<String> told = new ArrayList<>();
        CardWords words = new CardWords(
                new BookParts(
                        Path.of("rules"),
                        Map.of(
                                "au",
                                new Region("Australia", List.of(), "", "", "", "", List.of()),
                                "au-sa",
                                new Region("South Australia", List.of(), "au", "", "", "", List.of())),
                        cards,
                        Map.of(),
                        Map.of(),
                        Map.of(),
                        Map.of(),
                        Map.of(),
                        new Unread()),
                (id, problem, mend, path) -> told.add(id + " " + path + " " + problem));
        cards.forEach(words::check);
        return told.stream().sorted().toList();
    }

    @Test
    void aCardIsToldUnderAnotherThatIsNotToldUnderIt() {
        assertEquals(
                List.of(), faults(Map.of("a.one", card("Do.", List.of("a.two")), "a.two", card("Do.", List.of()))));
        assertEquals(
                List.of(
                        "a.one with cannot be told under 'a.two'",
                        "a.three with cannot be told under 'a.one'",
                        "a.two with cannot be told under 'a.three'"),
                faults(Map.of(
                        "a.one", card("Do.", List.of("a.two")),
                        "a.two", card("Do.", List.of("a.three")),
                        "a.three", card("Do.", List.of("a.one")))));
        assertEquals(
                List.of("a.one with cannot be told under 'b.none' (did you mean 'a.one'?)"),
                faults(Map.of("a.one", card("Do.", List.of("b.none")))));
    }

    @Test
    void thePlaceholdersOfWhatIsAskedStandForSomething() {
        assertEquals(
                List.of(),
                faults(Map.of("a.one", asking(new Ask(Choice.of(Party.INSURER), "{subject}", "{margin}", "{value}")))));
        assertEquals(
                List.of(
                        "a.one ask.2.bring the placeholder {valeu} stands for nothing",
                        "a.one ask.2.of the placeholder {subjet} stands for nothing",
                        "a.one ask.2.what the placeholder {margn} stands for nothing"),
                faults(Map.of(
                        "a.one",
                        asking(OFFICE.get(0), new Ask(Choice.of(Party.INSURER), "{subjet}", "{margn}", "{valeu}")))));
    }

    @Test
    void whereNothingIsHeldAgainstALimitThereIsNoMargin() {
        Card none = card("", "Take {value} or {enough}; {margin}, {left} of {limit}.", OFFICE, List.of(), NOT_BOUGHT);
        String told = " is worked out from a limit, and the card is 'against' none";
        assertEquals(
                List.of(
                        "a.one remedy the placeholder {left}" + told,
                        "a.one remedy the placeholder {limit}" + told,
                        "a.one remedy the placeholder {margin}" + told),
                faults(Map.of("a.one", none)));
    }

    @Test
    void aPlaceholderHasBothItsBraces() {
        assertEquals(List.of(), faults(Map.of("a.one", card("Take {margin} (or more) off.", List.of()))));
        String told = " in its words would be printed as it stands";
        assertEquals(
                List.of("a.one remedy '{'" + told, "a.three remedy '(margin)'" + told, "a.two remedy '}'" + told),
                faults(Map.of(
                        "a.one", card("Take {margin off.", List.of()),
                        "a.two", card("Take margin} off.", List.of()),
                        "a.three", card("Take (margin) off.", List.of()))));
    }

    @Test
    void aCardAsksSomebody() {
        assertEquals(List.of("a.one ask asks nobody"), faults(Map.of("a.one", asking())));
    }

    @Test
    void whatIsAskedReadsAsASentence() {
        assertEquals("The registering authority.", Ask.words(OFFICE));
        assertEquals(
                "The maker of the winch: what it pulls; bring its plate. The builder.",
                Ask.words(List.of(
                        new Ask(Choice.of(Party.PART_MAKER), "the winch", "what it pulls", "its plate"),
                        new Ask(Choice.of(Party.BUILDER), "", "", ""))));
    }

    @Test
    void theWordsOfARegionAreThoseOfARegionThatThereIs() {
        assertEquals(
                List.of(),
                faults(Map.of(
                        "a.one", card("Do.", List.of(), new Card.Regional("au-sa", "", "Take {margin}.", List.of())))));
        assertEquals(
                List.of(
                        "a.one in-region.1.region 'sa' is not a region",
                        "a.one in-region.1.remedy the placeholder {margn} stands for nothing"),
                faults(Map.of(
                        "a.one", card("Do.", List.of(), new Card.Regional("sa", "", "Take {margn}.", List.of())))));
    }

    @Test
    void aShareOfTheLimitIsThatOfOneOfItsPracticeValues() {
        assertEquals(List.of(), faults(Map.of("a.one", card("Keep {mass.gvm-reserve of limit}.", List.of()))));
        assertEquals(
                List.of("a.one remedy the placeholder {mass.loaded of limit} stands for nothing"),
                faults(Map.of("a.one", card("Keep {mass.loaded of limit}.", List.of()))));
    }

    /** The card is a stop, which another choice settles where it does not say otherwise. */
    @Test
    void wordsForBuyingAreOfKindsOfPartsAndAreSaid() {
        assertEquals(
                List.of(),
                bought(new Buying(Choice.missing(null), List.of("springs", "tank"), "", "softer ones", List.of())));
        assertEquals(
                List.of(),
                bought(new Buying(
                        Choice.of(Buying.Settled.ANSWER), List.of(), "a letter from the maker", "", List.of())));
        assertEquals(
                List.of("a.one buying.of 'spring' is no kind of part (did you mean 'springs'?)"),
                bought(new Buying(Choice.missing(null), List.of("spring"), "", "", List.of())));
        assertEquals(
                List.of("a.one buying.holds 'canopi' is no kind of part (did you mean 'canopy'?)"),
                bought(new Buying(Choice.missing(null), List.of(), "", "", List.of("tray", "canopi"))));
        assertEquals(
                List.of("a.one buying.wait-for 'wait-for' is never said, as another-choice settles it"),
                bought(new Buying(Choice.missing(null), List.of(), "a letter", "", List.of())));
        assertEquals(
                List.of("a.one buying.instead 'instead' is never said, as work settles it"),
                bought(new Buying(Choice.of(Buying.Settled.WORK), List.of(), "", "softer ones", List.of())));
        assertEquals(
                List.of("a.one buying.instead the placeholder {margn} stands for nothing"),
                bought(new Buying(Choice.missing(null), List.of(), "", "one {margn} lighter", List.of())));
    }

    private static List<String> bought(Buying buying) {
        return faults(Map.of(
                "a.one", card("Do.", List.of(new Ask(Choice.of(Party.PART_MAKER), "", "", "")), List.of(), buying)));
    }

    @Test
    void theNearestRegionWithWordsOfItsOwnCounts() {
        Card card = card(
                "Do.",
                List.of(),
                new Card.Regional("au", "", "Do as in Australia.", List.of()),
                new Card.Regional("au-sa", "", "", OFFICE));
        assertEquals("Do.", card.in(List.of("uk", "any")).remedy());
        assertEquals(
                "Do as in Australia.", card.in(List.of("au-nsw", "au", "any")).remedy());
        assertEquals("Do.", card.in(List.of("au-sa", "au", "any")).remedy());
        assertEquals(OFFICE, card.in(List.of("au-sa", "au", "any")).ask());
    }
}
