package sopwell.web.pages;

import java.util.Locale;
import java.util.OptionalInt;
import java.util.OptionalLong;
import sopwell.Limits;

/** Reads amounts as people type them. Stateless. */
final class Amounts {
    private static final int DIGITS_MAX = 9;
    private static final int MILLI_PERCENT_ONE = 1_000;

    private Amounts() {}

    /** Cents of an amount such as 12, 12.4, 12,40 or $12.40; empty when it is none. */
    static OptionalLong cents(String typed) {
        String bare = typed.replace("$", "").replace(" ", "").replace(',', '.');
        if (!bare.matches("[0-9]{1," + DIGITS_MAX + "}(\\.[0-9]{0,2})?|\\.[0-9]{1,2}")) {
            return OptionalLong.empty();
        }
        int point = bare.indexOf('.');
        String whole = point < 0 ? bare : bare.substring(0, point);
        String part = point < 0 ? "" : bare.substring(point + 1);
        long cents = whole.isEmpty() ? 0 : Long.parseLong(whole) * 100;
        cents += part.isEmpty() ? 0 : Long.parseLong(part.length() == 1 ? part + "0" : part);
        return cents > Limits.AMOUNT_CENTS_MAX ? OptionalLong.empty() : OptionalLong.of(cents);
    }

    /** Thousandths of a percent of a share such as 10% or 12.5 %; empty when it is none. */
    static OptionalInt milliPercent(String typed) {
        String bare = typed.replace(" ", "").replace(',', '.');
        if (!bare.matches("[0-9]{1,3}(\\.[0-9]{1,2})?%")) {
            return OptionalInt.empty();
        }
        long hundredths = cents(bare.substring(0, bare.length() - 1)).orElse(0);
        long milliPercent = hundredths * MILLI_PERCENT_ONE / 100;
        return milliPercent > sopwell.money.Discount.MILLI_PERCENT_ALL
                ? OptionalInt.empty()
                : OptionalInt.of((int) milliPercent);
    }

    /** An amount as it is typed into a field. */
    static String typed(long cents) {
        return String.format(Locale.ROOT, "%d.%02d", cents / 100, cents % 100);
    }
}
