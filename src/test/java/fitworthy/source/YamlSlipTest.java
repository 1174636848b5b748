package fitworthy.source;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What somebody types wrong who does not program, and what he is told of it. */
class YamlSlipTest {

    private static final String PAGE =
            """
            water.one:
              unit: L
              meaning: So much of it
              values:
                - region: any
                  from: 2000-01-01
                  value: 75 L
                  quote: "75 L a day"
                - region: au
                  from: 2000-01-01
            """;

    private static List<String> faults(String text) {
        List<Fault> faults = new ArrayList<>();
        NodeReader.read("f", text, faults);
        return faults.stream()
                .map(each -> each.place() + ": " + each.problem().replace("not readable as YAML: ", "") + " -> "
                        + each.mend())
                .toList();
    }

    @Test
    void thePageItselfIsRead() {
        assertEquals(List.of(), faults(PAGE));
    }

    /** Of each what is exchanged for what; a tab is written ~, a space that no keyboard types _. */
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            delimiter = '|',
            value = {
                "`      value: 75`|`~~value: 75`|f:7:1: a tab stands before this line -> spaces in its place, as many as"
                        + " stand before the lines that it belongs with",
                "value: 75|value:~75|f:7:13: a tab stands here where a space belongs -> value: 75 L",
                "value: 75|value:75|f:7:13: no space stands behind the colon -> value: 75 L",
                "unit: L|unit:L|f:2:8: no space stands behind the colon -> unit: L",
                "value: 75|value 75|f:7:12: no colon stands in this line -> value: 75 L",
                "values:|values|f:4:9: no colon stands in this line -> values:",
                "value: 75|value = 75|f:7:12: an = stands where a colon belongs -> value: 75 L",
                "- region: au|-region: au|f:9:6: no space stands behind the dash -> - region: au",
                "- region: any|-region: any|f:5:6: no space stands behind the dash -> - region: any",
                "`      value`|`     value`|f:7:6: 5 spaces before this line put it straight below none that it may belong"
                        + " with -> 2 or 6 spaces before it",
                "`      value`|`       value`|f:7:8: 7 spaces before this line put it straight below none that it may"
                        + " belong with -> 6 spaces before it",
                "`  meaning`|` meaning`|f:3:2: 1 space before this line put it straight below none that it may belong"
                        + " with -> 0 or 2 spaces before it",
                "`    - region: au`|`   - region: au`|f:9:4: 3 spaces before this line put it straight below none that it"
                        + " may belong with -> 4 spaces before it",
                "meaning: So|meaning: Note: so|f:3:16: a second colon with a space behind it stands in this line"
                        + " -> meaning: \"Note: so much of it\"",
                "value: 75 L|value: %75|f:7:14: a value cannot begin with % -> value: 75 %",
                "meaning: So|meaning: @So|f:3:12: a value cannot begin with @ -> meaning: \"@So much of it\"",
                "meaning: So|meaning: > 5 so|f:3:12: a value cannot begin with > -> meaning: \"> 5 so much of it\"",
                "meaning: So|meaning: {limit} so|f:3:12: a value cannot begin with { -> meaning: \"{limit} so much of it\"",
                "meaning: So|meaning: *So*|f:3:12: a value cannot begin with * -> meaning: \"*So* much of it\"",
                "meaning: So|meaning: *So #|f:3:12: anchors and aliases (& and *) are not read here -> text that begins so"
                        + " in quotes; else the value written out where it belongs",
                "a day\"|a day|f:8:14: the quotes that open here are not closed -> the same at the end: ...75 L a day\"",
                "75 L a|75 L \"a\"|f:8:21: the quotes around this text end before it does"
                        + " -> quote: '75 L \"a\" day'",
                "\"75 L a day\"|'a driver's day'|f:8:24: the quotes around this text end before it does"
                        + " -> quote: \"a driver's day\"",
                "\"75 L a day\"|\u201cA day: 75 L\u201d|f:8:20: a second colon with a space behind it stands in this line"
                        + " -> quote: \"A day: 75 L\"",
                "L a day|L \\a \\x day|f:8:25: a backslash \\ within double quotes -> single quotes around the text, or no"
                        + " \\ in it",
                "meaning: So|meaning: [so|f:3:12: the [ that opens here is not closed -> a ] behind what belongs to it; in"
                        + " quotes a text that only begins with [",
                "region: au|{region: au}|f:10:7: the entry above stands within { } and so has no lines below it"
                        + " -> within those brackets, a comma before it",
                "unit: L|unit: {a: 1}}|f:2:9: a } closes what no { has opened -> unit: {a: 1}",
                "unit: L|unit: a: {b: 1}}|f:2:9: a } closes what no { has opened -> unit: {a: {b: 1}}",
                "value: 75|value:_75|f:7:13: the space here is none that a keyboard types, as in text copied from a page"
                        + " -> the spaces of this line typed anew",
                "`      value`|`______value`|f:7:1: a name with a space that no keyboard types, as in text copied from"
                        + " a page -> the spaces of this line typed anew",
                "`  value: 75`|`  _value: 75`|f:7:7: a name with a space that no keyboard types, as in text copied from a"
                        + " page -> the spaces of this line typed anew",
                "- region: any|`  region: any`|f:5:7: no dash stands before the first line of a list -> - region: any",
                "- region: au|`  region: au`|f:9:7: 'region' is given twice; first on line 5 -> a dash before it where the"
                        + " next of the list begins here: - region: ...; else keep one of the two",
                "`    - region: au`|`---`|f:10:7: more text follows a line of three dashes or points, which ends the file"
                        + " -> take that line out"
            })
    void isToldInPlainWordsWithTheLineAsItShouldBe(String old, String now, String told) {
        assertEquals(
                List.of(told), faults(PAGE.replace(old, now.replace('~', '\t').replace('_', '\u00a0'))));
    }

    /** The parser begins a line at a carriage return as well. */
    @Test
    void aLineEndsWhereTheParserSaysSo() {
        assertEquals(
                List.of("f:3:6: the quotes that open here are not closed -> the same at the end: ...'"),
                faults("title:2:\n  namass: {kerilter 0 kg\r0 kg}'\n"));
    }
}
