package sopwell;

import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import sopwell.access.Access;
import sopwell.access.Person;
import sopwell.audit.AuditEvent.NamesErased;
import sopwell.audit.AuditEvent.Of;
import sopwell.desk.NameErasing;
import sopwell.desk.Replay;
import sopwell.journal.Happening;
import sopwell.journal.Told;
import sopwell.log.EventLog;
import sopwell.storage.PrivacyLimits;
import sopwell.storage.PrivacyRule;

/**
 * Has people's names taken out of the log once they were kept for as long as the owner said: soon
 * after a start and then every day, a business day at a time with a rest after each. Thread-safe.
 */
final class NameKeeping implements AutoCloseable {
    private static final Logger LOGGER = Logger.getLogger(NameKeeping.class.getName());

    private final EventLog log;
    private final NameErasing erasing;
    private final Access access;
    private final PrivacyRule rule;
    private final Time time;
    private final SpareTime spare;

    /** The newest date of which names of a kind are gone; only the task asks for it. */
    private final Map<Of, LocalDate> done = new EnumMap<>(Of.class);

    /** Whose names were kept at the last look; only the task asks for it. */
    private Set<String> keptThen = Set.of();

    /** What time it is, and where. */
    record Time(InstantSource clock, ZoneId zone) {}

    /** Takes the names of one date out. */
    private interface Erasing {
        int on(LocalDate date);
    }

    /** Looks for names that are due, in a while and then every day. */
    NameKeeping(EventLog log, NameErasing erasing, Access access, PrivacyRule rule, Time time) {
        this.log = log;
        this.erasing = erasing;
        this.access = access;
        this.rule = rule;
        this.time = time;
        this.spare =
                new SpareTime(
                        "names",
                        this::turn,
                        PrivacyLimits.ERASE_FIRST_SECONDS,
                        PrivacyLimits.ERASE_SECONDS);
    }

    @Override
    public void close() {
        spare.close();
    }

    /** What fails is tried again the next day. */
    private void turn(SpareTime here) throws InterruptedException {
        try {
            eraseDue(() -> here.rests(PrivacyLimits.ERASE_PAUSE_MILLIS));
        } catch (RuntimeException fault) {
            Told.of(Happening.NAMES_STAY).fault(fault).to(LOGGER);
        }
    }

    /** A rest between two dates; whether it is to go on after it. */
    interface Rest {
        boolean rests() throws InterruptedException;
    }

    /** Takes out all that is due. */
    void eraseDue(Rest rest) throws InterruptedException {
        if (done.isEmpty()) {
            learn();
        }
        LocalDate today = LocalDate.ofInstant(time.clock().instant(), time.zone());
        LocalDate guestsBefore = today.minusDays(rule.guestNamesDays());
        int guests =
                each(Of.GUESTS, guestsBefore, date -> erasing.guests(date, Optional.empty()), rest);
        LocalDate staffBefore = today.minusDays(rule.staffNamesDays());
        long beforeMs = staffBefore.atStartOfDay(time.zone()).toInstant().toEpochMilli();
        access.roster().forgetLeft(beforeMs);
        Set<String> kept = namesKept(access);
        if (!kept.containsAll(keptThen)) {
            // Whoever was kept so far on days that are done is due there now.
            done.put(Of.STAFF, LocalDate.MIN);
        }
        keptThen = kept;
        int staff =
                each(
                        Of.STAFF,
                        staffBefore,
                        date -> erasing.staff(date, in(kept), Optional.empty()),
                        rest);
        if (guests + staff > 0) {
            Told.of(Happening.NAMES_ERASED).with("guests", guests).with("staff", staff).to(LOGGER);
        }
    }

    /** The names of all people that are still kept, in small letters. */
    static Set<String> namesKept(Access access) {
        return access.state().people().stream()
                .map(Person::name)
                .map(name -> name.toLowerCase(Locale.ROOT))
                .collect(Collectors.toSet());
    }

    /** Whether a name is among them. */
    static Predicate<String> in(Set<String> kept) {
        return name -> kept.contains(name.toLowerCase(Locale.ROOT));
    }

    private int each(Of of, LocalDate before, Erasing one, Rest rest) throws InterruptedException {
        LocalDate after = done.getOrDefault(of, LocalDate.MIN);
        int names = 0;
        for (LocalDate date : Replay.dates(log, after, before.minusDays(1))) {
            if (date.equals(after)) {
                continue;
            }
            names += one.on(date);
            done.put(of, date);
            if (!rest.rests()) {
                break;
            }
        }
        return names;
    }

    /**
     * What the log says of earlier days: dates before the newest such one are done. Staff's are
     * looked at anew after each start, because the roster may have changed since.
     */
    private void learn() {
        List<Long> places = log.placesOf(NamesErased.class);
        for (long place : places) {
            log.read(place, place, recorded -> learn((NamesErased) recorded.event()));
        }
        done.putIfAbsent(Of.GUESTS, LocalDate.MIN);
    }

    private void learn(NamesErased erased) {
        if (erased.of() == Of.GUESTS && erased.order().isEmpty()) {
            done.merge(erased.of(), erased.date(), (a, b) -> a.isAfter(b) ? a : b);
        }
    }
}
