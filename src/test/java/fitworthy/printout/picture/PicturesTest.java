package fitworthy.printout.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.PointMass;
import fitworthy.printout.picture.LabelPlaces.Box;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SheetReader;
import fitworthy.source.FaultsException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** What the pictures draw lies where the figures say, and nothing in a sheet can break them. */
class PicturesTest {

    /** Half a unit on the page: a sixth of a millimetre on paper. */
    private static final double DRAWN = 0.5;

    private static final String HOSTILE = "</title></svg><script>alert(1)</script>&\\\"']]>";
    private static final String LONG = "A name that goes on ".repeat(30).strip();
    /** Hebrew and Arabic with a sign that turns the direction of all that follows. */
    private static final String RIGHT_TO_LEFT =
            "\\u05e9\\u05dc\\u05d5\\u05dd\\u202e " + "\\u0645\\u0631\\u062d\\u0628\\u0627";

    private static final String EMOJI = "\\U0001F69A\\U0001F468\\u200D\\U0001F469 load";
    private static final String STACKED = "Z" + "\\u0310\\u0311".repeat(30) + "algo";

    /** Each is asked for by several tests and takes a run of the whole book. */
    private static final Map<String, Advice> SCENARIOS = new HashMap<>();

    private static Advice scenario(String name) throws FaultsException {
        if (!SCENARIOS.containsKey(name)) {
            SCENARIOS.put(name, advised(name));
        }
        return SCENARIOS.get(name);
    }

    private static Advice advised(String name) throws FaultsException {
        Sheet sheet = SheetReader.sheet(
                Sheets.scenario(name), Books.shipped().regions().keySet(), new ArrayList<>());
        return Adviser.advise(Books.engine(), sheet);
    }

    private static Advice plainWith(String changes) throws FaultsException {
        return Adviser.advise(Books.engine(), Sheets.plainWith(changes));
    }

    /** 290 kg on a ball rated for 300 kg, on a bar for 350 kg: the limit that leaves least is drawn. */
    @Test
    void theLoadOnTheBallHasARowWhereATrailerIsTowed() throws FaultsException {
        String van =
                """
                vehicle: {tow-bar: {plate: {trailer: 3500 kg, ball: 350 kg}}}
                trailer: {name: Van, mass: 2900 kg +/- 0 kg, ball: %d kg +/- 0 kg, rated: 3500 kg, gtm: 3300 kg, brakes: electric,
                  coupling: {trailer: 3500 kg, ball: 350 kg}}
                """;
        assertEnds("Vehicle: ball load limit: 290 kg of 300 kg, 10 kg spare.", margins(van.formatted(290)));
        assertEnds("Vehicle: ball load limit: 300 kg of 300 kg, nothing to spare.", margins(van.formatted(300)));
        assertEnds("Vehicle: ball load limit: 301 kg of 300 kg, 1 kg over.", margins(van.formatted(301)));
        assertFalse(margins("title: plain").contains("ball"));
    }

    private static String margins(String changes) throws FaultsException {
        return MarginBars.of(plainWith(changes)).orElseThrow().description();
    }

    private static void assertEnds(String end, String text) {
        assertTrue(text.endsWith(end), text);
    }

