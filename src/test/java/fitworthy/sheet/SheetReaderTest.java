package fitworthy.sheet;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.schema.ChoiceWords;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the reader takes and refuses, and the exact words with which it refuses. */
class SheetReaderTest {

    /**
     * One thing spoilt in the good sheet and the one fault that it makes; what follows a final ... is not looked at.
     */
    record Spoilt(String old, String now, String fault) {}

    /** Faults that a schema can see. */
    static final List<Spoilt> SHAPE = List.of(
            // names of fields
            new Spoilt(
                    "gvm: 3100",
                    "gmv: 3100",
                    "15:5 vehicle.ratings.gmv: no field has this name (did you mean 'gvm'?)"
                            + " -> one of gvm, gcm, front-axle, ..."),
            new Spoilt(
                    "stability-control: yes",
                    "stability-control: yes\n  gvm: 3100 kg",
                    "7:3 vehicle.gvm: no field has this name; it stands under vehicle.ratings"
                            + " -> vehicle: {ratings: {gvm: 3100 kg}}"),
            new Spoilt(
                    "stability-control: yes",
                    "stability-control: yes\n  kerb-mass: 2340 kg",
                    "7:3 vehicle.kerb-mass: no field has this name (did you mean 'mass'?); it stands as"
                            + " vehicle.mass.kerb -> vehicle: {mass: {kerb: 2340 kg +/- 20 kg}}"),
            new Spoilt(
                    "gvm: 3100 kg",
                    "gvm: 3100 kg\n    wheelbase: 2850 mm",
                    "16:5 vehicle.ratings.wheelbase: no field has this name; it stands under vehicle.size"
                            + " -> vehicle: {size: {wheelbase: 2850 mm}}"),
            new Spoilt(
                    "gvm: 3100 kg",
                    "gvm: 3100 kg\n    water-alarm: yes",
                    "16:5 vehicle.ratings.water-alarm: no field has this name; it stands as alarm under fitments.N of kind"
                            + " fuel-separator -> one of gvm, ..."),
            new Spoilt(
                    "mass: 1400 kg",
                    "mass: 1400 kg, brake: override",
                    "29:40 trailer.brake: no field has this name (did you mean 'brakes'?) -> one of name, ..."),
            new Spoilt(
                    "kind: bar",
                    "kind: tyres, pressure: 35 psi",
                    "22:30 fitments.2.pressure: no field has this name (did you mean 'reference-pressure' or"
                            + " 'front-pressure' or 'rear-pressure'?) -> one of name, ..."),
            // marks
            new Spoilt(
                    "kind: bar",
                    "kind: tyres, speed-symbol: unknown",
                    "22:44 fitments.2.speed-symbol: is 'unknown' where words belong -> leave it out until it is known,"
                            + " then speed-symbol: S"),
            new Spoilt(
                    "kind: bar",
                    "kind: bar, price: ask",
                    "22:35 fitments.2.price: is 'ask', which is not a price -> leave it out until it is known, then price:"
                            + " 1450.00 AUD (amount and currency code)"),
            new Spoilt(
                    "2026-11-25",
                    "unknown",
                    "3:8 as-of: is 'unknown', which is not a date -> as-of: 2026-11-25 (year-month-day)"),
            new Spoilt(
                    "off: [Canopy]",
                    "off: ask",
                    "34:10 cases.1.off: is 'ask' where a list belongs -> leave it out until it is known, then off: with a"
                            + " line '- name' for each"),
            new Spoilt(
                    "vehicle:\n",
                    "ready-by: ask\nvehicle:\n",
                    "4:11 ready-by: is 'ask', which is not a date -> leave it out until it is known, then ready-by:"
                            + " 2027-02-26 (year-month-day)"),
            // examples fit the kind and the place
            new Spoilt(
                    "mass: 60 kg,",
                    "mass: heavy,",
                    "22:34 fitments.2.mass: 'heavy' is not a quantity -> mass: 60 kg (units: kg, t, g, lb)"),
            new Spoilt(
                    "name: Bar, kind: bar, mass: 60 kg, at: {x: -700 mm}",
                    "name: Bar, kind: bar, mass: 60 kg, at: {x: front}",
                    "22:49 fitments.2.at.x: 'front' is not a quantity -> x: -700 mm (units: ..."),
            new Spoilt(
                    "name: Bar, kind: bar, mass: 60 kg, at: {x: -700 mm}",
                    "name: Whip, kind: aerial, mass: 60, at: {x: -700 mm}",
                    "22:38 fitments.2.mass: '60' has no unit -> mass: 1 kg (units: kg, t, g, lb)"),
            new Spoilt(
                    "at: {x: 1500 mm}",
                    "at: unknown",
                    "26:37 occupants.1.at: is 'unknown' where a group of fields belongs -> fields below it, such as"
                            + " 'x: 1500 mm, y: -370 mm, z: 900 mm'"),
            new Spoilt(
                    "liquid: diesel",
                    "liquid: about diesel",
                    "24:31 tanks.1.liquid: is a guess, which does not do here -> liquid: diesel or petrol or water or"
                            + " urea-solution"),
            new Spoilt(
                    "liquid: diesel",
                    "liquid: unknown",
                    "24:31 tanks.1.liquid: is asked for, but no sheet can do without it -> liquid: diesel or petrol or"
                            + " water or urea-solution"),
            // figures
            new Spoilt(
                    "gvm: 3100 kg",
                    "gvm: 3100",
                    "15:10 vehicle.ratings.gvm: '3100' has no unit -> gvm: 3100 kg (units: kg, t, g, lb)"),
            new Spoilt(
                    "gvm: 3100 kg",
                    "gvm: 3100 psi",
                    "15:10 vehicle.ratings.gvm: '3100 psi' has a unit of pressure where"
                            + " one of mass belongs -> gvm: 3100 kg (units: kg, t, g, lb)"),
            new Spoilt(
                    "gvm: 3100 kg",
                    "gvm: 3100 kgm",
                    "15:10 vehicle.ratings.gvm: '3100 kgm' has a unit that is not known"
                            + " (did you mean 'kg'?) -> gvm: 3100 kg (units: kg, t, g, lb)"),
            new Spoilt(
                    "gvm: 3100 kg",
                    "gvm: -3100 kg",
                    "15:10 vehicle.ratings.gvm: '-3100 kg' is negative -> gvm: 3100 kg (units: kg, t, g, lb)"),
            new Spoilt(
                    "gvm: 3100 kg",
                    "gvm: 3,100 kg",
                    "15:10 vehicle.ratings.gvm: '3,100 kg' could be 3100 kg or 3.100 kg: write the one that is meant"
                            + " -> gvm: 3100 kg (units: kg, t, g, lb)"),
            new Spoilt(
                    "gvm: 3100 kg",
                    "gvm: heavy",
                    "15:10 vehicle.ratings.gvm: 'heavy' is not a quantity -> gvm: 3100 kg (units: kg, t, g, lb)"),
            new Spoilt(
                    "gvm: 3100 kg",
                    "gvm: [3100 kg]",
                    "15:10 vehicle.ratings.gvm: is a list where a figure belongs -> gvm: 3100 kg (units: kg, t, g, "
                            + "lb)"),
            new Spoilt(
                    "gvm: 3100 kg",
                    "gvm: 3100 kg +/- 5",
                    "15:10 vehicle.ratings.gvm: '3100 kg +/- 5', after +/-, has no"
                            + " unit -> gvm: 3100 kg (units: kg, t, g, lb)"),
            // needed fields
            new Spoilt(
                    "title: Touring wagon\n",
                    "",
                    "1:1 title: is missing: a title for the printout -> title: Touring wagon, stage two"),
            new Spoilt(
                    "title: Touring wagon",
                    "title:",
                    "1:1 title: is left empty: a title for the printout -> title: Touring wagon, stage two; what stands"
                            + " behind a # is not read"),
            new Spoilt(
                    "title: Touring wagon",
                    "title: ''",
                    "1:8 title: is blank: a title for the printout -> title: Touring wagon, stage two"),
            new Spoilt(
                    "    kerb: 2340 kg\n",
                    "",
                    "9:5 vehicle.mass.kerb: is missing: mass ready to drive with what is done, without people and"
                            + " cargo -> kerb: 2340 kg +/- 20 kg"),
            // answers and dates
            new Spoilt(
                    "liquid: diesel",
                    "liquid: gasoline",
                    "24:31 tanks.1.liquid: is 'gasoline', which is not one of the"
                            + " answers (did you mean 'petrol'?) -> liquid: one of diesel, petrol, water, urea-solution"),
            new Spoilt(
                    "liquid: diesel",
                    "liquid: dissel",
                    "24:31 tanks.1.liquid: is 'dissel', which is not one of the"
                            + " answers (did you mean 'diesel'?) -> liquid: one of diesel, petrol, water, urea-solution"),
            new Spoilt(
                    "stability-control: yes",
                    "stability-control: perhaps",
                    "6:22 vehicle.stability-control: is"
                            + " 'perhaps', which is not one of the answers -> stability-control: one of yes, no"),
            new Spoilt(
                    "2026-11-25",
                    "25/11/2026",
                    "3:8 as-of: is '25/11/2026', which is not a date -> as-of: 2026-11-25 (year-month-day)"),
            new Spoilt(
                    "2026-11-25",
                    "2026-02-30",
                    "3:8 as-of: is '2026-02-30', which is not a date -> as-of: 2026-11-25 (year-month-day)"),
            new Spoilt(
                    "2026-11-25",
                    "+12026-11-25",
                    "3:8 as-of: is '+12026-11-25', which is not a date -> as-of: 2026-11-25 (year-month-day)"),
            new Spoilt(
                    "mass: 60 kg,",
                    "mass: 60 kg, price: $5,",
                    "22:48 fitments.2.price: is '$5', which is not a price"
                            + " -> price: 1450.00 AUD (amount and currency code)"),
            // kinds of value
            new Spoilt(
                    "title: Touring wagon",
                    "title: [a, b]",
                    "1:8 title: is a list where words belong -> title: Touring wagon, stage two"),
            new Spoilt(
                    "off: [Canopy]",
                    "off: Canopy",
                    "34:10 cases.1.off: is 'Canopy' where a list belongs -> off: [Canopy]"),
            new Spoilt(
                    "off: [Canopy]",
                    "off: [{a: b}]",
                    "34:11 cases.1.off.1: is a group of fields where words belong -> off: with a line '- name' for "
                            + "each"),
            new Spoilt(
                    "off: [Canopy]",
                    "off:\n      -",
                    "35:8 cases.1.off.1: is left empty where words belong -> off: with a line '- name' for each"),
            new Spoilt(
                    "trailer: {name: Camper, mass: 1400 kg}",
                    "trailer: 7",
                    "29:10 trailer: is '7' where a"
                            + " group of fields belongs -> fields below it, such as 'name: Off-road camper, mass: 2200 kg'"),
            new Spoilt(
                    "{Main v1.2: 50 %}",
                    "half",
                    "35:13 cases.1.filled: is 'half' where names with figures belong"
                            + " -> filled: {Main tank: 50 %}"),
            // kinds of fitment
            new Spoilt(
                    "kind: bar",
                    "kind: bar, head-height: 1 m",
                    "22:28 fitments.2.head-height: no field has this name; one"
                            + " of kind snorkel has it -> one of name, kind, mass, at, removes, ..."),
            // what would follow from a fault is not told as another
            new Spoilt(
                    "trailer:",
                    "trialer:",
                    "29:1 trialer: no field has this name (did you mean 'trailer'?) -> one of title, customer, "
                            + "quote, region, ..."),
            new Spoilt(
                    "occupants:",
                    "ocupants:",
                    "25:1 ocupants: no field has this name (did you mean 'occupants'?) -> one of title, customer, "
                            + "quote, region, ..."),
            new Spoilt(
                    "removable: yes",
                    "removeable: yes",
                    "21:5 fitments.1.removeable: no field has this name (did you mean"
                            + " 'removable'?) -> one of name, kind, mass, at, removes, ..."),
            new Spoilt(
                    "removable: yes",
                    "removable: maybe",
                    "21:16 fitments.1.removable: is 'maybe', which is not one of the"
                            + " answers -> removable: one of yes, no"),
            new Spoilt(
                    "stock: yes",
                    "stock: maybe",
                    "24:93 tanks.1.stock: is 'maybe', which is not one of the answers -> stock: one of yes, no"),
            new Spoilt(
                    "{name: Driver, mass",
                    "{mass",
                    "26:5 occupants.1.name: is missing: what it is called -> name: Driver"),
            new Spoilt(
                    "at: {x: 2950 mm, y: 0 mm, z: 1300 mm}",
                    "at: here",
                    "20:9 fitments.1.at: is 'here' where a group of"
                            + " fields belongs -> fields below it, such as 'x: 2950 mm, y: 0 mm, z: 1300 mm'"),
            new Spoilt(
                    "rear-axle: 1050 kg",
                    "rear-axle: 1000 L",
                    "11:16 vehicle.mass.rear-axle: '1000 L' has a unit of volume"
                            + " where one of mass belongs -> rear-axle: 1050 kg (units: kg, t, g, lb)"));

