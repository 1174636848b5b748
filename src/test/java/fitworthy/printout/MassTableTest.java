package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Table;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.Plan;
import fitworthy.quantity.Figure;
import fitworthy.source.FaultsException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What an engineer adds up on the mass sheet is what stands below it. */
class MassTableTest {

    private static final int MASS = 2;
    private static final int UP = 6;

    private static double number(Row row, int column) {
        return Double.parseDouble(row.cells().get(column));
    }

    /** Springs of 40 and 45 mm, larger tyres, and a bumper and the maker's tank with its fuel that go. */
    @Test
    void thePrintedHeightsAddUpToThePrintedCentre() throws FaultsException {
        Plan plan = new Plan(
                Sheets.plainWith(
                        """
                fitments:
                  - {name: Front springs, kind: springs, end: front, mass: 0 kg, lift: 40 mm}
                  - {name: Rear springs, kind: springs, end: rear, mass: 0 kg, lift: 45 mm}
                  - {name: Tyres, kind: tyres, mass: 0 kg, size: 265/70R17}
                  - {name: Bar, kind: bar, mass: 60 kg, at: {x: -600 mm, y: 0 mm, z: 900 mm},
                     removes: {name: bumper, mass: 55 kg, at: {x: -700 mm, y: 0 mm, z: 600 mm}}}
                tanks:
                  - {name: Long-range tank, liquid: diesel, capacity: 140 L, fill: 50 %, stock: no, mass: 30 kg,
                     at: {x: 2400 mm, y: 0 mm, z: 600 mm},
                     removes: {name: Main tank, mass: 15 kg, at: {x: 2400 mm, y: 0 mm, z: 600 mm}}}
                """),
                Books.shipped().tables(),
                id -> Figure.ZERO);
        Table table = (Table) MassTable.blocks(Loading.all(plan)).get(0);
        List<Row> masses = table.rows().subList(0, table.rows().size() - 1);
        Row sum = table.rows().get(table.rows().size() - 1);
        double mass = masses.stream().mapToDouble(row -> number(row, MASS)).sum();
        double moment = masses.stream()
                .mapToDouble(row -> number(row, MASS) * number(row, UP))
                .sum();
        assertEquals(number(sum, MASS), mass, 0.5);
        assertEquals(number(sum, UP), moment / mass, 1);
    }
}