    private static Advice hostile() throws FaultsException {
        return plainWith(
                """
                trailer: {name: "%2$s", mass: 3 t, ball: 280 kg, width: 2.3 m, length: 6 m, drawbar: 1.5 m, brakes: electric}
                vehicle: {view: {eye: {x: 1450 mm, y: -380 mm, z: 1420 mm}, mirrors: {
                  left: {x: 750 mm, reach: 1060 mm, glass: 170 mm, curve: flat},
                  right: {x: 750 mm, reach: 1240 mm, glass: 170 mm, curve: convex, radius: 1200 mm}}}}
                fitments:
                  - {name: "%1$s", kind: canopy, mass: 300 kg, at: {x: 3 m, y: 0 mm, z: 1.5 m}, width: 1.9 m, front: 1.9 m, length: 1.9 m}
                  - {name: "%2$s", kind: other, mass: 90 kg, at: {x: 3.3 m, y: 0 mm, z: 0.9 m}}
                  - {name: "%3$s", kind: other, mass: 80 kg, at: {x: -600 mm, y: 0 mm, z: 0.9 m}}
                  - {name: "%4$s", kind: other, mass: 60 kg, at: {x: 2.2 m, y: 0 mm, z: 1.2 m}}
                  - name: "%5$s"
                    kind: snorkel
                    mass: 5 kg
                    at: {x: 300 mm, y: 0 mm, z: 1.4 m}
                    joints: [{name: "%1$s", sealed: no}, {name: "%2$s"}, {name: "%3$s", sealed: yes}, {name: "%4$s"}]
                  - {name: Battery, kind: battery, mass: 27 kg, at: {x: 2.5 m, y: 0 mm, z: 0.9 m}, chemistry: agm, voltage: 12 V, capacity: 100 Ah}
                circuits:
                  - {name: "%1$s", voltage: 12 V, current: 5 A, battery: second, hours: 8 h}
                  - {name: "%2$s", voltage: 12 V, current: 2 A, battery: second, hours: 8 h}
                  - {name: "%3$s", voltage: 12 V, current: 1 A, battery: second, hours: 8 h}
                trip: {parked: 48 h}
                cases: [{name: "%1$s"}, {name: "%2$s", towing: yes}, {name: "%3$s"}, {name: "%4$s"}]
                """
                        .formatted(HOSTILE, LONG, RIGHT_TO_LEFT, EMOJI, STACKED));
    }

    /** Every kind of figure that the pictures draw is left out here, save one that makes each picture arise. */
    private static Advice unknown() throws FaultsException {
        return plainWith(
                """
                vehicle:
                  size: {ball-overhang: null, rear-overhang: null}
                  mass: {cog-height: null}
                  ratings: {gvm: null, rear-axle: null}
                  tyres: {size: null}
                  view: {mirrors: {left: {reach: 1260 mm}}}
                trailer: {name: Van, mass: 1.8 t, width: 2.3 m}
                fitments:
                  - {name: Snorkel, kind: snorkel, mass: 6 kg, at: {x: 300 mm, y: 0 mm, z: 1.4 m}}
                  - {name: Battery, kind: battery, mass: 27 kg, at: {x: 2.5 m, y: 0 mm, z: 0.9 m}, capacity: 100 Ah}
                  - {name: Tray, kind: tray, mass: 100 kg, at: {x: 2.9 m, y: 0 mm, z: 0.9 m}}
                tanks: [{name: Second tank, liquid: water, capacity: 50 L, fill: 100 %, stock: no, at: {x: 2 m, y: 0 mm, z: 0.6 m}}]
                circuits: [{name: Pump, battery: second}]
                trip: {dust: some}
                """);
    }

    private static List<Advice> every() throws FaultsException {
        return List.of(scenario("touring"), scenario("overloaded"), scenario("weekender"), hostile(), unknown());
    }

    private static List<Drawing> drawings(Advice advice) {
        return Pictures.of(advice).stream().map(Drawing::of).toList();
    }