    /** Faults between fields, or in the text, which only the reader sees. */
    static final List<Spoilt> BEYOND_SHAPE = List.of(
            new Spoilt(
                    "gvm: 3100 kg",
                    "gvm: 3100 kg\n    gvm: 3200 kg",
                    "16:5 vehicle.ratings.gvm: 'gvm' is given twice; first on line 15 -> keep one of the two"),
            new Spoilt(
                    "    at: {x: 2950 mm, y: 0 mm, z: 1300 mm}\n",
                    "",
                    "17:5 fitments.1.at: has a mass but no place -> at: {x: 2950 mm, y: 0 mm, z: 1300 mm}"),
            new Spoilt(
                    "region: au",
                    "region: fr",
                    "2:9 region: the rule book has no region 'fr'" + " -> region: one of any, au, ..."),
            new Spoilt(
                    "vehicle:\n",
                    "ready-by: 2026-11-24\nvehicle:\n",
                    "4:11 ready-by: is before the sheet's day, 2026-11-25 -> ready-by: a day that is still to come"),
            new Spoilt(
                    "rear-axle: 1050",
                    "rear-axle: 1000",
                    "9:11 vehicle.mass.kerb: front and rear axle sum to 2290 kg,"
                            + " but the kerb mass is 2340 kg -> kerb: 2290 kg, or axle masses that sum to it"),
            new Spoilt(
                    "front-axle: 1290 kg",
                    "front-axle: 0 kg",
                    "10:17 vehicle.mass.front-axle: is '0 kg', which is not between 100 kg and 20 t"
                            + " -> front-axle: 1290 kg"),
            new Spoilt(
                    "wheelbase: 2850 mm",
                    "wheelbase: 28.5 m",
                    "7:21 vehicle.size.wheelbase: is '28.5 m', which is not between 0.5 m and 12 m"
                            + " -> wheelbase: 2850 mm"),
            new Spoilt(
                    "stock: yes",
                    "stock: no",
                    "12:16 vehicle.mass.kerb-fuel: counts fuel in the kerb mass, but no tank is"
                            + " marked 'stock: yes' -> list the maker's tank under tanks with 'stock: yes'"),
            new Spoilt(
                    "fill: 100 %",
                    "fill: 110 %",
                    "24:61 tanks.1.fill: is '110 %', which is not between 0 % and 100 %" + " -> fill: 100 %"),
            new Spoilt(
                    "name: Bar",
                    "name: Canopy",
                    "22:12 fitments.2.name: two of them are called 'Canopy' -> a name of its own for each"),
            new Spoilt(
                    "{name: Bar, kind: bar,",
                    "{name: Bar, kind: tyres, size: 265-65,",
                    "22:36 fitments.2.size: '265-65' is"
                            + " not a tyre size -> size: 265/65R17, 33x12.50R15 or 7.50R16; load index and speed "
                            + "symbol may follow, as in 265/65R17 112S"),
            new Spoilt(
                    "kind: bar",
                    "kind: snorkel, joints: [{name: a}, {name: a}]",
                    "22:59 fitments.2.joints.2.name: two of them are called 'a' -> a name of its own for each"),
            new Spoilt(
                    "cases:\n",
                    "options: [{name: Tray, choices: [{name: a, parts: [Bar]}]}]\ncases:\n",
                    "30:33 options.1.choices: there are fewer than two to choose from -> choices: [{name: alloy, parts:"
                            + " [Alloy tray]}, {name: steel, parts: [Steel tray]}]"),
            new Spoilt(
                    "cases:\n",
                    "options: [{name: T, take: c, choices: [{name: a}, {name: b}]}]\ncases:\n",
                    "30:27 options.1.take: 'c' is not among the choices -> one of a, b"),
            new Spoilt(
                    "cases:\n",
                    "options: [{name: T, choices: [{name: a, parts: [Box]}, {name: b}]}]\ncases:\n",
                    "30:49 options.1.choices.1.parts.1: 'Box' is not among the fitments and tanks"
                            + " -> one of Main v1.2, Canopy, Bar"),
            new Spoilt(
                    "cases:\n",
                    "options: [{name: T, choices: [{name: a}, {name: a}]}]\ncases:\n",
                    "30:49 options.1.choices.2.name: two of them are called 'a' -> a name of its own for each"),
            new Spoilt(
                    "name: Bar, kind: bar,",
                    "name: Bar, kind: bar, work: {after: [Tray]},",
                    "22:43"
                            + " fitments.2.work.after.1: 'Tray' is not among the fitments, tanks and jobs -> one of Main "
                            + "v1.2, Canopy, Bar"),
            new Spoilt(
                    "name: Bar, kind: bar,",
                    "name: Bar, kind: bar, work: {after: [Bar]},",
                    "22:43 fitments.2.work.after.1: 'Bar' cannot come after itself -> leave it out"),
            new Spoilt(
                    "kind: bar,",
                    "kind: bar, lead-time: 600 weeks,",
                    "22:39 fitments.2.lead-time: is '600 weeks', which is not between 0 days and 3650 days"
                            + " -> lead-time: 21 days"),
            new Spoilt(
                    "cases:\n",
                    "jobs: [{name: Paint, kind: paint, work: {days: 4000}}]\ncases:\n",
                    "30:48 jobs.1.work.days: is '4000', which is not between 0 and 3650 -> days: 1.5"),
            new Spoilt(
                    "[Driver]",
                    "[Diver]",
                    "32:14 cases.1.aboard.1: 'Diver' is not among the occupants (did you mean"
                            + " 'Driver'?) -> one of Driver"),
            new Spoilt(
                    "[Fridge]",
                    "[Fridge, Tent]",
                    "33:24 cases.1.carrying.2: 'Tent' is not among the cargo -> one of Fridge"),
            new Spoilt(
                    "[Canopy]",
                    "[Awning]",
                    "34:11 cases.1.off.1: 'Awning' is not among the fitments and tanks -> one of Canopy, Bar, Main v1.2"),
            new Spoilt(
                    "[Canopy]",
                    "[Bar]",
                    "34:11 cases.1.off.1: 'Bar' is off here, but the part is not marked as removable"
                            + " -> removable: yes, in fitments.2"),
            new Spoilt(
                    "{Main v1.2: 50 %}",
                    "{Main v1.3: 50 %}",
                    "35:25 cases.1.filled.Main v1.3: 'Main v1.3' is not among"
                            + " the tanks (did you mean 'Main v1.2'?) -> one of Main v1.2"),
            new Spoilt(
                    "{Main v1.2: 50 %}",
                    "{Main v1.2: 150 %}",
                    "35:25 cases.1.filled.Main v1.2: is '150 %', which is not between 0 % and 100 %"
                            + " -> filled: {Main tank: 50 %}"),
            new Spoilt(
                    "stock: yes",
                    "stock: y",
                    "24:93 tanks.1.stock: is 'y', which is not one of the answers (did you mean 'yes'?) -> stock: one of"
                            + " yes, no"),
            new Spoilt(
                    "stock: yes",
                    "stock: TRUE",
                    "24:93 tanks.1.stock: is 'TRUE', which is not one of the answers (did you mean 'yes'?) -> stock: one"
                            + " of yes, no"),
            new Spoilt(
                    "{name: Bar, kind: bar,",
                    "{name: Bar, kind: battery, chemistry: LiFePO4,",
                    "22:43 fitments.2.chemistry: is 'LiFePO4', which is not one of the answers (did you mean 'lithium'?)"
                            + " -> chemistry: one of lead-acid, agm, gel, lithium"),
            new Spoilt(
                    "aboard: [Driver]",
                    "aboard: [Driver, Driver]",
                    "32:22 cases.1.aboard.2: 'Driver' is named here already -> each name once"),
            new Spoilt(
                    "carrying: [Fridge]",
                    "carrying: [Fridge, Fridge]",
                    "33:24 cases.1.carrying.2: 'Fridge' is named here already -> each name once"),
            new Spoilt(
                    "off: [Canopy]",
                    "off: [Canopy, Canopy]",
                    "34:19 cases.1.off.2: 'Canopy' is named here already -> each name once"),
            new Spoilt(
                    "cases:\n",
                    "options: [{name: T, choices: [{name: a, parts: [Bar, Bar]}, {name: b}]}]\ncases:\n",
                    "30:54 options.1.choices.1.parts.2: 'Bar' is named here already -> each name once"),
            new Spoilt(
                    "trailer: {name: Camper, mass: 1400 kg}\n",
                    "",
                    "35:13 cases.1.towing: tows, but the sheet has no"
                            + " trailer -> trailer: {name: Camper, mass: 1400 kg, ball: 130 kg}"),
            new Spoilt(
                    "title: Touring wagon",
                    "title: *t",
                    "1:8 title: anchors and aliases (& and *) are not read here"
                            + " -> text that begins so in quotes; else the value written out where it belongs"),
            new Spoilt(
                    "title: Touring wagon",
                    "title: !!java.io.File x",
                    "1:8 title: tags (! and what follows it) are not"
                            + " read here -> the value alone; in quotes where it begins with '!'"),
            new Spoilt(
                    "ratings:\n    gvm: 3100 kg",
                    "ratings: !!map {gwm: 3}",
                    "14:12 vehicle.ratings: tags (! and what"
                            + " follows it) are not read here -> the value alone; in quotes where it begins with '!'"));

