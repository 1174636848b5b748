package fitworthy.counter.side;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.advice.Advice;
import fitworthy.advice.View;
import fitworthy.counter.AtCounter;
import fitworthy.counter.desk.Answer;
import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.shelf.Shelves;
import fitworthy.source.Digests;
import fitworthy.source.Place;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Things moved along the vehicle, without a browser. */
class MoveTest {

    private static final String BAGS = "{x: 2800 mm, y: 250 mm, z: 950 mm}";

    @RegisterExtension
    static final AtCounter served = new AtCounter();

    @Test
    void aLoadMovedBackGoesFromTheFrontAxleToTheRear() throws Exception {
        Path sheet = served.folder().resolve("touring.yaml");
        String before = Files.readString(sheet);
        String page = move("touring.yaml", "cargo.Camp gear.at", "3600");
        String after = Files.readString(sheet);
        assertEquals(before.replace("  - Camp gear", "  - {from: Camp gear, at: {x: 3600 mm}}"), after);
        // 140 kg from 3500 mm to 3600 mm, on axles 2840 mm + 420 mm apart: 140 x 100 / 3260 = 4.294 kg.
        double moved = 140.0 * 100 / 3260;
        Advice was = advice(sheet, before);
        Advice is = advice(sheet, after);
        for (String loading : new String[] {"canopy on", "towing"}) {
            assertEquals(moved, load(is, loading, "rear axle") - load(was, loading, "rear axle"), 1e-6, loading);
            assertEquals(-moved, load(is, loading, "front axle") - load(was, loading, "front axle"), 1e-6, loading);
        }
        assertTrue(page.contains("Camp gear, 140 kg, 340 mm behind the rear axle"), page);
        for (String axle : new String[] {"front axle", "rear axle"}) {
            String figure = Math.round(load(is, "towing", axle)) + " kg of ";
            assertTrue(page.contains("<span class=\"figure\">" + figure), figure);
            long change = Math.round(load(is, "towing", axle)) - Math.round(load(was, "towing", axle));
            String told = (change > 0 ? "+" : "") + change + " kg";
            assertTrue(page.contains("<ins class=\"by\">" + told + "</ins>"), told);
        }
    }

    private static double load(Advice advice, String loading, String axle) {
        return advice.facts().get(loading).stream()
                .filter(Measure.class::isInstance)
                .map(Measure.class::cast)
                .filter(measure -> measure.kind() == LoadMeasures.AXLE
                        && measure.getSubject().equals(axle))
                .findFirst()
                .orElseThrow()
                .getValue();
    }

    private static Advice advice(Path sheet, String text) throws Exception {
        View view = new View(Books.engine(), null, null, Shelves.beside());
        return new Answer(view, Place.of(sheet.toString()), text).advice().orElseThrow();
    }

    /** The rear axle of the weekender's wagon is 2790 mm behind the front axle. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{x: 2800 mm, y: 250 mm, z: 950 mm} | 3010 | {x: 3010 mm, y: 250 mm, z: 950 mm}",
                "{x: 2800 mm +/- 20 mm, z: 950 mm} | -60 | {x: -60 mm +/- 20 mm, z: 950 mm}",
                "{x: about 2800 mm, z: 950 mm} | 3000 | {x: about 3000 mm, z: 950 mm}",
                "{x: ask, z: 950 mm} | 3000 | {x: about 3000 mm, z: 950 mm}",
                "behind the rear axle | 3100 | {where: behind the rear axle, x: about 3100 mm}",
                "{where: behind the rear axle, z: 950 mm} | 3100 | {where: behind the rear axle, z: 950 mm, x: about 3100 mm}",
                "120 mm behind the rear axle | 3010 | 220 mm behind the rear axle",
                "120 mm behind the rear axle | 2590 | 200 mm ahead of the rear axle",
                "about 90 mm +/- 30 mm ahead of the rear axle | 2690 | about 100 mm +/- 30 mm ahead of the rear axle",
                "{where: 100 mm in front of the front axle, z: 950 mm} | -150 | {where: 150 mm ahead of the front axle, z: 950 mm}"
            })
    void whatIsWrittenTellsHowSureItIs(String before, String x, String after) throws Exception {
        Path sheet = served.folder().resolve("weekender.yaml");
        String text = Files.readString(sheet).replace(BAGS, before);
        assertTrue(text.contains("at: " + before), text);
        Files.writeString(sheet, text);
        move("weekender.yaml", "cargo.Bags and tent.at", x);
        assertEquals(text.replace("at: " + before, "at: " + after), Files.readString(sheet));
    }

    /**
     * The wagon is 2790 mm between its axles. Without a canopy in the plan the book takes "in the canopy" for 5 % of that behind the
     * rear axle, or 15 % more or less: from 2511 mm to 3348 mm.
     */
    @ParameterizedTest
    @CsvSource({"2500, true", "2520, false", "3340, false", "3360, true"})
    void wordsThatAreNotSoAnyMoreAreTold(String x, boolean told) throws Exception {
        Path sheet = served.folder().resolve("weekender.yaml");
        Files.writeString(sheet, Files.readString(sheet).replace(BAGS, "in the canopy"));
        String page = move("weekender.yaml", "cargo.Bags and tent.at", x);
        assertEquals(told, page.contains(". The sheet still says that it is in the canopy.</p>"), page);
        assertTrue(served.text("weekender.yaml").contains("at: {where: in the canopy, x: about " + x + " mm}"));
    }

