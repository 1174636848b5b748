package fitworthy.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.SheetFields;
import fitworthy.Sheets;
import fitworthy.Told;
import fitworthy.Twigs;
import fitworthy.advice.Advice;
import fitworthy.advice.Adviser;
import fitworthy.quantity.Mark;
import fitworthy.schema.ChoiceWords;
import fitworthy.schema.FieldSchema;
import fitworthy.search.Change;
import fitworthy.search.Mender;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.Trees;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Each field of a sheet is looked at, at each place where it stands: there are two sheets that differ in it alone and whose
 * advice differs, or whose offers do.
 */
class EveryFieldTest {

    /** What the advice repeats of the sheet, whatever it says: names and prices go on into the lists of what to buy. */
    private static final String[] ECHO = {"title", "vehicle", "reason", "by", "buy", "cost"};

    /** What neither a scenario nor a case of the book has on it, over the plain sheet. */
    private static final List<String> BY_HAND = List.of(
            """
            fitments: [{name: Rear camera, kind: rear-camera, mass: 0 kg, instead-of-mirror: yes, approved-as-mirror: no}]
            trailer: {name: Van, mass: 700 kg, ball: 70 kg, hides-rear-window: yes}
            cases: [{name: towing, towing: yes}]
            """,
            """
            assumed-tolerance: 4 %
            cargo: [{name: Crate, mass: 40 kg, at: {x: 3000 mm, y: 0 mm, z: 900 mm}, roof: yes}]
            occupants: [{name: Third, mass: 80 kg, at: {x: 1500 mm, y: 0 mm, z: 900 mm}}]
            cases: [{name: three, aboard: [Driver, Third]}]
            """,
            """
            vehicle:
              ratings: {gvm: 2519 kg}
              wheels: {rating: 640 kg, diameter: 17 in, width: 7.5 in}
              tyres: {diameter: 790 mm, load-index: 95, dual-load-index: 93, passenger: no, reference-pressure: 240 kPa, most-pressure: 240 kPa}
            region: us
            fitments: [{name: New wheels, kind: wheels, mass: 1 kg, at: {x: 0 mm}, dual-rear: yes, rating: 640 kg}]
            waivers:
              - {rule: mass.gvm-over, subject: vehicle, in: everything aboard, reason: agreed, by: owner, until: 2027-01-01}
            """,
            """
            fitments:
              - {name: Tray, kind: tray, mass: 90 kg, at: {x: 3200 mm, y: 0 mm, z: 900 mm}, removable: yes,
                 width: 1900 mm, front: 2200 mm, length: 1800 mm, hides-rear-window: yes, dust-sealed: no, rear-swing: 0 mm,
                 rear: {lamps: own, plate: own, high-stop-lamp: own},
                 hold-down: {points: 3, limit: 100 kg, loaded: 420 kg},
                 legs: {limit: 60 kg, lifted: 400 kg, spacing: 900 mm, cog-height: 1700 mm}}
              - {name: Steel, kind: other, mass: 70 kg, at: {x: 3200 mm, y: 0 mm, z: 900 mm}}
            tanks:
              - {name: Can, liquid: water, capacity: 60 L, fill: 100 %, at: {x: 3000 mm, y: 0 mm, z: 700 mm}, stock: no,
                 mass: 5 kg, in: Tray, work: {days: 3, after: [Steel], booked: 2026-12-20}, lead-time: 60 days}
              - {name: Jerry can, liquid: water, capacity: 20 L, fill: 100 %, at: {x: 3000 mm, y: 0 mm, z: 700 mm},
                 stock: no, mass: 2 kg, removable: yes}
            jobs:
              - {name: Weighing, kind: weighing, work: {days: 2, after: [Steel], booked: 2026-11-26}}
              - {name: Paint, kind: paint, work: {days: 2}}
            ready-by: 2026-12-01
            options:
              - {name: Load, take: none, choices: [{name: steel, parts: [Steel]}, {name: none, parts: []}]}
            cargo: [{name: Crate, mass: 40 kg, at: {x: 3000 mm, y: 0 mm, z: 900 mm}, in: Tray}]
            cases: [{name: on}, {name: off, off: [Tray, Can, Jerry can]}]
            """,
            """
            vehicle:
              view: {mirrors: {stow: fixed}}
              tow-bar: {plate: {d: 9 kN, dc: 8 kN, v: 2 kN}, ball-overhang: 1300 mm, ball-height: 520 mm}
              rear-air-springs: no
            trailer:
              {name: Van, mass: 1900 kg, rated: 2000 kg, gtm: 1800 kg, ball: 150 kg, brakes: electric, length: 6000 mm,
               drawbar: 1500 mm, axle: 3800 mm, coupling-height: 430 mm, coupling: {d: 9 kN, dc: 8 kN, v: 2 kN}}
            cases: [{name: towing, towing: yes}]
            """,
            """
            vehicle:
              speedometer-over: 1 %
              intake:
                airbox: {inlet-bore: 76 mm, lid-sealed: yes, known-dust-leak: no, drain: open, drain-height: 800 mm}
              engine: {voltage: 12 V, starter-battery: 80 Ah, own-standby: 40 mA, alternator: 130 A, own-load: 40 A}
              suspension: {front: {wheel-rate: 30 N/mm, unsprung: 130 kg}, rear: {wheel-rate: 30 N/mm, unsprung: 170 kg}}
            fitments:
              - {name: Back springs, kind: springs, end: rear, mass: 0 kg, lift: 10 mm, rate: 60 N/mm, motion-ratio: 100 %}
              - {name: New tyres, kind: tyres, mass: 0 kg, size: 285/70R17, load-index: 121, speedometer-set: no}
              - {name: Camera, kind: rear-camera, mass: 0 kg, instead-of-mirror: yes, approved-as-mirror: no}
              - {name: Tray, kind: tray, mass: 0 kg, hides-rear-window: yes}
              - {name: Airbox, kind: airbox, mass: 0 kg, drain: open, drain-height: 400 mm, service-distance: 900 km}
              - {name: Spacers, kind: body-lift, mass: 0 kg, lift: 26 mm, lamp-aim: no}
              - {name: Battery, kind: battery, mass: 0 kg, chemistry: lithium, voltage: 12 V, capacity: 100 Ah, lithium-curve: no}
              - {name: Aerial, kind: aerial, mass: 0 kg, tip: 2400 mm, place: roof, folds: no}
            trip: {dust: heavy, water-depth: 500 mm, headroom: 2300 mm, dust-distance: 1000 km, parked: 3 days, driving: 4 h}
            """,
            """
            vehicle:
              intake: {airbox: {lid-sealed: yes, known-dust-leak: no, drain: none}}
              engine: {alternator: 130 A, own-load: 40 A, voltage: 12 V, own-standby: 30 mA, starter-battery: 60 Ah}
            fitments:
              - {name: Battery, kind: battery, mass: 0 kg, chemistry: agm, voltage: 12 V, capacity: 100 Ah}
              - {name: Relay, kind: charger, mass: 0 kg, isolator: yes, input: 30 A, output: 20 A}
              - {name: Snorkel, kind: snorkel, mass: 0 kg, head-height: 450 mm, bore: 90 mm, joints: [{name: one, sealed: yes}]}
              - {name: Canopy, kind: canopy, mass: 0 kg, width: 1700 mm, hides-rear-window: no}
            tanks: [{name: Old, liquid: water, capacity: 9 L, fill: 0 %, at: {x: 3 m, y: 0 m, z: 1 m}, stock: no, mass: 9 kg, done: yes}]
            circuits:
              - {name: Fridge, voltage: 12 V, current: 5 A, battery: second, driving: yes, hours: 8 h, need: other}
              - {name: Lamps, voltage: 12 V, current: 9 A, battery: starter, driving: yes, parked: no, standby: 9 mA, need: other}
            trip: {water-depth: 500 mm, parked: 3 days, driving: 4 h}
            """,
            """
            vehicle:
              view: {eye: {x: 1400 mm, y: -370 mm, z: 1450 mm}}
              tyres: {diameter: 760 mm, speedometer-set: no}
              wheels: {rating: 640 kg}
              intake: {airbox: {inlet-bore: 76 mm, lid-sealed: yes, known-dust-leak: no, drain: none}}
            fitments:
              - {name: New tyres, kind: tyres, mass: 0 kg, size: 265/70R17, load-index: 116, speedometer-set: no}
              - {name: Canopy, kind: canopy, mass: 0 kg, hides-rear-window: yes}
              - {name: Tray, kind: tray, mass: 0 kg, dust-sealed: no}
              - {name: Camera, kind: rear-camera, mass: 0 kg, instead-of-mirror: yes, approved-as-mirror: no}
              - {name: Snorkel, kind: snorkel, mass: 0 kg, head-height: 1000 mm, bore: 90 mm, joints: [{name: one, sealed: yes}]}
              - {name: Whip, kind: aerial, mass: 0.5 kg, at: {x: -800 mm, y: -370 mm, z: 1200 mm}}
            trip: {dust: heavy, water-depth: 800 mm}
            """,
            """
            vehicle:
              tyres: {clearance: 5 mm, rim-least: 6.5 in, rim-most: 8.5 in}
              suspension: {front: {wheel-rate: 40 N/mm, unsprung: 130 kg}, rear: {wheel-rate: 30 N/mm, unsprung: 170 kg}}
            fitments:
              - {name: Wheels, kind: wheels, mass: 0 kg, width: 8 in, diameter: 17 in, offset: 30 mm}
              - {name: Springs, kind: springs, end: front, mass: 0 kg, lift: 10 mm, rate: 60 N/mm, motion-ratio: 80 %}
            """,
            """
            region: uk
            fitments: [{name: Gun box, kind: firearm-box, mass: 0 kg, locks: yes, fixed: yes}]
            """,
            """
            fitments: [{name: Slow, kind: other, mass: 0 kg, lead-time: 10 days, work: {days: 1}}]
            jobs: [{name: Paint, kind: paint, work: {days: 9, after: [Slow]}}]
            ready-by: 2026-12-14
            """,
            """
            fitments: [{name: Slow, kind: other, mass: 0 kg, lead-time: 10 days, work: {days: 1}}]
            tanks:
              - {name: Can, liquid: water, capacity: 9 L, fill: 0 %, at: {x: 3 m, y: 0 m, z: 1 m}, stock: no, mass: 2 kg,
                 lead-time: 1 days,
                 work: {days: 9, after: [Slow]}}
            ready-by: 2026-12-14
            """);

