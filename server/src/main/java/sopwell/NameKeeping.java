package sopwell;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import sopwell.access.Access;
import sopwell.access.Person;
import sopwell.audit.AuditEvent.NamesErased;
import sopwell.audit.AuditEvent.Of;
import sopwell.desk.AuditTrail;
import sopwell.desk.ClockState;
import sopwell.desk.NameErasing;
import sopwell.desk.NamesKept;
import sopwell.desk.Replay;
import sopwell.desk.SureDate;
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
    private final AtomicReference<SureDate> looked = new AtomicReference<>();
    private final SpareTime spare;

    /** The newest date of which names of a kind are gone; only the task asks for it. */
    private final Map<Of, LocalDate> done = new EnumMap<>(Of.class);

    /** Whose names were kept at the last look; only the task asks for it. */
    private Set<String> keptThen = Set.of();

    /**
     * What time it is, and where.
     *
     * @param notBeforeMs no box's clock that is right says an earlier time
     */
    record Time(Supplier<ClockState> clock, ZoneId zone, long notBeforeMs) {
        /** Today by the stand, or by its box where that was put back and may be right. */
        LocalDate today() {
            ClockState state = clock.get();
            boolean putBack =
                    state.trust() != ClockState.Trust.RIGHT && state.boxMs() >= notBeforeMs;
            return date(putBack ? Math.min(state.boxMs(), state.standMs()) : state.standMs());
        }

        private LocalDate date(long atMs) {
            return LocalDate.ofInstant(Instant.ofEpochMilli(atMs), zone);
        }
    }

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

    /** How long names are kept, and how far the date was believed at the last look. */
    NamesKept state() {
        return new NamesKept(
                rule.guestNamesDays(), rule.staffNamesDays(), Optional.ofNullable(looked.get()));
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
        SureDate date = look();
        LocalDate guestsBefore = date.sure().minusDays(rule.guestNamesDays());
        int guests =
                each(Of.GUESTS, guestsBefore, day -> erasing.guests(day, Optional.empty()), rest);
        LocalDate staffBefore = date.sure().minusDays(rule.staffNamesDays());
        long beforeMs = staffBefore.atStartOfDay(time.zone()).toInstant().toEpochMilli();
        if (date.isSure()) {
            access.roster()
                    .noted(person -> erasing.note(person, AuditTrail.BY_ITSELF))
                    .forgetLeft(beforeMs);
        }
        Set<String> kept = namesOf(access, person -> true);
        if (!kept.containsAll(keptThen)) {
            // Whoever was kept so far on days that are done is due there now.
            done.put(Of.STAFF, LocalDate.MIN);
        }
        keptThen = kept;
        int staff =
                each(
                        Of.STAFF,
                        staffBefore,
                        day -> erasing.staff(day, in(kept), Optional.empty()),
                        rest);
        if (guests + staff > 0) {
            Told.of(Happening.NAMES_ERASED).with("guests", guests).with("staff", staff).to(LOGGER);
        }
    }

    /** How far today's date is believed. What was sure once in this run is sure as it goes on. */
    private SureDate look() {
        LocalDate known =
                Optional.ofNullable(looked.get()).map(SureDate::sure).orElse(LocalDate.MIN);
        List<LocalDate> days = Replay.dates(log, LocalDate.MIN, LocalDate.MAX);
        SureDate date = SureDate.of(time.today(), days, known);
        looked.set(date);
        if (!date.isSure()) {
            Told.of(Happening.NAMES_WAIT)
                    .own("today", date.today().toString())
                    .own("sure", date.sure().toString())
                    .to(LOGGER);
        }
        return date;
    }

    /** The names of those people whose names stay, in small letters. */
    static Set<String> namesOf(Access access, Predicate<Person> who) {
        return access.state().people().stream()
                .filter(who)
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
