package fitworthy.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.engine.BookLoader;
import fitworthy.engine.BooksOfOneRule;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page of places in words: what is wrong with it is told with its place, and nothing half of it is used. */
class UsualPlacesTest {

    private static final String ROOF =
            """
            on the roof:
              meaning: on a rack
              also: [on the rack]
              values:
                - region: any
                  from: 2000-01-01
                  at: {start: front-axle, share: 65 % +/- 15 %, y: 0 mm +/- 300 mm, z: 1950 mm +/- 150 mm}
                  basis: memory
            """;

    @TempDir
    private Path home;

    private Path page;

    @BeforeEach
    void book() throws IOException {
        BooksOfOneRule.write(home.resolve("rules"));
        page = home.resolve("rules/usual/places.yaml");
        Files.createDirectories(page.getParent());
    }

    private Book loaded(String text) throws Exception {
        Files.writeString(page, text);
        return BookLoader.load(home.resolve("rules"), home.resolve("cache"), sentence -> {})
                .book();
    }

    @Test
    void everyWayToSayItIsKnownAndThePageCountsIntoTheHash() throws Exception {
        Book book = loaded(ROOF);
        assertEquals("on the roof", book.usualPlaces().known(" On the  RACK ").orElseThrow());
        assertTrue(book.usualPlaces().known("rack").isEmpty());
        assertNotEquals(book.hash(), loaded(ROOF.replace("1950", "1960")).hash());
        Files.delete(page);
        assertEquals(
                UsualPlaces.NONE,
                BookLoader.load(home.resolve("rules"), home.resolve("cache"), sentence -> {})
                        .book()
                        .usualPlaces());
    }

    @Test
    void theNearestRegionAndTheLatestDayCount() throws Exception {
        Book book = loaded(
                ROOF
                        + """
                    - {region: au, from: 2010-01-01, basis: common-practice,
                       at: {start: front-axle, share: 60 % +/- 15 %, y: 0 mm +/- 300 mm}}
                    - {region: au, from: 2020-01-01, basis: common-practice,
                       at: {start: front-axle, share: 70 % +/- 15 %, y: 0 mm +/- 300 mm}}
                """);
        UsualPlace roof = book.usualPlaces().places().get("on the roof");
        assertEquals(0.65, share(roof, book.lineage("uk"), "2026-01-01"), 1e-9);
        assertEquals(0.65, share(roof, book.lineage("au-sa"), "2009-12-31"), 1e-9);
        assertEquals(0.60, share(roof, book.lineage("au-sa"), "2019-12-31"), 1e-9);
        assertEquals(0.70, share(roof, book.lineage("au-sa"), "2020-01-01"), 1e-9);
        assertTrue(
                roof.inForce(book.lineage("uk"), LocalDate.parse("1999-12-31")).isEmpty());
    }

    private static double share(UsualPlace place, List<String> lineage, String day) {
        return place.inForce(lineage, LocalDate.parse(day))
                .orElseThrow()
                .at()
                .share()
                .value();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "on the roof:     | On the roof!:      | 'On the roof!' is no place in words",
                "[on the rack]    | [on the roof]      | 'on the roof' is already said of 'on the roof'",
                "region: any      | region: mars       | 'mars' is not a region of the book",
                "basis: memory    | basis: published   | is called published, but no text gives such places",
                "basis: memory    | basis: house       | is called house, but no text gives such places",
                "65 % +/- 15 %    | 65 %               | does not say how far off 'share' or 'back' may be",
                "0 mm +/- 300 mm  | 0 mm               | does not say how far off 'y' may be",
                "1950 mm +/- 150 mm | 1950 mm          | does not say how far off its height may be",
                "z: 1950          | above-floor: 9 mm +/- 9 mm, z: 1950 | has both 'z' and 'above-floor'",
                "front-axle       | tray               | does not say where it is on a vehicle without tray or canopy",
                "front-axle       | bonnet             | is 'bonnet', which is not one of the answers",
                "front-axle       | ask                | is asked for, but no sheet can do without it",
                "start: front-axle, | ''               | is missing: what it is measured from",
                "1950 mm +/-      | 19500 mm +/-       | is '19500 mm +/- 150 mm', which is not between",
                "meaning: on a rack | meaning: [a]     | is a list where words belong",
                "values:          | worth:             | no field has this name",
            })
    void whatIsWrongWithThePageIsTold(String right, String wrong, String problem) {
        FaultsException told = assertThrows(
                FaultsException.class,
                () -> loaded(ROOF.replaceFirst(right.replaceAll("([+\\[\\]])", "\\\\$1"), wrong)));
        assertTrue(told.faults().stream().anyMatch(fault -> fault.problem().startsWith(problem)), () -> told.faults()
                .toString());
        for (Fault fault : told.faults()) {
            assertTrue(
                    fault.place().file().endsWith("places.yaml")
                            && fault.place().line() > 0,
                    fault::toString);
            assertTrue(!fault.mend().isBlank(), fault::toString);
        }
    }

    @Test
    void theRowBehindIsAPlaceOfThePage() throws Exception {
        String row = ROOF.replace(
                "      basis: memory", "      next-row: {place: on the roof, apart: 600 mm}\n      basis: memory");
        assertEquals(
                0.6,
                loaded(row)
                        .usualPlaces()
                        .places()
                        .get("on the roof")
                        .values()
                        .get(0)
                        .nextRow()
                        .orElseThrow()
                        .apart()
                        .value(),
                1e-9);
        Fault told = assertThrows(
                        FaultsException.class, () -> loaded(row.replace("place: on the roof", "place: on the rof")))
                .faults()
                .get(0);
        assertEquals("'on the rof' is no place in words (did you mean 'on the roof'?)", told.problem());
        assertEquals(8, told.place().line());
    }

    @Test
    void twoValuesOfOneDayAreToldAndNoneAtAll() {
        String second =
                "    - {region: any, from: 2000-01-01, basis: memory, at: {start: middle, back: 0 mm +/- 1 mm, y: 0 mm +/- 1 mm}}\n";
        assertTrue(assertThrows(FaultsException.class, () -> loaded(ROOF + second))
                .getMessage()
                .contains("two values begin in any on 2000-01-01"));
        assertTrue(assertThrows(FaultsException.class, () -> loaded("on the roof: {meaning: a rack, values: []}\n"))
                .getMessage()
                .contains("has no value"));
    }

    /** What means harm in any other page of the book does so here. */
    @Test
    void aHostilePageIsRefused() {
        for (String text : List.of(
                "a: &a [1]\nb: *a\n",
                "on the roof: !!java.net.URL [x]\n",
                "[".repeat(500),
                "on the roof: " + "{a: ".repeat(60) + "1" + "}".repeat(60),
                "\u0000",
                "on the roof: 5\n",
                "- on the roof\n")) {
            assertThrows(FaultsException.class, () -> loaded(text), text);
        }
    }
}
