package fitworthy.figures.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.figures.Measures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.source.FaultsException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * A wagon of 2300 kg, stretched by 600 mm at 1950 mm, worked again from the front, where the program looks at what is
 * behind. What is ahead of the place is 1400 kg of the wagon and two people.
 */
class CutWagonTest {

    private static final double WHEELBASE = 3450;
    private static final double PLACE = 1950;

    private static final String WAGON =
            """
            vehicle: {rails: {at: 1950 mm, behind: 900 kg, middle: 2900 mm, shape: channel, depth: 100 mm, width: 50 mm,
              wall: 3 mm, yield: 300 MPa}}
            fitments:
              - {name: Stretch, kind: chassis-extension, mass: 60 kg, at: {x: 2300 mm, y: 0 mm, z: 600 mm},
                 wheelbase-added: 600 mm, cut: 1950 mm}
              - {name: Cab, kind: body-cut, mass: 20 kg, at: {x: 2200 mm, y: 0 mm, z: 1100 mm}}
            cargo: [{name: Load, mass: 300 kg, at: {x: 3000 mm, y: 0 mm, z: 900 mm}}]
            """;

    private static Measure measure(String name) throws FaultsException {
        Plan plan = new Plan(Sheets.plainWith(WAGON), Books.shipped().tables(), id -> Figure.of(3, 0));
        return Measures.of(Loading.all(plan).get(0)).stream()
                .filter(measure -> measure.getName().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** In Nm. The wagon's moment about the front axle is 1050 x 2850 and 900 kg x 600 mm of the stretch. */
    private static double fromTheFront() {
        double wagon = 1050 * 2850 + 900 * 600;
        double ahead = (wagon - 900 * 2900) / 1400;
        double aboard = 60 * 2300 + 20 * 2200 + 160 * 1500 + 60 * 2700 + 300 * 3000;
        double front = 2300 + 600 - (wagon + aboard) / WHEELBASE;
        double moment = front * PLACE - 1400 * (PLACE - ahead) - 160 * (PLACE - 1500);
        return moment * 9.81 / 1000;
    }

    /** Two rails of 300 MPa bear three times it where each has moment x 3 / (2 x 300), in Nmm: 46 112 mm3, rounded up. */
    @Test
    void agreesWithWhatIsAheadOfThePlace() throws FaultsException {
        assertEquals(fromTheFront(), measure("body.rail-moment").getValue(), 1e-6);
        double modulus = fromTheFront() * 1000 * 3 / (2 * 300);
        assertEquals(Math.ceil(modulus), measure("body.rail-modulus-needed").getValue(), 1e-9);
        assertEquals(46112, Math.ceil(modulus), 1e-9);
    }

    /** Each row of the printed table makes the moment beside it, and they add up with that of the vehicle itself. */
    @Test
    void isFollowedByHandFromThePrintedLines() throws FaultsException {
        Measure moment = measure("body.rail-moment");
        List<String> lines = moment.workings().stream()
                .flatMap(working -> working.lines().stream())
                .toList();
        Pattern row = Pattern.compile("\\S.*? +([0-9.-]+) +([0-9]+) +([0-9.-]+)");
        double others = 0;
        int rows = 0;
        for (String line : lines) {
            Matcher read = row.matcher(line);
            if (line.length() > 30 && !line.contains("=") && !line.startsWith("sum") && read.matches()) {
                double mass = Double.parseDouble(read.group(1));
                double at = Double.parseDouble(read.group(2));
                double does = 9.81 * mass * (at * (WHEELBASE - PLACE) / WHEELBASE - Math.max(0, at - PLACE)) / 1000;
                assertEquals(does, Double.parseDouble(read.group(3)), 0.05, line);
                others += does;
                rows++;
            }
        }
        assertEquals(8, rows, lines.toString());
        double rear = (1050 * 2850 + 900 * 600) / WHEELBASE;
        double own = 9.81 * (rear * (WHEELBASE - PLACE) - 900 * (2900 - PLACE)) / 1000;
        assertEquals(moment.getValue(), own + others, 0.01);
        assertTrue(lines.contains("the sum is above zero: the rails sag, pulled at the bottom, as between the axles"));
    }
}
