package fitworthy.counter.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fields as a person would call them. */
class LabelsTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "trip.days | days of trip",
                "fitments.Front bar.mass | mass of Front bar",
                "fitments.Alloy tray.removes.mass | mass of what comes off for Alloy tray",
                "fitments.Alloy tray.removes.at.x | place of what comes off for Alloy tray along the vehicle",
                "fitments.Alloy tray.removes | what comes off for Alloy tray",
                "fitments.Alloy tray.at.z | height of Alloy tray",
                "vehicle.recovery.front.made-for | what recovery front is made for",
                "fitments.Tow bar.suits | whether Tow bar is stated to suit",
                "vehicle.ratings.rear-axle | rear axle of ratings",
                "fitments.2 | parts 2"
            })
    void readsAsAPhrase(String path, String words) {
        assertEquals(words, Labels.field(path));
    }
}
