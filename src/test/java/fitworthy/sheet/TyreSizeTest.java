package fitworthy.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TyreSizeTest {

    /** Nominal diameters by hand from what the numbers mean: 17 * 25.4 + 2 * 265 * 0.65 and so on. */
    @ParameterizedTest
    @CsvSource({
        "265/65R17, 776.3, 265, 431.8",
        "285/70R17, 830.8, 285, 431.8",
        "LT265/65R17, 776.3, 265, 431.8",
        "P265/65R17, 776.3, 265, 431.8",
        "265/65 R 17 C, 776.3, 265, 431.8",
        "33x12.50R15, 838.2, 317.5, 381.0",
        "35x12.5R17LT, 889.0, 317.5, 431.8",
        "31x10.50-15, 787.4, 266.7, 381.0"
    })
    void readsWhatTheNumbersMean(String text, double diameter, double width, double rim) {
        TyreSize size = TyreSize.read(text).orElseThrow();
        assertEquals(diameter, size.diameter().orElseThrow() * 1000, 0.05);
        assertEquals(width, size.width() * 1000, 0.05);
        assertEquals(rim, size.rim() * 1000, 0.05);
    }

    @Test
    void aNumericSizeDoesNotNameItsHeight() {
        TyreSize size = TyreSize.read("7.50R16").orElseThrow();
        assertEquals(OptionalDouble.empty(), size.diameter());
        assertEquals(190.5, size.width() * 1000, 0.05);
        assertEquals(406.4, size.rim() * 1000, 0.05);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "265/65",
                "265x65R17",
                "17",
                "big",
                "15x12.50R15",
                "265/65R17 112S",
                "-265/65R17",
                "000/65R17",
                "265/00R17",
                "265/65R00"
            })
    void whatIsNoSizeIsNotRead(String text) {
        assertTrue(TyreSize.read(text).isEmpty(), text);
    }

    @Test
    void aSheetSaysWhichSizeIsUnreadableAndWhatIsRight(@TempDir Path folder) throws IOException {
        String sheet =
                """
                title: A wagon
                region: any
                as-of: 2026-11-25
                vehicle:
                  name: Wagon
                  size: {wheelbase: 2850 mm}
                  mass: {kerb: 2300 kg, front-axle: 1250 kg, rear-axle: 1050 kg, kerb-fuel: 0 %, kerb-driver: 0 kg}
                  tyres: {size: 265-65-17}
                fitments:
                  - {name: Mud tyres, kind: tyres, mass: 0 kg, size: 33 inch}
                  - {name: Flat tyres, kind: tyres, mass: 0 kg, size: 7.50R16, diameter: 40 cm}
                """;
        Path file = Files.writeString(folder.resolve("sheet.yaml"), sheet);
        FaultsException faults = assertThrows(FaultsException.class, () -> SheetReader.read(file, Set.of("any")));
        assertEquals(
                List.of("vehicle.tyres.size", "fitments.1.size", "fitments.2.diameter"),
                faults.faults().stream().map(Fault::path).toList());
        assertTrue(faults.faults().get(1).problem().contains("'33 inch' is not a tyre size"));
        assertTrue(faults.faults().get(1).mend().contains("33x12.50R15"));
    }
}
