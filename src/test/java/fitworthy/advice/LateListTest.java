package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class LateListTest {

    @Test
    void itIsWorkedOutOnceAndNotBefore() {
        AtomicInteger times = new AtomicInteger();
        List<String> late = new LateList<>(() -> {
            times.incrementAndGet();
            return List.of("Tent", "Luggage");
        });
        assertEquals(0, times.get());
        assertEquals(List.of("Tent", "Luggage"), late);
        assertEquals(2, late.size());
        assertEquals(1, times.get());
    }
}
