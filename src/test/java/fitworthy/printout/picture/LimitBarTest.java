package fitworthy.printout.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What a bar says of a limit adds up, and looks no better than it is. */
class LimitBarTest {

    private static LimitBar bar(double value, double limit) {
        return LimitBar.of(Measure.of(LoadMeasures.LOADED, "vehicle", Figure.of(value, 0), Figure.of(limit, 0)));
    }

    @Test
    void usedIsRoundedUpAndTheRestIsSpare() {
        assertEquals("3805 kg of 3900 kg", bar(3804.4, 3900).of());
        assertEquals("95 kg spare", bar(3804.4, 3900).left());
        assertEquals("3804 kg of 3900 kg", bar(3804, 3900).of());
        assertEquals("96 kg spare", bar(3804, 3900).left());
        assertEquals("2519.4 kg of 2519.6 kg", bar(2519.4, 2519.6).of());
        assertEquals("0.2 kg spare", bar(2519.4, 2519.6).left());
        assertEquals("2519 kg of 2519 kg", bar(2519.00001, 2519.00002).of());
        assertEquals("nothing to spare", bar(2519.00001, 2519.00002).left());
    }

    @Test
    void whatIsKnownOfAnOverloadIsTheLeastOfIt() {
        Measure open = Measure.of(
                        LoadMeasures.LOADED,
                        "vehicle",
                        Figure.missing(new Missing("cargo.Dog.mass", "its mass", "a scale")),
                        Figure.of(3900, 0))
                .atLeast(Figure.of(3901, 0));
        assertEquals("at least 3901 kg of 3900 kg", LimitBar.of(open).of());
        assertEquals("at least 1 kg over", LimitBar.of(open).left());
    }

    /** In tenths of a kilogram, on both sides of the limit. */
    @Property(seed = "4711")
    void itAddsUpToTheSafeSide(
            @ForAll @IntRange(max = 60000) int value, @ForAll @IntRange(min = -300, max = 300) int off) {
        int limit = Math.max(1, value + off);
        LimitBar bar = bar(value / 10.0, limit / 10.0);
        BigDecimal used = number(bar.of().split(" of ")[0]);
        BigDecimal most = number(bar.of().split(" of ")[1]);
        BigDecimal left = number(bar.left());
        BigDecimal spare = bar.over() ? left.negate() : left;
        assertEquals(0, most.subtract(used).compareTo(spare), bar.of() + ", " + bar.left());
        assertTrue(used.compareTo(BigDecimal.valueOf(value, 1)) >= 0, bar.of() + " for " + value);
        assertTrue(spare.compareTo(BigDecimal.valueOf(limit - value, 1)) <= 0, bar.left() + " for " + (limit - value));
        // Nothing is told that is a digit off, or more.
        BigDecimal digit = BigDecimal.ONE.movePointLeft(most.scale());
        assertTrue(BigDecimal.valueOf(limit - value, 1).subtract(spare).compareTo(digit) < 0, bar.left());
        assertTrue(BigDecimal.valueOf(limit, 1).subtract(most).abs().compareTo(digit) < 0, bar.of() + " for " + limit);
        assertEquals(value > limit, bar.over() && spare.signum() < 0, bar.of() + ", " + bar.left());
    }

    private static BigDecimal number(String quantity) {
        return quantity.equals("nothing to spare") ? BigDecimal.ZERO : new BigDecimal(quantity.split(" ")[0]);
    }
}
