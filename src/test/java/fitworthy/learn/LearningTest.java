package fitworthy.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.learn.Fleet.Pooled;
import fitworthy.learn.Fleet.Shown;
import fitworthy.learn.Learnt.PartMass;
import fitworthy.learn.Learnt.Reason;
import fitworthy.learn.Learnt.Verdict;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LearningTest {

    private static final double[] AS_WRITTEN = new double[8];

    private static WeighedSheet weighed(Sheet sheet) throws FaultsException {
        return WeighedSheet.of(sheet, Books.shipped().tables());
    }

    private static Sheet read(String text) throws FaultsException {
        return Sheets.read(NodeReader.read(Place.of("made"), text, new ArrayList<>()));
    }

    private static List<WeighedSheet> weighed(Fleet fleet, List<Shown> shown) throws FaultsException {
        List<WeighedSheet> sheets = new ArrayList<>();
        for (int i = 0; i < fleet.size(); i++) {
            sheets.add(weighed(read(fleet.sheet(i, shown.get(i)))));
        }
        return sheets;
    }

    private static Learnt learnt(List<WeighedSheet> sheets) {
        Learning learning = new Learning();
        sheets.forEach(learning::add);
        return learning.learnt();
    }

    private static PartMass part(Learnt learnt, String name) {
        return learnt.parts().stream()
                .filter(part -> part.part().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The fleet is made once; each run has masses, places and readings of its own, as the fleet works them out. */
    @Test
    void intervalsHoldAsOftenAsTheySay() throws FaultsException {
        Random random = new Random(41);
        Fleet fleet = new Fleet(Fleet.pool(AS_WRITTEN), 40, 0.5, random);
        List<Shown> nothing = fleet.weighed(random);
        List<WeighedSheet> sheets = weighed(fleet, nothing);
        int held = 0;
        int asked = 0;
        for (int run = 0; run < 600; run++) {
            double[] more = random.doubles(8, -6, 6).toArray();
            Random sameParts = new Random(41);
            List<Shown> shown = new Fleet(Fleet.pool(more), 40, 0.5, sameParts).weighed(random);
            List<WeighedSheet> again = new ArrayList<>();
            for (int i = 0; i < sheets.size(); i++) {
                again.add(shown(sheets.get(i), nothing.get(i), shown.get(i)));
            }
            Count count = count(learnt(again), more);
            held += count.held();
            asked += count.asked();
        }
        assertEquals(600 * 8, asked);
        assertEquals(0.95, held / (double) asked, 0.02, held + " of " + asked);
    }

    private record Count(int held, int asked) {}

    private static Count count(Learnt learnt, double[] more) {
        int held = 0;
        int asked = 0;
        List<Pooled> pool = Fleet.pool(more);
        for (Pooled pooled : pool) {
            PartMass told = part(learnt, pooled.name());
            asked++;
            held += Math.abs(told.off() - pooled.more()) <= told.within() ? 1 : 0;
        }
        return new Count(held, asked);
    }

    /** The rows of a sheet as if the weighbridge had shown something else. */
    private static WeighedSheet shown(WeighedSheet sheet, Shown before, Shown after) {
        double[] off = sheet.off().clone();
        off[0] += after.front() - before.front();
        off[1] += after.rear() - before.rear();
        return new WeighedSheet(off, sheet.covariance(), sheet.parts(), sheet.axles(), List.of());
    }

    @Test
    void aPartThatIsTwelveKilogramsHeavierIsFound() throws FaultsException {
        Random random = new Random(7);
        Fleet fleet = new Fleet(Fleet.pool(12, 0.5, -0.3, -0.2, 0.4, -0.1, 1, 0.2), 60, 0.5, random);
        Learnt learnt = learnt(weighed(fleet, fleet.weighed(random)));
        PartMass bar = part(learnt, "Steel bar");
        assertEquals(Verdict.OFF, bar.verdict());
        assertEquals(12, bar.off(), bar.within());
        assertTrue(bar.within() < 3, () -> "known to " + bar.within());
        assertEquals(List.of(bar), learnt.parts(Verdict.OFF));
        assertFalse(learnt.widened());
    }

    @Test
    void threeSheetsTellNothing() throws FaultsException {
        for (int seed = 0; seed < 20; seed++) {
            Random random = new Random(seed);
            Fleet fleet = new Fleet(Fleet.pool(12, 0, 0, 0, 0, 0, 0, 0), 3, 0.5, random);
            Learnt learnt = learnt(weighed(fleet, fleet.weighed(random)));
            assertEquals(List.of(), learnt.told());
        }
    }

    /** One bracket, two things on it: whichever has it has both, at one and the same place. */
    @Test
    void whatIsNeverApartIsNotTold() throws FaultsException {
        Pooled bar = new Pooled("Bar", "other", 60, -500, 8);
        Pooled lamps = new Pooled("Lamps", "other", 9, -500, 8);
        Pooled boxes = new Pooled("Boxes", "other", 90, 3100, 0);
        List<List<Pooled>> vehicles = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            vehicles.add(List.of(List.of(bar, lamps), List.of(boxes), List.of(bar, lamps, boxes))
                    .get(i % 3));
        }
        Fleet fleet = new Fleet(vehicles);
        Learnt learnt = learnt(weighed(fleet, fleet.weighed(new Random(3))));
        assertEquals(Reason.TOGETHER, part(learnt, "Bar").reason());
        assertEquals(List.of(part(learnt, "Lamps").part()), part(learnt, "Bar").with());
        assertNull(part(learnt, "Lamps").off());
        assertTrue(part(learnt, "Boxes").reason() != Reason.TOGETHER);
    }

    @Test
    void whatOneVehicleHasIsNotTold() throws FaultsException {
        Pooled bar = new Pooled("Bar", "other", 60, -500, 0);
        Pooled once = new Pooled("Box", "other", 200, 3100, 0);
        List<List<Pooled>> vehicles =
                List.of(List.of(bar, once), List.of(), List.of(bar), List.of(), List.of(bar), List.of(bar));
        Fleet fleet = new Fleet(vehicles);
        List<Shown> shown = fleet.weighed(new Random(3));
        Learnt learnt = learnt(weighed(fleet, shown));
        assertEquals(Reason.ONE_VEHICLE, part(learnt, "Box").reason());
        assertEquals(6, learnt.weighings());
    }

    @Test
    void errorsAreThoseOfACheck() throws FaultsException {
        Sheet sheet = Sheets.plainWith("assumed-place: 50 mm\n"
                + "vehicle: {size: {wheelbase: 2850 mm +/- 10 mm}}\n"
                + "fitments: [{name: Bar, kind: other, mass: 60 kg +/- 0 kg, at: {x: -500 mm, y: 0 mm, z: 900 mm}}]\n"
                + "occupants: [{name: Driver, mass: 80 kg, at: {x: 1500 mm, y: 0 mm, z: 900 mm}}]\n"
                + "cases: [{name: weighed, weighed: {front-axle: 1300 kg +/- 10 kg, rear-axle: 1300 kg +/- 10 kg}}]\n");
        Loading loading = Loading.weighed(new Plan(
                        sheet, Books.shipped().tables(), id -> Figure.missing(Missing.inBook(id.toString(), ""))))
                .get(0);
        double[][] covariance = weighed(sheet).covariance();
        assertEquals(Math.hypot(loading.axles().front().tolerance(), 10), 1.959964 * Math.sqrt(covariance[0][0]), 1e-4);
        assertEquals(Math.hypot(loading.axles().rear().tolerance(), 10), 1.959964 * Math.sqrt(covariance[1][1]), 1e-4);
        // 60 kg at -500 mm: 1 + 500 / 2850 of a kilogram is on the front axle.
        assertEquals(1 + 500 / 2850.0, weighed(sheet).parts().get(0).onRows()[0], 1e-8);
        assertEquals(-500 / 2850.0, weighed(sheet).parts().get(0).onRows()[1], 1e-8);
    }

    /** It was on the vehicle when its kerb mass was weighed, so that no reading hangs on it until it is off. */
    @Test
    void whatIsInTheKerbMassCountsWhereItIsOff() throws FaultsException {
        String on =
                "fitments: [{name: Box, kind: other, mass: 60 kg, done: yes, removable: yes, at: {x: 2850 mm, y: 0 mm,"
                        + " z: 900 mm}}]\ncases:\n- {name: on, weighed: {front-axle: 1300 kg, rear-axle: 1300 kg}}\n";
        String off = "- {name: off, off: [Box], weighed: {front-axle: 1300 kg, rear-axle: 1240 kg}}\n";
        WeighedSheet both = weighed(Sheets.plainWith(on + off));
        assertEquals(
                "[0.0, 0.0, 0.0, -1.0]", Arrays.toString(both.parts().get(0).onRows()));
        assertTrue(both.parts().get(0).comesOff());
        assertEquals(
                Reason.NO_READING,
                part(learnt(List.of(weighed(Sheets.plainWith(on)))), "Box").reason());
    }

    @Test
    void sheetsThatDifferAreHeldAgainstTheirMean() throws FaultsException {
        Pooled light = new Pooled("Bar", "other", 50, -500, 20);
        Pooled heavy = new Pooled("Bar", "other", 70, -500, 0);
        List<List<Pooled>> vehicles = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            vehicles.add(
                    List.of(List.of(light), List.of(heavy), List.<Pooled>of()).get(i % 3));
        }
        Fleet fleet = new Fleet(vehicles);
        PartMass bar = part(learnt(weighed(fleet, fleet.weighed(new Random(5)))), "Bar");
        assertEquals(60, bar.written(), 0.5);
        assertEquals(70, bar.mass(), bar.within());
        // 10 kg from the mean to what is written, and 5 % of 70 kg.
        assertEquals(13.5, bar.spread(), 0.5);
    }

    @Test
    void aReadingThatCannotBeSummedIsLeftOutAndNamed() throws FaultsException {
        WeighedSheet sheet = weighed(Sheets.plainWith(
                "tanks: [{name: Water, liquid: water, capacity: 40 L, fill: 100 %, stock: no, at: {x: 2400 mm, y: 0 mm, z: 700 mm}}]\n"
                        + "cases: [{name: weighed, weighed: {front-axle: 1334 kg, rear-axle: 1191 kg}}]\n"));
        assertEquals(0, sheet.off().length);
        assertEquals("tanks.Water.mass", sheet.unused().get(0).missing().get(0).path());
    }
}