    /** Answered before a sheet is bound, by what stands in it then; UsualFillingTest looks at it. */
    private static final String FOR_THE_FILLING = "assume-usual";

    /** Sheets whose offers, or what these cost, turn with a field that says what may be changed. */
    private static final Map<String, String> FOR_THE_SEARCH = Map.of(
            "fitments.N.keep",
            """
            vehicle: {ratings: {gvm: 2560 kg}}
            fitments: [{name: Bar, kind: other, mass: 60 kg, at: {x: 1000 mm, y: 0 mm, z: 700 mm}, keep: yes}]
            """,
            "fitments.N.may-move",
            """
            vehicle: {ratings: {rear-axle: 1281 kg}}
            fitments: [{name: Box, kind: other, mass: 100 kg, at: {x: 2850 mm, y: 0 mm, z: 900 mm}, may-move: 600 mm}]
            """,
            "cargo.N.may-move",
            """
            vehicle: {ratings: {rear-axle: 1281 kg}}
            cargo: [{name: Box, mass: 100 kg, at: {x: 2850 mm, y: 0 mm, z: 900 mm}, may-move: 600 mm}]
            """,
            "fitments.N.price",
            """
            vehicle: {ratings: {gvm: 2560 kg}}
            fitments: [{name: Bar, kind: other, mass: 60 kg, at: {x: 1000 mm, y: 0 mm, z: 700 mm}, price: 900.00 AUD}]
            """,
            "tanks.N.price",
            """
            vehicle: {ratings: {gvm: 2480 kg}}
            fitments: [{name: Rack, kind: other, mass: 1 kg, at: {x: 1000 mm, y: 0 mm, z: 700 mm}}]
            tanks:
              - {name: Can, liquid: water, capacity: 60 L, fill: 100 %, at: {x: 3000 mm, y: 0 mm, z: 700 mm}, stock: no,
                 mass: 5 kg, in: Rack, price: 90.00 AUD}
            """,
            "trailer.lightest",
            "trailer: {name: Van, mass: 3500 kg, ball: 0 kg, lightest: 3490 kg}");