    @TestFactory
    Stream<DynamicTest> oneThingSpoiltMakesOneFault() {
        return Stream.concat(SHAPE.stream(), BEYOND_SHAPE.stream())
                .map(each -> DynamicTest.dynamicTest(
                        each.old() + " => " + each.now(),
                        () -> assertEquals(
                                List.of(each.fault()),
                                BadSheet.faults(BadSheet.with(each.old(), each.now())).stream()
                                        .map(got -> each.fault().endsWith("...")
                                                ? cut(got, each.fault().length() - 3)
                                                : got)
                                        .toList())));
    }

    private static String cut(String text, int length) {
        return text.length() < length ? text : text.substring(0, length) + "...";
    }

    @Test
    void goodSheetHasNoFault() throws FaultsException {
        assertEquals(List.of(), BadSheet.faults(BadSheet.GOOD));
    }

    @Test
    void everythingWrongIsToldAtOnceInReadingOrder() throws FaultsException {
        String text = BadSheet.with(
                "region: au",
                "region: oz",
                "wheelbase: 2850 mm",
                "wheelbase: 2850",
                "gvm: 3100 kg",
                "gvm: 3100 kPa",
                "kind: bar",
                "kind: bra",
                "rear-axle: 1050",
                "rear-axle: 950",
                "[Driver]",
                "[Nobody]",
                "2026-11-25",
                "today");
        List<String> starts = BadSheet.faults(text).stream()
                .map(each -> each.replaceAll(": .*", ""))
                .toList();
        assertEquals(
                List.of(
                        "2:9 region",
                        "3:8 as-of",
                        "7:21 vehicle.size.wheelbase",
                        "9:11 vehicle.mass.kerb",
                        "15:10 vehicle.ratings.gvm",
                        "22:23 fitments.2.kind",
                        "32:14 cases.1.aboard.1"),
                starts);
    }

