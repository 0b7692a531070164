package sopwell.web.pages;

import sopwell.desk.Stand;
import sopwell.mix.DayExceptions;
import sopwell.mix.DayMix;
import sopwell.mix.DayWaits;

/** What the mix page shows of one day. Immutable. */
public record MixPageData(DayMix mix, DayWaits waits, DayExceptions exceptions) {
    /** Counts what happened on a stand's newest day, which must have been opened. */
    public static MixPageData of(Stand stand) {
        return new MixPageData(
                DayMix.of(
                        stand.orders().date().orElseThrow(),
                        stand.orders(),
                        stand.menu(),
                        stand::menuOf),
                DayWaits.of(stand.orders(), stand.kitchen(), stand.settings().targetSeconds()),
                DayExceptions.of(stand.orders(), stand.kitchen()));
    }
}
