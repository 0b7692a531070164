package sopwell;

import java.io.PrintStream;
import java.nio.file.Files;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sopwell.access.Access;
import sopwell.access.Actor;
import sopwell.access.Person;
import sopwell.audit.Who;
import sopwell.desk.DayBook;
import sopwell.desk.Desk;
import sopwell.desk.NameErasing;
import sopwell.desk.Replay;
import sopwell.orders.StandSettings;
import sopwell.storage.DataFolder;
import sopwell.storage.SqliteLog;
import sopwell.storage.TallyFile;

/** {@code sopwell erase}: takes names out of a stand that does not run. Not thread-safe. */
final class Erasure {
    private static final Optional<Who> BY = Optional.of(Who.AT_THIS_MACHINE);

    private final Config.Erase asked;
    private final InstantSource clock;
    private final PrintStream out;

    Erasure(Config.Erase asked, InstantSource clock, PrintStream out) {
        this.asked = asked;
        this.clock = clock;
        this.out = out;
    }

    /**
     * Takes the names out and says how many there were.
     *
     * @throws StartRefused when there is no stand in the folder, it runs, or it is not clear whose
     *     names are meant
     */
    void run() throws StartRefused {
        if (!Files.isDirectory(asked.data)) {
            throw new StartRefused(
                    "There is no folder " + asked.data + ". Name the stand's with --data.");
        }
        try (DataFolder folder = DataFolder.open(asked.data)) {
            if (!folder.hasLog()) {
                throw new StartRefused(
                        "There is no stand in " + asked.data + ". Name its folder with --data.");
            }
            StandSettings settings = StandFolder.settings(folder);
            Access access = StandAccess.open(folder, clock, Runnable::run, attempt -> {});
            Optional<String> name = name(access);
            try (SqliteLog log = folder.openLog(settings.stand());
                    TallyFile tallies = folder.openTallies(settings.stand());
                    Desk desk = new Desk(log, settings, clock, events -> {})) {
                DayBook book = new DayBook(log, settings, tallies.shelves());
                NameErasing erasing =
                        new NameErasing(log, desk::submit, book::doubt, book::recount);
                Set<String> kept = NameKeeping.namesOf(access, person -> !person.ended());
                int names = 0;
                for (LocalDate date : dates(log)) {
                    names +=
                            name.isPresent()
                                    ? erasing.person(date, name.get(), BY)
                                    : erasing.guests(date, BY)
                                            + erasing.staff(date, NameKeeping.in(kept), BY);
                }
                if (asked.person != null) {
                    access.roster()
                            .noted(id -> erasing.note(id, Who.AT_THIS_MACHINE))
                            .erasePerson(Actor.ANYBODY, asked.person);
                }
                out.println("erased: " + names + " names; what they were is gone from the log");
            }
        }
    }

    /** The one name that is meant; empty when a time is. */
    private Optional<String> name(Access access) throws StartRefused {
        long given =
                Stream.of(asked.before, asked.person, asked.name).filter(Objects::nonNull).count();
        if (given != 1 || (asked.name != null && asked.name.isBlank())) {
            throw new StartRefused("Say whose: one of --before, --person and --name.");
        }
        if (asked.person == null) {
            return Optional.ofNullable(asked.name).map(String::strip);
        }
        Person person =
                access.state().people().stream()
                        .filter(one -> one.id().equals(asked.person) && !one.name().isEmpty())
                        .findFirst()
                        .orElseThrow(
                                () ->
                                        new StartRefused(
                                                "Nobody with the id "
                                                        + asked.person
                                                        + " has a name here."));
        if (!person.ended()) {
            throw new StartRefused(
                    person.id() + " still works here. Take them off the roster first.");
        }
        return Optional.of(person.name());
    }

    private List<LocalDate> dates(SqliteLog log) {
        LocalDate last = asked.before == null ? LocalDate.MAX : asked.before.minusDays(1);
        return Replay.dates(log, LocalDate.MIN, last);
    }
}