    @Test
    void commaWithinBracesIsToldWhereItCutsTheValue() throws FaultsException {
        assertEquals(
                List.of(
                        "28:53 cargo.1.at.z: '1' has no unit -> z: 900 mm (units: m, mm, cm, km, um, micron, in, ft, mi)",
                        "28:55 cargo.1.at.2 m: no field has this name; within braces a comma ends the value before it"
                                + " -> a decimal point, or the value in quotes, as in '1,2 m'"),
                BadSheet.faults(BadSheet.with("{x: 2900 mm}", "{x: 2900 mm, z: 1,2 m}")));
    }

    @Test
    void whatStandsBelowAMisspeltNameIsLookedAtToo() throws FaultsException {
        assertEquals(
                List.of(
                        "25:1 ocupants: no field has this name (did you mean 'occupants'?)",
                        "26:26 occupants.1.mass: '80' has no unit",
                        "32:14 cases.1.aboard.1: 'Diver' is not among the occupants (did you mean 'Driver'?)"),
                BadSheet.faults(BadSheet.with(
                                "occupants:",
                                "ocupants:",
                                "mass: 80 kg, at: {x: 1500",
                                "mass: 80, at: {x: 1500",
                                "[Driver]",
                                "[Diver]"))
                        .stream()
                        .map(fault -> fault.replaceFirst(" -> .*", ""))
                        .toList());
    }

