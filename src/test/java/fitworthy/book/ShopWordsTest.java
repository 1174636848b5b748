package fitworthy.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.sheet.ShopWords;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodeReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The trade's words as a table of the book, and what is made of them on a sheet. */
class ShopWordsTest {

    private final List<Fault> faults = new ArrayList<>();

    private ShopWords read(String... rows) {
        return TableReader.shopWords("word,is,basis,source\n" + String.join("\n", rows), "synonyms.csv", faults);
    }

    @Test
    void rowsAreReadByWord() {
        ShopWords words = read("bull bar,bar,common-practice,", "dual battery,battery + charger,common-practice,");
        assertEquals(List.of(), faults);
        assertEquals(List.of("bar"), words.meanings().get("bull bar").terms());
        assertEquals(
                List.of("battery", "charger"),
                words.meanings().get("dual battery").terms());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bull bar,barr,common-practice, | synonyms.csv:2:10: is: 'barr' is no kind of part or job (did you mean 'bar'?)",
                "Bull bar,bar,common-practice, | synonyms.csv:2:1: word: 'Bull bar' is not in plain small words",
                "roof rack,roof-rack,common-practice, | synonyms.csv:2:1: word: 'roof rack' is a kind of part by itself",
                "fuel tank,water-tank,common-practice, | synonyms.csv:2:11: is: 'fuel tank' is already what a sheet calls fuel-tank",
                "bull bar,bar + bar,common-practice, | synonyms.csv:2:10: is: 'bar + bar' names one thing twice",
                "bull bar,bar or winch,common-practice, | synonyms.csv:2:10: is: 'bar or winch' is no kind of part or job",
                "bull bar,bar,common-practise, | synonyms.csv:2:14: basis: is 'common-practise', which is not one of the answers (did you mean 'common-practice'?)",
                "'bull bar,bar,common-practice' | synonyms.csv:2:1: this row has 3 cells, not 4",
                "'bull bar,bar,published,a list, of 2026' | synonyms.csv:2:1: this row has 5 cells, not 4",
                "bull bar,bar,published, | synonyms.csv:2:24: source: is called published but names no source",
                "bull bar,,common-practice, | synonyms.csv:2:10: is: is left empty"
            })
    void aRowThatCannotBeUsedIsToldWithItsPlace(String row, String fault) {
        read(row);
        assertEquals(1, faults.size(), faults.toString());
        assertTrue(faults.get(0).toString().startsWith(fault), faults.toString());
    }

    @Test
    void noWordStandsTwiceHoweverItIsWritten() {
        read("two-way radio,radio,common-practice,", "two way radio,aerial,common-practice,");
        assertEquals(1, faults.size(), faults.toString());
        assertTrue(
                faults.get(0)
                        .toString()
                        .startsWith("synonyms.csv:3:1: word: a second row for 'two way radio'; line 2 says that it is"
                                + " radio\n    right: one row a word"),
                faults.toString());
    }

    @Test
    void aWordThatASheetHasMayStandThereForWhatItIs() {
        read("fuel tank,fuel-tank,common-practice,");
        assertEquals(List.of(), faults);
    }

    @Test
    void anEmptyLineIsToldAsOne() {
        read("", "bull bar,bar,common-practice,");
        assertEquals(
                List.of("synonyms.csv:2:1: this line is empty\n    right: no line between the rows, or behind them"),
                faults.stream().map(Fault::toString).toList());
    }

    @Test
    void oneAndSeveralOfAThingMeanTheSame() {
        read("spot lamp,lamps,common-practice,", "spot lamps,other,common-practice,");
        assertEquals(1, faults.size(), faults.toString());
        assertTrue(
                faults.get(0)
                        .toString()
                        .startsWith("synonyms.csv:3:12: is: 'spot lamps' means something else than 'spot lamp'; line 2"
                                + " says that it is lamps"),
                faults.toString());
        faults.clear();
        read("spot lamp,lamps,common-practice,", "spot lamps,lamps,common-practice,");
        assertEquals(List.of(), faults);
    }

    @Test
    void severalThingsHaveAPlusBetweenThemWithOrWithoutSpaces() {
        ShopWords words = read("dual battery,battery+charger,common-practice,");
        assertEquals(List.of(), faults);
        assertEquals(
                List.of("battery", "charger"),
                words.meanings().get("dual battery").terms());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "word;is;basis;source | the first line is not the header: a semicolon stands between the cells, not a comma",
                "word,basis,source | the first line is not the header: it does not name is",
                "word,kind,basis | the first line is not the header: it does not name is, source",
                "'' | the first line is not the header"
            })
    void aFirstLineThatIsNotTheHeaderSaysWhatIsWrongWithIt(String header, String problem) {
        TableReader.shopWords(header + "\n", "synonyms.csv", faults);
        assertEquals(1, faults.size(), faults.toString());
        assertEquals(problem, faults.get(0).problem());
        assertEquals("word,is,basis,source", faults.get(0).mend());
    }

    @ParameterizedTest
    @CsvSource({
        "bull bar,bar",
        "Steel Bull-Bar,bar",
        "winch,winch",
        "roof rack,roof-rack",
        "roof racks,roof-rack",
        "jerry can,fuel-can",
        "tyre,tyres",
        "light bar,lamps",
        "rear bar,other",
        "air locker,other",
        "fridge,other + circuit"
    })
    void aWordMeansWhatItsLastWordsSay(String said, String meant) throws FaultsException {
        assertEquals(
                meant,
                String.join(
                        " + ",
                        Books.shipped()
                                .tables()
                                .shopWords()
                                .of(said)
                                .orElseThrow()
                                .terms()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"bull bar and winch", "winch, bar", "mount for a winch", "holder without bar", "flux thing", "''"})
    void severalAtOnceAndWhatIsUnknownMeanNothing(String said) throws FaultsException {
        assertTrue(Books.shipped().tables().shopWords().of(said).isEmpty());
    }

    /** What the sheet gets told of a kind that is written in the shop's words. */
    private List<Fault> told(String kind) throws FaultsException {
        Node.Mapping tree = NodeReader.read("a.yaml", "fitments:\n  - {name: It, kind: " + kind + "}\n", faults);
        Node.Mapping left = Books.shipped().tables().shopWords().told(tree, faults);
        assertEquals(faults.isEmpty(), left == tree);
        return faults;
    }

    @Test
    void aSheetIsToldWhichKindTheWordIs() throws FaultsException {
        Fault fault = told("bull bar").get(0);
        assertEquals(
                "a.yaml:2:22: fitments.1.kind: is 'bull bar', which is not one of the answers; the trade's word for"
                        + " bar\n    right: kind: bar",
                fault.toString());
    }

    @Test
    void aTankIsNoPartAndTwoPartsAreTwo() throws FaultsException {
        assertEquals(
                "a tank, listed under tanks with liquid: water",
                told("water tank").get(0).mend());
        assertEquals(
                "kind: battery, and kind: charger", told("dual battery").get(1).mend());
    }

    @Test
    void aKindOrAWordThatNobodyKnowsIsLeftToTheReader() throws FaultsException {
        assertEquals(List.of(), told("bar"));
        assertEquals(List.of(), told("flux"));
    }

    @Test
    void everyWordOfTheShippedBookLeadsToWhatASheetHas() throws FaultsException {
        Map<String, ShopWords.Meaning> meanings =
                Books.shipped().tables().shopWords().meanings();
        assertTrue(meanings.size() > 100, meanings.toString());
        meanings.forEach((word, meaning) ->
                assertTrue(!meaning.terms().isEmpty() && ShopWords.terms().containsAll(meaning.terms()), word));
    }
}
