package sopwell.web.pages;

import java.time.InstantSource;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import sopwell.access.Access;
import sopwell.call.CallParser;
import sopwell.desk.AuditTrail;
import sopwell.desk.Desk;
import sopwell.desk.Follower;
import sopwell.desk.NameErasing;
import sopwell.desk.NamesKept;
import sopwell.orders.StandSettings;
import sopwell.till.DayReport;
import sopwell.web.Care;
import sopwell.web.PastPreps;
import sopwell.web.PrepPlans;
import sopwell.web.RecipeDocs;
import sopwell.web.Tallies;
import sopwell.web.Texts;
import sopwell.web.live.Frame;
import sopwell.web.past.PastDays;

/**
 * What the screens need. Immutable; everything in it is thread-safe.
 *
 * @param boards the whole board of a name as a frame (with {@code prev} 0), drawn with the same
 *     digits as the frames that follow it; empty for a name that is no board
 * @param parser reads calls by the menu in force; null before the first menu
 * @param parserOf reads calls by the menu of a revision; empty for one never in force here
 * @param tallies what was sold on any days, and all that is known of one
 * @param reports the money of any date, empty when no day was opened on it
 * @param past days that are looked at again
 * @param recipes books of recipes as documents
 * @param plans what to prepare
 * @param care backups and the box's clock
 * @param trust whom a tablet must trust before it believes the stand; empty when nobody
 * @param pastPreps what became of what was to be prepared
 * @param keys makes idempotency keys for forms; each call gives another one
 * @param trail who did what
 * @param access who may do what, and who is who
 * @param nanos a clock that never jumps, in nanoseconds
 * @param erasing takes names out of the log
 * @param namesKept for how long names are kept
 */
public record PageContext(
        Desk desk,
        Follower follower,
        Texts texts,
        StandSettings settings,
        InstantSource clock,
        Assets assets,
        Pages pages,
        Function<String, CompletableFuture<Optional<Frame>>> boards,
        Supplier<CallParser> parser,
        Function<String, Optional<CallParser>> parserOf,
        Tallies tallies,
        Function<LocalDate, CompletableFuture<Optional<DayReport>>> reports,
        PastDays past,
        RecipeDocs recipes,
        PrepPlans plans,
        Care care,
        Supplier<Optional<Trust>> trust,
        PastPreps pastPreps,
        Supplier<String> keys,
        AuditTrail trail,
        Access access,
        LongSupplier nanos,
        NameErasing erasing,
        Supplier<NamesKept> namesKept) {}