    /** @param values how many stand on the sheet */
    private record Found(Node.Mapping sheet, Twigs.Twig twig, int values) {}

    private static Map<String, List<Found>> places;

    private final Map<Node.Mapping, Told> told = new IdentityHashMap<>();

    @BeforeAll
    static void lookForPlaces() throws FaultsException {
        places = places();
    }

    @Test
    void everyFieldIsLookedAtUnlessItIsOnlyPrinted() throws FaultsException {
        Set<String> looked = new TreeSet<>();
        Set<String> expected = new TreeSet<>();
        for (Map.Entry<String, FieldSchema> field : SheetFields.all().entrySet()) {
            String name = field.getKey();
            if (!SheetFields.decidesNothing(name)
                    && !FOR_THE_SEARCH.containsKey(name)
                    && !name.equals(FOR_THE_FILLING)) {
                expected.add(name);
                for (Found each : smallestFirst(places.getOrDefault(name, List.of()))) {
                    if (turns(each, field.getValue())) {
                        looked.add(name);
                        break;
                    }
                }
            }
        }
        expected.removeAll(looked);
        assertEquals("", String.join("\n", expected));
    }

    /** Each field that says what may be changed, or what it costs, is on a sheet whose offers turn with it. */
    @Test
    void whatMayBeChangedTurnsTheOffers() throws FaultsException {
        Set<String> idle = new TreeSet<>();
        for (Map.Entry<String, String> field : FOR_THE_SEARCH.entrySet()) {
            Node.Mapping sheet = Sheets.treeWith(field.getValue());
            String offered = offered(sheet);
            Twigs.Twig twig = Twigs.of(sheet).stream()
                    .filter(value -> SheetFields.of(sheet, value.path()).equals(field.getKey()))
                    .findFirst()
                    .orElseThrow();
            if (offered.equals(offered(Trees.without(sheet, twig.path())))) {
                idle.add(field.getKey());
            }
        }
        assertEquals(Set.of(), idle);
    }

