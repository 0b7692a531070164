package sopwell.web.pages;

import sopwell.mix.DayMix;
import sopwell.mix.DayWaits;

/** What the mix page shows of one day. Immutable. */
public record MixPageData(DayMix mix, DayWaits waits) {}
