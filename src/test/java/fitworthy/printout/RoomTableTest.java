package fitworthy.printout;

import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.Books;
import fitworthy.Sheets;
import fitworthy.advice.Adviser;
import fitworthy.document.Page;
import fitworthy.source.FaultsException;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** The room that is left, as it is told. Sums by hand in rules/room/cases.yaml. */
class RoomTableTest {

    private static final String VAN =
            """
            trailer: {name: Van, mass: 2000 kg +/- 0 kg, ball: 200 kg +/- 0 kg, rated: 3500 kg, gtm: 3100 kg, brakes: electric,
              lightest: 1200 kg, coupling: {trailer: 3500 kg, ball: 350 kg}}
            """;

    private static String printed(String changes) throws FaultsException {
        StringWriter out = new StringWriter();
        RoomTable.of(Adviser.advise(Books.engine(), Sheets.plainWith(changes))).print(new Page(new PrintWriter(out)));
        out.toString().lines().forEach(line -> assertTrue(line.length() <= Page.COLUMNS, line));
        return out.toString().replaceAll("\\s+", " ");
    }

    private static void says(String printed, String words) {
        assertTrue(printed.contains(words), () -> "'" + words + "' in " + printed);
    }

    @Test
    void tellsTheHeaviestTrailerWithTheLimitThatGoverns() throws FaultsException {
        String bar = "vehicle: {tow-bar: {plate: {trailer: 3500 kg, ball: 350 kg}}, ratings: {rear-axle: 1500 kg}}\n";
        says(printed(VAN + bar), "Heaviest trailer 2206 kg (rear axle)");
        // The plate says less than the vehicle would bear.
        says(
                printed(VAN.replace("3500 kg, gtm: 3100 kg", "2100 kg, gtm: 1950 kg") + bar),
                "2100 kg (trailer's plate); the vehicle alone allows 2206 kg (rear axle)");
        // 80 kg are left for 0.14 of each kilogram: 571 kg.
        says(
                printed(VAN + bar.replace("1500 kg", "1271.053 kg")),
                "571 kg (rear axle); it cannot be loaded to less than 1200 kg");
    }

    @Test
    void whatIsNotKnownIsNoLeave() throws FaultsException {
        String printed = printed(VAN + "vehicle: {ratings: {rear-axle: 1500 kg}}\n");
        says(
                printed,
                "not known without vehicle.tow-bar.plate.trailer; vehicle.tow-bar.plate.ball, at most 2206 kg (rear axle)");
        says(printed("vehicle: {ratings: {gvm: unknown}}"), "not known without vehicle.ratings.gvm");
    }

    @Test
    void whatIsPassedAlreadyIsSaid() throws FaultsException {
        says(printed("vehicle: {ratings: {gvm: 2450 kg}}"), "none anywhere (GVM 70 kg over already)");
        says(printed("vehicle: {ratings: {gvm: 2450 kg}}"), "a limit stays passed even with Main tank empty");
    }

    @Test
    void whatRestsOnAGuessSaysAbout() throws FaultsException {
        says(printed("vehicle: {ratings: {gvm: about 2700 kg +/- 60 kg}}"), "about 180 kg +/- 60 kg anywhere (GVM)");
        says(printed("vehicle: {ratings: {gvm: 2700 kg +/- 60 kg}}"), "cargo 180 kg +/- 60 kg anywhere (GVM)");
    }

    @Test
    void aTankThatMayNotBeFullIsToldWithTheRangeThen() throws FaultsException {
        says(
                printed("vehicle: {ratings: {gvm: 2500 kg}}"),
                "Main tank 56 L (GVM), 70 % full, range then 468 km Range 666 km on the fuel as planned");
    }
}