    /** The offers that {@code mend} makes, with what the customer gives up and what each costs. */
    private static String offered(Node.Mapping sheet) throws FaultsException {
        return Mender.mend(Books.engine(), sheet, Sheets.read(sheet), () -> false, tried -> {}).offers().stream()
                .map(offer -> offer.changes().stream().map(Change::words).toList() + " " + offer.kilograms() + " kg "
                        + offer.added())
                .collect(Collectors.joining("\n"));
    }

    /** A field that is marked as deciding nothing, or as one of the search, is on no sheet whose advice turns with it. */
    @Test
    void whatIsOnlyPrintedDecidesNothing() throws FaultsException {
        Set<String> looked = new TreeSet<>();
        for (Map.Entry<String, FieldSchema> field : SheetFields.all().entrySet()) {
            String name = field.getKey();
            if (SheetFields.decidesNothing(name) || FOR_THE_SEARCH.containsKey(name) || name.equals(FOR_THE_FILLING)) {
                List<Found> found = places.getOrDefault(name, List.of());
                for (Found each : found.subList(0, Math.min(3, found.size()))) {
                    if (turns(each, field.getValue())) {
                        looked.add(name);
                    }
                }
            }
        }
        assertEquals(Set.of(), looked);
    }

    /** One place is enough, and a small sheet is soon looked at. */
    private static List<Found> smallestFirst(List<Found> found) {
        return found.stream().sorted(Comparator.comparing(Found::values)).toList();
    }