    /** The canopy begins 2270 mm behind the front axle and is 1940 mm long: it ends at 4210 mm. */
    @ParameterizedTest
    @CsvSource({"2260, true", "2280, false", "4200, false", "4220, true"})
    void whatIsStillInAPartThatItHasLeftIsTold(String x, boolean told) throws Exception {
        Path sheet = served.folder().resolve("touring.yaml");
        Files.writeString(
                sheet, Files.readString(sheet).replace("  - Camp gear\n", "  - {from: Camp gear, in: Canopy}\n"));
        String page = move("touring.yaml", "cargo.Camp gear.at", x);
        assertEquals(told, page.contains(". The sheet still says that it is in Canopy, which is not there.</p>"), page);
        assertTrue(served.text("touring.yaml").contains("- {from: Camp gear, in: Canopy, at: {x: " + x + " mm}}"));
    }

    @ParameterizedTest
    @CsvSource({"cargo.Nobody has it.at", "cargo.Camp gear.mass", "vehicle.at", "''"})
    void whatHasNoPlaceIsNotMoved(String path) throws Exception {
        String before = served.text("touring.yaml");
        assertTrue(move("touring.yaml", path, "3600").contains("nothing on the sheet has this place"));
        assertEquals(before, served.text("touring.yaml"));
    }

    @Test
    void aPlaceFarOffTheVehicleIsRefused() throws Exception {
        String before = served.text("touring.yaml");
        String page = move("touring.yaml", "cargo.Camp gear.at", "2000000");
        assertTrue(page.contains("class=\"fault\""), page);
        assertEquals(before, served.text("touring.yaml"));
        assertEquals(400, sent("touring.yaml", "cargo.Camp gear.at", "far back").statusCode());
    }

    @Test
    void whatAMoveOfManyStepsChangesCountsFromWhereItBegan() throws Exception {
        Path sheet = served.folder().resolve("touring.yaml");
        String began = Digests.of(Files.readString(sheet));
        served.get("/sheets/touring.yaml");
        move("touring.yaml", "cargo.Camp gear.at", "4000");
        String page = served.post(
                        "/sheets/touring.yaml/place",
                        "version",
                        Digests.of(Files.readString(sheet)),
                        "path",
                        "cargo.Camp gear.at",
                        "x",
                        "4010",
                        "hold",
                        "a",
                        "since",
                        began)
                .body();
        // 140 kg x 510 mm / 3260 mm = 21.9 kg on the rear axle, 1 kg either way as both figures are rounded.
        assertTrue(page.matches("(?s).*Rear axle \\+2[123] kg.*"), page);
    }

    @Test
    void thePictureShowsTheLoadingThatIsAskedFor() throws Exception {
        String towing = served.get("/sheets/touring.yaml/look?loading=towing").body();
        assertTrue(towing.contains("data-path=\"fitments.Canopy.at\""));
        assertTrue(towing.contains("aria-label=\"Winch, 39 kg, 790 mm ahead of the front axle\""));
        assertTrue(towing.contains("picture-side-draw"));
        String off = served.get("/sheets/touring.yaml/look?loading=canopy+off").body();
        assertFalse(off.contains("data-path=\"fitments.Canopy.at\""));
        assertFalse(off.contains("picture-side-draw"));
    }

    @Test
    void withoutAWheelbaseItSaysWhatIsMissing() throws Exception {
        Path sheet = served.folder().resolve("weekender.yaml");
        String text = Files.readString(sheet);
        Files.writeString(
                sheet, text.replace("registered: 2024-08-19}", "registered: 2024-08-19, size: {wheelbase: ask}}"));
        String page = served.get("/sheets/weekender.yaml").body();
        assertTrue(page.contains("There is no picture without this: distance between the axles as made"), page);
        assertFalse(page.contains("class=\"side-view\""));
    }

    @Test
    void aSheetWithAFaultSaysSo() throws Exception {
        Path sheet = served.folder().resolve("weekender.yaml");
        Files.writeString(sheet, Files.readString(sheet).replace(BAGS, "nowhere at all"));
        assertTrue(served.get("/sheets/weekender.yaml").body().contains("no picture while the sheet has a fault"));
    }

    private static String move(String sheet, String path, String x) throws Exception {
        HttpResponse<String> answer = sent(sheet, path, x);
        assertEquals(200, answer.statusCode());
        return answer.body();
    }

    private static HttpResponse<String> sent(String sheet, String path, String x) throws Exception {
        String page = served.get("/sheets/" + sheet).body();
        String version = page.replaceAll("(?s).*id=\"version\" name=\"version\" value=\"([^\"]*)\".*", "$1");
        return served.post(
                "/sheets/" + sheet + "/place",
                "version",
                version,
                "path",
                path,
                "x",
                x,
                "hold",
                "a",
                "loading",
                "towing");
    }
}