    private static final String TYRES = "  tyres: {%s}\n  mass:\n";

    private static TyreDetails.Tyres tyres(String fields) throws FaultsException {
        return BadSheet.read(BadSheet.with("  mass:\n", TYRES.formatted(fields)))
                .vehicle()
                .tyres();
    }

    @Test
    void loadIndexAndSpeedSymbolMayStandTogether() throws FaultsException {
        TyreDetails.Tyres apart = tyres("size: LT265/65R17, load-index: 121, dual-load-index: 118, speed-symbol: S");
        assertEquals(apart, tyres("size: LT265/65R17, load-index: 121/118S"));
        assertEquals(apart, tyres("size: LT265/65R17, load-index: 121/118 s"));
        assertEquals(apart, tyres("size: LT265/65R17 121/118S"));
        assertEquals(apart, tyres("size: LT265/65R17 121/118S, load-index: 121, speed-symbol: S"));
        assertEquals(
                tyres("size: 265/65R17, load-index: 112, speed-symbol: S"), tyres("size: 265/65R17, load-index: 112S"));
    }

    @Test
    void sidewallThatContradictsItsFieldsIsRefused() throws FaultsException {
        assertEquals(
                List.of("8:60 vehicle.tyres.speed-symbol: is 'T', but '116S' gives S -> one of the two, as the"
                        + " sidewall says"),
                BadSheet.faults(BadSheet.with(
                        "  mass:\n", TYRES.formatted("size: 265/65R17, load-index: 116S, speed-symbol: T"))));
        assertEquals(
                List.of("8:45 vehicle.tyres.load-index: is '110', but '265/65R17 112S' gives 112 -> one of the two,"
                        + " as the sidewall says"),
                BadSheet.faults(BadSheet.with("  mass:\n", TYRES.formatted("size: 265/65R17 112S, load-index: 110"))));
    }

