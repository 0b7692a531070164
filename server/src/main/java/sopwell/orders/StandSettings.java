package sopwell.orders;

import java.time.ZoneId;
import sopwell.money.CashRule;
import sopwell.money.TaxRule;

/**
 * What holds for the whole stand. Immutable.
 *
 * @param stand the stand's id, carried by every event it writes
 * @param name the stand's name
 * @param zone where it is; business days are days there
 * @param cutHour the local hour, 0 to 23, at which a day that nobody closed is closed
 * @param tax sales tax
 * @param targetSeconds the wait the stand wants to keep, from placed to up
 * @param numberMax the last order number before numbers start over at 1
 * @param cash the notes and coins it deals in, and what they are rounded to
 * @param safety the limits that cautions name
 */
public record StandSettings(
        String stand,
        String name,
        ZoneId zone,
        int cutHour,
        TaxRule tax,
        int targetSeconds,
        int numberMax,
        CashRule cash,
        Safety safety) {}
