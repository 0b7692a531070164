package sopwell.counter;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import sopwell.Limits;
import sopwell.money.CashCount;
import sopwell.money.CashRule;
import sopwell.money.CashUnit;

/**
 * Taking a whole amount in cash or by card where the stand can't be asked: what may be handed over
 * and what goes back. Immutable.
 */
public final class CashWords {
    private static final int DOLLAR_CENTS = 100;
    private static final int DIGITS_MAX = 9;

    private final CashRule cash;
    private final Phrases phrases;

    CashWords(CashRule cash, Phrases phrases) {
        this.cash = cash;
        this.phrases = phrases;
    }

    /** What is to be paid in cash, and what a guest is likely to hand over, in cents. */
    public List<Long> tendersCents(long dueCents) {
        List<Long> tenders = new ArrayList<>();
        tenders.add(cashCents(dueCents));
        tenders.addAll(cash.units().tendersCents(cashCents(dueCents)));
        return tenders;
    }

    /** What is due when it is paid in cash. */
    public long cashCents(long dueCents) {
        return cash.rounding().roundCents(dueCents);
    }

    /** The notes and coins to give back, in words; empty when there are none. */
    public List<String> change(long dueCents, long givenCents) {
        return cash.units().change(Math.max(0, givenCents - cashCents(dueCents))).stream()
                .map(this::said)
                .toList();
    }

    /** An amount as it is typed into a field. */
    public static String typed(long cents) {
        long part = cents % DOLLAR_CENTS;
        return cents / DOLLAR_CENTS + (part < 10 ? ".0" : ".") + part;
    }

    /** Cents of an amount such as 12, 12.4, 12,40 or $12.40; empty when it is none. */
    public static OptionalLong cents(String text) {
        String bare = text.replace("$", "").replace(" ", "").replace(',', '.');
        if (!bare.matches("[0-9]{1," + DIGITS_MAX + "}(\\.[0-9]{0,2})?|\\.[0-9]{1,2}")) {
            return OptionalLong.empty();
        }
        int point = bare.indexOf('.');
        String whole = point < 0 ? bare : bare.substring(0, point);
        String part = point < 0 ? "" : bare.substring(point + 1);
        long cents = whole.isEmpty() ? 0 : Long.parseLong(whole) * DOLLAR_CENTS;
        cents += part.isEmpty() ? 0 : Long.parseLong(part.length() == 1 ? part + "0" : part);
        return cents > Limits.AMOUNT_CENTS_MAX ? OptionalLong.empty() : OptionalLong.of(cents);
    }

    /** An amount without hundredths that say nothing. */
    public static String round(long cents, Phrases phrases) {
        String money = phrases.money(cents);
        return cents % DOLLAR_CENTS == 0 ? money.substring(0, money.length() - 3) : money;
    }

    /** What a note or coin is called. */
    public static String name(CashUnit unit, Phrases phrases) {
        return unit.cents() < DOLLAR_CENTS ? unit.cents() + "\u00a2" : round(unit.cents(), phrases);
    }

    private String said(CashCount count) {
        return count.pieces() + " \u00d7 " + name(count.unit(), phrases);
    }
}