    @Test
    void driverInTheKerbMassNeedsASeat() throws FaultsException {
        assertEquals(
                List.of("13:18 vehicle.mass.kerb-driver: counts a driver in the kerb mass, but no occupant says "
                        + "where he sits -> list the driver first under occupants"),
                BadSheet.faults(BadSheet.with(
                        "kerb-driver: 0 kg",
                        "kerb-driver: 75 kg",
                        "occupants:\n  - {name: Driver, mass: 80 kg, at: {x: 1500 mm}}\n",
                        "",
                        "    aboard: [Driver]\n",
                        "")));
    }

    @Test
    void unknownKindNamesEveryKindAndTheNearest() throws FaultsException {
        String fault = BadSheet.faults(BadSheet.with("kind: bar", "kind: bra, head-height: 1 m"))
                .get(0);
        assertTrue(
                fault.startsWith("22:23 fitments.2.kind: is 'bra', which is not one of the answers"
                        + " (did you mean 'bar'?) -> kind: one of "),
                fault);
        ChoiceWords.of(Fitment.Kind.class).forEach(kind -> assertTrue(fault.contains(kind), kind));
        assertEquals(
                1,
                BadSheet.faults(BadSheet.with("kind: bar", "kind: bra, head-height: 1 m"))
                        .size(),
                "fields of a kind that is not known are not judged");
    }