    private boolean turns(Found found, FieldSchema field) throws FaultsException {
        for (Node.Mapping other : others(found, field)) {
            Sheet changed;
            try {
                changed = Sheets.read(other);
            } catch (FaultsException refused) {
                if (refused.faults().stream().noneMatch(fault -> fault.path().startsWith(group(found)))) {
                    return true;
                }
                continue;
            }
            Advice advice = Adviser.advise(Books.engine(), changed);
            // Every figure is asked about where it is unusual; that alone is not to look at what it says.
            boolean unusual = advice.findings().stream()
                    .anyMatch(finding -> finding.key().rule().equals("across.unusual"));
            if (!unusual && !told(found.sheet()).against(Told.of(advice), ECHO).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** What holds the value; a fault elsewhere tells that another field goes by it. */
    private static String group(Found found) {
        return found.twig().path().above().toString();
    }

    private Told told(Node.Mapping sheet) throws FaultsException {
        if (!told.containsKey(sheet)) {
            told.put(sheet, Told.of(Adviser.advise(Books.engine(), Sheets.read(sheet))));
        }
        return told.get(sheet);
    }

    private static List<Node.Mapping> others(Found found, FieldSchema field) {
        List<Node.Mapping> others = new ArrayList<>();
        others.add(Trees.without(found.sheet(), found.twig().path()));
        for (String text : texts(found.twig().value().text(), field)) {
            others.add(Trees.with(
                    found.sheet(),
                    found.twig().path(),
                    new Node.Scalar(found.twig().value().place(), text, false)));
        }
        return others;
    }

    private static List<String> texts(String text, FieldSchema field) {
        return switch (field.content()) {
            case CHOICE ->
                ChoiceWords.of(field.type()).stream()
                        .filter(each -> !each.equals(text))
                        .toList();
            case FIGURE, FIGURES -> {
                String plain = Mark.read(text).text();
                int unit = plain.indexOf(' ');
                String number = unit < 0 ? plain : plain.substring(0, unit);
                String rest = unit < 0 ? "" : plain.substring(unit);
                if (number.isEmpty()) {
                    yield List.of();
                }
                BigDecimal value = new BigDecimal(number);
                yield List.of(
                        value.multiply(new BigDecimal("0.4")).toPlainString() + rest,
                        value.multiply(new BigDecimal("1.9")).toPlainString() + rest,
                        value.add(java.math.BigDecimal.ONE).toPlainString() + rest,
                        "0" + rest);
            }
            case DATE -> List.of("2019-07-08", "2026-11-20", "2031-01-02");
            case MONEY -> List.of("7.00 AUD");
            default -> field.name().equals("region") ? List.of("au-sa", "us") : List.of("another", "Main tank");
        };
    }

    private static Map<String, List<Found>> places() throws FaultsException {
        Map<String, List<Found>> places = new HashMap<>();
        Set<String> seen = new HashSet<>();
        List<Node.Mapping> sheets = new ArrayList<>();
        for (String each : List.of("touring", "weekender", "overloaded")) {
            sheets.add(Sheets.scenario(each));
        }
        for (String changes : BY_HAND) {
            Sheets.plainWith(changes);
            sheets.add(Sheets.treeWith(changes));
        }
        Books.cases().forEach(each -> sheets.add(each.tree()));
        for (int i = 0; i < sheets.size(); i++) {
            Node.Mapping sheet = sheets.get(i);
            // Of the many cases the first of sixty that has a value stands for all of them.
            int group = i < 3 + BY_HAND.size() ? -i : i / 60;
            List<Twigs.Twig> twigs = Twigs.of(sheet);
            for (Twigs.Twig twig : twigs) {
                String field = SheetFields.of(sheet, twig.path());
                if (seen.add(field + " " + twig.value().text() + " " + group)) {
                    places.computeIfAbsent(field, key -> new ArrayList<>()).add(new Found(sheet, twig, twigs.size()));
                }
            }
        }
        return places;
    }
}