    private static Drawing drawing(Advice advice, String id) {
        return drawings(advice).stream()
                .filter(each -> each.picture().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> ids(Advice advice) {
        return Pictures.of(advice).stream().map(Picture::id).toList();
    }

    @Test
    void aPictureExistsOnlyWhereItsQuestionArises() throws FaultsException {
        assertEquals(List.of("picture-side", "picture-headroom"), ids(plainWith("title: plain")));
        assertEquals(
                List.of("picture-side", "picture-headroom", "picture-mirrors", "picture-air-path-1", "picture-energy"),
                ids(scenario("touring")));
    }

    /** Without the wheelbase no place can be drawn; the limits still can. */
    @Test
    void withoutAWheelbaseThereIsNoPictureThatNeedsOne() throws FaultsException {
        assertEquals(List.of("picture-headroom"), ids(plainWith("vehicle: {size: null}")));
    }

    @Test
    void everyPictureIsSvgOfItsOwnWithTitleAndDescription() throws FaultsException {
        Set<String> plain = Set.of("title", "desc", "rect", "circle", "line", "path", "text");
        for (Advice advice : every()) {
            for (Drawing drawing : drawings(advice)) {
                Picture picture = drawing.picture();
                assertEquals("http://www.w3.org/2000/svg", drawing.root().getNamespaceURI());
                assertEquals("img", drawing.root().getAttribute("role"));
                assertEquals(
                        picture.id() + "-title " + picture.id() + "-desc",
                        drawing.root().getAttribute("aria-labelledby"));
                assertEquals(picture.title(), drawing.part("title").getTextContent());
                assertEquals(picture.description(), drawing.part("desc").getTextContent());
                assertTrue(picture.description().length() > 60, picture.description());
                assertTrue(drawing.root().getAttribute("viewBox").matches("0 0 480 [0-9]+"));
                Set<String> seen = new HashSet<>();
                for (Element element : drawing.elements()) {
                    assertTrue(plain.contains(element.getTagName()), element.getTagName());
                    String id = element.getAttribute("id");
                    assertTrue(id.isEmpty() || id.startsWith(picture.id() + "-") && seen.add(id), id);
                    assertFalse(element.hasAttribute("style") || element.hasAttribute("href"));
                }
            }
        }
    }

    @Test
    void theSameAdviceGivesTheSamePictures() throws FaultsException {
        assertEquals(Pictures.of(advised("touring")), Pictures.of(advised("touring")));
    }

    /** 2840 mm as made and 420 mm of stretch, measured on the page with the picture's own metre. */
    @Test
    void theWheelsStandAWheelbaseApart() throws FaultsException {
        Drawing side = drawing(scenario("touring"), "picture-side");
        double metre = side.length("metre");
        assertEquals(
                2.84 + 0.42,
                (side.number("wheel-rear", "cx") - side.number("wheel-front", "cx")) / metre,
                DRAWN / metre);
        assertEquals(3.26, side.length("dimension-wheelbase") / metre, DRAWN / metre);
        assertEquals(1.24, side.length("dimension-ball") / metre, DRAWN / metre);
        // The frame after the stretch, which ends behind the tray's 2270 + 1970 - 3260 mm.
        assertEquals(1.04, side.length("dimension-overhang") / metre, DRAWN / metre);
    }

    @Test
    void everyMassIsAMarkAtItsPlaceWithItsMassForArea() throws FaultsException {
        for (Advice advice : every()) {
            Drawing side = drawing(advice, "picture-side");
            double metre = side.length("metre");
            double ground = side.number("ground", "y1");
            double axle = side.number("wheel-front", "cx");
            List<PointMass> masses = new ArrayList<>(loading(advice).masses().stream()
                    .filter(each -> each.mass().value() != 0)
                    .toList());
            double unit = masses.stream()
                    .filter(each -> each.name().equals("vehicle, front axle"))
                    .mapToDouble(each -> Math.pow(radius(side, each, axle, ground, metre), 2)
                            / each.mass().value())
                    .findFirst()
                    .orElseThrow();
            for (PointMass mass : masses) {
                if (mass.mass().known()
                        && mass.at().x().known()
                        && mass.at().z().known()) {
                    assertEquals(
                            Math.abs(mass.mass().value()) * unit,
                            Math.pow(radius(side, mass, axle, ground, metre), 2),
                            0.5,
                            mass.name());
                }
            }
            assertEquals(
                    masses.size(),
                    side.elements().stream()
                            .filter(each -> each.getAttribute("id").matches("picture-side-mass-[0-9]+"))
                            .count());
        }
    }

    /** The load case that the side view shows: the fullest. */
    private static Loading loading(Advice advice) {
        return advice.loadings().stream()
                .reduce((one, other) -> fullest(advice, one) >= fullest(advice, other) ? one : other)
                .orElseThrow();
    }

    private static double fullest(Advice advice, Loading loading) {
        return advice.facts().get(loading.loadCase().name()).stream()
                .filter(Measure.class::isInstance)
                .map(Measure.class::cast)
                .filter(each -> Set.of("mass.loaded", "mass.axle").contains(each.getName()) && each.isKnown())
                .mapToDouble(each -> 1 - each.getSpare())
                .max()
                .orElse(0);
    }

    /** Radius of the mark whose key has this name and mass and which lies at this place. */
    private static double radius(Drawing side, PointMass mass, double axle, double ground, double metre) {
        double z = mass.at().z().known() ? mass.at().z().value() : Double.NaN;
        return side.elements().stream()
                .filter(each -> each.getAttribute("id").matches("picture-side-mass-[0-9]+"))
                .filter(each -> Math.abs(Drawing.number(each, "cx")
                                        - axle
                                        - mass.at().x().value() * metre)
                                < DRAWN
                        && (Double.isNaN(z) || Math.abs(ground - Drawing.number(each, "cy") - z * metre) < DRAWN))
                .filter(each -> key(side, each, "").equals(shown(mass)))
                .mapToDouble(each -> Drawing.number(each, "r"))
                .findFirst()
                .orElseThrow(() -> new AssertionError(mass + " is not drawn at its place"));
    }

    private static String key(Drawing side, Element mark, String more) {
        return side.part("key-" + mark.getAttribute("id").replaceAll("\\D", "") + more)
                .getTextContent();
    }

    private static String shown(PointMass mass) {
        double kg = mass.mass().value();
        return (Math.abs(kg) >= 10 || kg == Math.rint(kg) ? String.format("%.0f", kg) : String.format("%.1f", kg))
                + " kg";
    }

    @Test
    void theKeyAddsUpToWhatTheVehicleWeighs() throws FaultsException {
        Drawing side = drawing(scenario("touring"), "picture-side");
        List<Double> rows = side.texts().stream()
                .filter(each -> each.getAttribute("id").matches("picture-side-key-[0-9]+"))
                .map(each -> Double.parseDouble(each.getTextContent().replace(" kg", "")))
                .toList();
        double sum = rows.stream().mapToDouble(Double::doubleValue).sum();
        double shown = Double.parseDouble(side.part("key-sum").getTextContent().replace(" kg", ""));
        // Each row is rounded by half a kilogram at most.
        assertEquals(shown, sum, rows.size() * 0.5);
        // Never lighter than it is, as beside its limit.
        double used = Math.ceil(loading(scenario("touring")).axles().total().value());
        assertEquals(used, shown, 0);
        assertTrue(side.says(String.format("%.0f kg of 3900 kg", used)));
    }

    /** Of 400 boxes of 1 kg and one of 50 kg the heavier is marked; what is marked and what is lighter make the sum. */
    @Test
    void ofVeryManyMassesTheHeaviestAreMarked() throws FaultsException {
        StringBuilder boxes = new StringBuilder("fitments:\n");
        for (int i = 0; i <= 400; i++) {
            boxes.append(String.format(
                    "  - {name: Box %d, kind: other, mass: %d kg, at: {x: 2 m, y: 0 mm, z: 1 m}}%n",
                    i, i == 400 ? 50 : 1));
        }
        Advice advice = plainWith(boxes.toString());
        Drawing side = drawing(advice, "picture-side");
        List<Double> rows = side.texts().stream()
                .filter(each -> each.getAttribute("id").matches("picture-side-key-[0-9]+"))
                .map(each -> Double.parseDouble(each.getTextContent().replace(" kg", "")))
                .toList();
        assertEquals(MassMarks.MOST, rows.size());
        assertTrue(rows.contains(50.0));
        long masses = loading(advice).masses().stream()
                .filter(each -> each.mass().value() != 0)
                .count();
        assertTrue(side.says((masses - MassMarks.MOST) + " lighter ones"));
        double lighter =
                Double.parseDouble(side.part("key-lighter").getTextContent().replace(" kg", ""));
        assertEquals(masses - MassMarks.MOST, lighter);
        double sum = rows.stream().mapToDouble(Double::doubleValue).sum() + lighter;
        assertEquals(loading(advice).axles().total().value(), sum, rows.size() * 0.5);
    }

    @Test
    void aPartTakenOffIsHollowAndAnUnknownOneDashed() throws FaultsException {
        Drawing side = drawing(scenario("touring"), "picture-side");
        long negative = loading(scenario("touring")).masses().stream()
                .filter(each -> each.mass().value() < 0)
                .count();
        assertEquals(negative, marks(side, "fill", "none"));
        Drawing unknown = drawing(unknown(), "picture-side");
        // The load on the ball, the tank's shell and, for want of a height, the bare vehicle at both axles.
        assertEquals(4, marks(unknown, "stroke-dasharray", "3 2"));
    }

    private static long marks(Drawing side, String attribute, String value) {
        return side.elements().stream()
                .filter(each -> each.getAttribute("id").matches("picture-side-mass-[0-9]+")
                        && each.getAttribute(attribute).equals(value))
                .count();
    }

    /** Every bar is as long as its share of the limit, in the side view and in the chart. */
    @Test
    void barsAreAsLongAsTheLoadIsOfTheLimit() throws FaultsException {
        Advice advice = scenario("overloaded");
        Drawing side = drawing(advice, "picture-side");
        assertEquals(loading(advice).axles().rear().value() / 1850, share(side, "load-rear"), 0.01);
        assertEquals(loading(advice).axles().front().value() / 1450, share(side, "load-front"), 0.01);
        assertTrue(share(side, "load-rear") > 1);
        Drawing chart = drawing(advice, "picture-headroom");
        int bars = 0;
        for (Element element : chart.elements()) {
            String part = element.getAttribute("id").replace("picture-headroom-", "");
            if (part.matches("limit-[0-9]+-[0-9]+")) {
                String shown = chart.part(part + "-share").getTextContent();
                assertEquals(Double.parseDouble(shown.replace(" %", "")) / 100, share(chart, part), 0.01);
                assertEquals(
                        share(chart, part) > 1,
                        chart.part(part + "-left").getTextContent().endsWith(" over"));
                bars++;
            }
        }
        assertEquals(22, bars);
    }

    private static double share(Drawing drawing, String bar) {
        return drawing.number(bar, "width") / (drawing.number(bar + "-limit", "x1") - drawing.number(bar, "x"));
    }

    /**
     * The line of sight runs along the side of the trailer and past its rear corner; how much road lies beyond it far
     * behind is the figure that the rules saw.
     */
    @Test
    void theSightLinesPassTheSideOfTheTrailer() throws FaultsException {
        Advice advice = scenario("touring");
        Drawing view = drawing(advice, "picture-mirrors");
        double metre = view.length("metres") / 2;
        double left = view.number("trailer", "y") + view.number("trailer", "height");
        double rear = view.number("trailer", "x") + view.number("trailer", "width");
        assertEquals(2.12, view.number("trailer", "height") / metre, DRAWN / metre);
        assertEquals(5.7 - 1.5, view.number("trailer", "width") / metre, DRAWN / metre);
        assertEquals(left, view.number("left-mirror-line", "y1"), 0.02);
        assertEquals(view.number("trailer", "y"), view.number("right-mirror-line", "y1"), 0.02);
        for (String side : List.of("left-mirror", "right-mirror")) {
            assertEquals(view.number(side + "-line", "y1"), view.number(side + "-line", "y2"));
            assertTrue(view.number(side + "-line", "x1") < view.number("trailer", "x"));
            assertTrue(view.number(side + "-line", "x2") > rear);
        }
        Measure field = fact(advice, "towing", "mirrors.far-field", "left mirror");
        assertEquals(field.getValue(), view.number("left-mirror-far-seen", "height") / metre, DRAWN / metre);
        assertEquals(4 - field.getValue(), view.number("left-mirror-far-unseen", "height") / metre, DRAWN / metre);
        assertFalse(view.has("right-mirror-far-unseen"));
        // The glass stands where the sheet has it, 1260 mm out.
        double middle = view.number("trailer", "y") + view.number("trailer", "height") / 2;
        assertEquals(1.26, (view.number("left-mirror-glass", "y2") - middle) / metre, DRAWN / metre);
    }

    private static Measure fact(Advice advice, String loadCase, String name, String subject) {
        return advice.facts().get(loadCase).stream()
                .filter(Measure.class::isInstance)
                .map(Measure.class::cast)
                .filter(each -> each.getName().equals(name) && each.getSubject().equals(subject))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aMirrorThatEndsWithinTheTrailerSeesNothingPastIt() throws FaultsException {
        Drawing view = drawing(hostile(), "picture-mirrors");
        double metre = view.length("metres") / 2;
        assertEquals(4, view.number("left-mirror-far-unseen", "height") / metre, DRAWN / metre);
        assertFalse(view.has("left-mirror-field"));
        assertTrue(view.has("right-mirror-field"));
        assertTrue(view.picture().description().contains("sees nothing past it"));
    }

    @Test
    void everyJointIsDrawnInItsState() throws FaultsException {
        Drawing path = drawing(scenario("touring"), "picture-air-path-1");
        assertEquals("#000000", path.part("joint-1").getAttribute("fill"));
        assertEquals("#000000", path.part("joint-2").getAttribute("fill"));
        assertEquals("#ffffff", path.part("joint-3").getAttribute("fill"));
        assertFalse(path.has("joint-4"));
        assertTrue(path.says("NOT SEALED"));
        assertTrue(path.picture().description().contains("Joint 3, guard duct to airbox: not sealed"));
        Drawing unsure = drawing(hostile(), "picture-air-path-1");
        assertEquals("3 2", unsure.part("joint-2").getAttribute("stroke-dasharray"));
        assertEquals("3 2", unsure.part("lid").getAttribute("stroke-dasharray"));
        assertTrue(unsure.has("joint-4"));
    }

    /** 5 A for 8 h a day is 40 Ah; after one and a half days 60 of 100 Ah are gone and 40 % is left. Calculation. */
    @Test
    void theChargeFallsToWhatTheStayLeaves() throws FaultsException {
        Drawing energy = drawing(
                plainWith(
                        """
                fitments: [{name: Battery, kind: battery, mass: 27 kg, at: {x: 2.5 m, y: 0 mm, z: 0.9 m}, chemistry: agm, voltage: 12 V, capacity: 100 Ah}]
                circuits: [{name: Fridge, voltage: 12 V, current: 5 A, battery: second, hours: 8 h}]
                trip: {parked: 36 h}
                """),
                "picture-energy");
        String[] charge = energy.part("charge")
                .getAttribute("d")
                .replaceAll("[ML]", "")
                .strip()
                .split("\\s+");
        double full = Double.parseDouble(charge[1]);
        double end = Double.parseDouble(charge[5]);
        double half = energy.number("floor", "y1");
        // Half of a lead-acid battery may be used: the line of that lies in the middle.
        assertEquals(0.6, (end - full) / (2 * (half - full)), 0.005);
        assertTrue(energy.says("40 % left"));
        assertTrue(energy.picture().description().contains("drawn 40 Ah"));
    }

    @Test
    void whatIsNotKnownIsDashedAndNeverAZero() throws FaultsException {
        Advice advice = unknown();
        assertEquals(
                List.of("picture-side", "picture-headroom", "picture-mirrors", "picture-air-path-1", "picture-energy"),
                ids(advice));
        for (Drawing drawing : drawings(advice)) {
            assertTrue(drawing.says("?"), drawing.picture().id());
            assertTrue(drawing.elements().stream().anyMatch(each -> each.hasAttribute("stroke-dasharray")));
            assertTrue(
                    drawing.picture().description().contains("not known"),
                    drawing.picture().description());
            assertFalse(drawing.texts().stream()
                    .anyMatch(each -> each.getTextContent().matches("-?0 (kg|Ah|m|mm)")));
        }
        Drawing side = drawing(advice, "picture-side");
        assertTrue(side.says("? kg of 1450 kg"));
        assertEquals("3 2", side.part("wheel-front").getAttribute("stroke-dasharray"));
        assertEquals("3 2", side.part("dimension-overhang").getAttribute("stroke-dasharray"));
    }

    /** The picture's words give every figure that it draws. */
    @Test
    void theDescriptionTellsTheFiguresOfThePicture() throws FaultsException {
        Advice advice = scenario("touring");
        String side = drawing(advice, "picture-side").picture().description();
        loading(advice).masses().stream()
                .filter(each -> each.mass().value() != 0)
                .forEach(each ->
                        assertTrue(side.contains(Lettering.named(each.name()) + " " + shown(each)), each.name()));
        Drawing chart = drawing(advice, "picture-headroom");
        chart.texts().stream()
                .filter(each -> each.getAttribute("id").matches(".*-(share|left)"))
                .forEach(each -> assertTrue(chart.picture().description().contains(each.getTextContent())));
    }

    @Test
    void namesStayTextAndWithinThePage() throws FaultsException {
        for (Drawing drawing : drawings(hostile())) {
            assertFalse(
                    drawing.picture().svg().contains("<script"),
                    drawing.picture().id());
            assertFalse(
                    drawing.picture().svg().contains("\u202e"),
                    drawing.picture().id());
        }
        Drawing side = drawing(hostile(), "picture-side");
        assertTrue(side.says("</title></svg>"));
        assertTrue(side.says("\u05e9\u05dc\u05d5\u05dd"));
        assertTrue(side.picture().title().length() < 80);
    }

    @Test
    void ofManyLoadCasesTheFullestAreShownAndTheirNumberIsTold() throws FaultsException {
        Drawing chart = drawing(
                plainWith(
                        """
                cases: [{name: a}, {name: b, carrying: []}, {name: c}, {name: d}, {name: e}, {name: f}, {name: g}]
                """),
                "picture-headroom");
        assertTrue(chart.says("Of 7 load cases"));
        assertTrue(chart.has("limit-1-6"));
        assertFalse(chart.has("limit-1-7"));
        assertFalse(
                chart.texts().stream().anyMatch(each -> each.getTextContent().equals("b")), "the emptiest is left out");
        assertTrue(chart.picture().description().contains("6 of 7 load cases"));
    }

    /** By an estimate of their width; smallest letters of 7 points on paper. */
    @Test
    void noLettersCoverOthersOrLeaveThePage() throws FaultsException {
        for (Advice advice : every()) {
            for (Drawing drawing : drawings(advice)) {
                double height = Double.parseDouble(
                        drawing.root().getAttribute("viewBox").split(" ")[3]);
                List<Element> texts = drawing.texts();
                for (int i = 0; i < texts.size(); i++) {
                    Box box = Drawing.box(texts.get(i));
                    String text = drawing.picture().id() + ": " + texts.get(i).getTextContent();
                    assertTrue(Drawing.number(texts.get(i), "font-size") >= 7, text);
                    assertTrue(
                            box.x() >= 0
                                    && box.x() + box.width() <= Svg.WIDTH
                                    && box.y() >= 0
                                    && box.y() + box.height() <= height,
                            text + " leaves the page at " + box);
                    for (int j = 0; j < i; j++) {
                        assertFalse(
                                box.overlaps(Drawing.box(texts.get(j)), 0),
                                text + " covers " + texts.get(j).getTextContent());
                    }
                }
            }
        }
    }
}