    @Test
    void whatShoreAndGeneratorAreCalledElsewhereIsTold() throws FaultsException {
        String circuit = "circuits: [{name: Heater, voltage: 240 V, battery: %s}]\n";
        for (List<String> pair : List.of(
                List.of("mains", "shore"),
                List.of("hookup", "shore"),
                List.of("shore power", "shore"),
                List.of("genset", "generator"))) {
            assertEquals(
                    List.of("1:52 circuits.1.battery: is '" + pair.get(0)
                            + "', which is not one of the answers (did you mean '" + pair.get(1)
                            + "'?) -> battery: one of starter, second, shore, generator"),
                    BadSheet.faults(circuit.formatted(pair.get(0)) + BadSheet.GOOD));
        }
        assertTrue(BadSheet.read(circuit.formatted("shore") + BadSheet.GOOD)
                .circuits()
                .get(0)
                .isOnShore());
        assertFalse(BadSheet.read(circuit.formatted("second") + BadSheet.GOOD)
                .circuits()
                .get(0)
                .isOnShore());
    }

    @Test
    void fieldLeftEmptyIsNotGiven() throws FaultsException {
        Sheet sheet = BadSheet.read(BadSheet.with(
                "gvm: 3100 kg",
                "gvm:",
                "trailer: {name: Camper, mass: 1400 kg}",
                "trailer:",
                "towing: yes",
                "towing: no",
                "stability-control: yes",
                "stability-control: ~"));
        assertEquals(
                "vehicle.ratings.gvm",
                sheet.vehicle().ratings().gvm().missing().get(0).path());
        assertTrue(sheet.trailer().isEmpty());
        assertTrue(!sheet.vehicle().stabilityControl().known());
    }

    @Test
    void jsonAndYamlOfOneSheetAgree() throws Exception {
        String json = new ObjectMapper().writeValueAsString(new YAMLMapper().readTree(BadSheet.GOOD));
        assertTrue(json.startsWith("{"));
        assertEquals(BadSheet.read(BadSheet.GOOD), BadSheet.read(json));
    }

    @Test
    void jsonFaultNamesItsPlace() throws Exception {
        String json = "{\n  \"title\": \"x\", \"region\": \"au\", \"as-of\": \"2026-11-25\",\n  \"vehicle\": "
                + "{\"name\": 5,\n"
                + "    \"seats\": \"5 kg\"}\n}";
        assertEquals(
                List.of("4:14 vehicle.seats: '5 kg' has a unit of mass where one of count belongs -> seats: 5"),
                BadSheet.faults(json).stream()
                        .filter(each -> each.contains("seats"))
                        .toList());
    }

