package sopwell.web.pages;

import java.util.OptionalInt;
import java.util.OptionalLong;
import sopwell.counter.CashWords;
import sopwell.money.Discount;

/** Reads amounts as people type them. Stateless. */
final class Amounts {
    private static final int MILLI_PERCENT_ONE = 1_000;

    private Amounts() {}

    /** Cents of an amount such as 12, 12.4, 12,40 or $12.40; empty when it is none. */
    static OptionalLong cents(String typed) {
        return CashWords.cents(typed);
    }

    /** Thousandths of a percent of a share such as 10% or 12.5 %; empty when it is none. */
    static OptionalInt milliPercent(String typed) {
        String bare = typed.replace(" ", "").replace(',', '.');
        if (!bare.matches("[0-9]{1,3}(\\.[0-9]{1,2})?%")) {
            return OptionalInt.empty();
        }
        long hundredths = cents(bare.substring(0, bare.length() - 1)).orElse(0);
        long milliPercent = hundredths * MILLI_PERCENT_ONE / 100;
        return milliPercent > Discount.MILLI_PERCENT_ALL
                ? OptionalInt.empty()
                : OptionalInt.of((int) milliPercent);
    }
}
