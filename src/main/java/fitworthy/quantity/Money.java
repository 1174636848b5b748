package fitworthy.quantity;

import java.math.BigDecimal;

/** A price. @param currency its ISO 4217 code */
public record Money(BigDecimal amount, String currency) {
    @Override
    public String toString() {
        return amount.toPlainString() + " " + currency;
    }
}