    @Test
    void dotInANameDoesNotLoseThePlace() throws FaultsException {
        assertEquals(
                "35:25",
                BadSheet.faults(BadSheet.with("{Main v1.2: 50 %}", "{Main v1.2: 150 %}"))
                        .get(0)
                        .split(" ")[0]);
    }

    @Test
    void damagedTextNeverMakesAnythingButFaults() throws FaultsException {
        Books.shipped();
        Random random = new Random(20261125);
        String pieces = "{}[]:,-&*!%@`'\"#|>?\n\t \u0000\uFEFF0";
        int refused = 0;
        for (int run = 0; run < 3000; run++) {
            StringBuilder text = new StringBuilder(BadSheet.GOOD);
            for (int hit = random.nextInt(3); hit >= 0; hit--) {
                int at = random.nextInt(text.length());
                switch (random.nextInt(3)) {
                    case 0 -> text.deleteCharAt(at);
                    case 1 -> text.insert(at, pieces.charAt(random.nextInt(pieces.length())));
                    default -> text.setCharAt(at, pieces.charAt(random.nextInt(pieces.length())));
                }
            }
            refused += BadSheet.faults(text.toString()).isEmpty() ? 0 : 1;
        }
        assertTrue(refused > 1500, "most damage has to be noticed, but only " + refused + " of 3000 was");
    }

    @Test
    void nothingIsHalfRead() {
        List<fitworthy.source.Fault> faults = new ArrayList<>();
        assertThrows(IllegalArgumentException.class, () -> new FaultsException(faults));
        assertThrows(FaultsException.class, () -> BadSheet.read("title: x\n"));
    }

    /** With all the other faults: what the plan would be without a choice is no reason to stop reading. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    options: [{name: x}]               | options.1.choices | is missing: what there is to choose from
                    options: [{name: x, choices: []}]  | options.1.choices | there are fewer than two to choose from
                    options: [{name: x, choices: a}]   | options.1.choices | is 'a' where a list belongs
                    options: [{name: x, choices: }]    | options.1.choices | is left empty: what there is to choose from
                    options: [{name: x, choics: []}]   | options.1.choices | is missing: what there is to choose from
                    """)
    void anOptionWithoutChoicesIsToldBesideAllElse(String options, String path, String problem) throws FaultsException {
        String text = BadSheet.with("region: au", "region: oz", "cases:\n", options + "\ncases:\n");
        for (String sheet : List.of(text, "assume-usual: yes\n" + text)) {
            List<String> faults = BadSheet.faults(sheet);
            assertTrue(faults.get(0).contains("region: the rule book has no region 'oz'"), faults::toString);
            String line = sheet.equals(text) ? "30" : "31";
            assertTrue(
                    faults.stream()
                            .anyMatch(fault -> fault.startsWith(line + ":")
                                    && fault.contains(path + ": " + problem + " -> choices: ")),
                    faults::toString);
        }
    }

    @Test
    void aChargerThatTakesSomethingAndGivesNothingIsAskedAgain() {
        String charger = "fitments: [{name: Charger, kind: charger, mass: 0 kg, %sinput: 40 A, output: 0 A}]";
        FaultsException faults = assertThrows(FaultsException.class, () -> Sheets.plainWith(charger.formatted("")));
        assertEquals(
                List.of("gives nothing, though it takes 40 A at its input"),
                faults.faults().stream().map(Fault::problem).toList());
        assertDoesNotThrow(() -> Sheets.plainWith(charger.formatted("isolator: yes, ")));
    }

    /** The wheelbase is 2850 mm. */
    @Test
    void aBarBehindTheMiddleIsNotTheOneAtTheFront() {
        String bar = "fitments: [{name: Bar, kind: %s, mass: 60 kg, at: {x: %s mm, y: 0 mm, z: 600 mm}}]";
        FaultsException faults =
                assertThrows(FaultsException.class, () -> Sheets.plainWith(bar.formatted("bar", "1426")));
        assertEquals(
                List.of(
                        "fitments.1.kind is the protection bar at the front, and this one stands behind the middle of the vehicle;"
                                + " kind: other for a bar at the rear"),
                faults.faults().stream()
                        .map(fault -> fault.path() + " " + fault.problem() + "; " + fault.mend())
                        .toList());
        assertDoesNotThrow(() -> Sheets.plainWith(bar.formatted("bar", "1425")));
        assertDoesNotThrow(() -> Sheets.plainWith(bar.formatted("other", "3900")));
    }
}
