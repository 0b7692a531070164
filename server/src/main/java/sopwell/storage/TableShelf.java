package sopwell.storage;

import java.io.IOException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;
import sopwell.log.LogFault;
import sopwell.mix.TallyShelf;

/** One kind of tallies in a {@link TallyFile}. Thread-safe, since the file is. */
final class TableShelf<T> implements TallyShelf<T> {
    private static final String ALL =
            "SELECT date, last_seq, body FROM tallies WHERE stand = ? AND what = ? ORDER BY date";
    private static final String ONE =
            "SELECT date, last_seq, body FROM tallies WHERE stand = ? AND what = ? AND date = ?";
    private static final String PUT =
            "INSERT OR REPLACE INTO tallies (stand, what, date, last_seq, body)"
                    + " VALUES (?, ?, ?, ?, ?)";
    private static final String FORGET =
            "DELETE FROM tallies WHERE stand = ? AND what = ? AND date = ?";
    private static final String CLEAR = "DELETE FROM tallies WHERE stand = ? AND what = ?";

    private final Place place;
    private final String what;
    private final Function<T, String> write;
    private final Supplier<Reading<T>> readers;

    /** The file, and whose tallies are meant. */
    record Place(TallyFile file, String stand) {}

    /** Reads a kept tally. */
    interface Reading<T> {
        T read(LocalDate date, String body) throws IOException;
    }

    /**
     * A shelf.
     *
     * @param readers make what reads the tallies of one call
     */
    TableShelf(Place place, String what, Function<T, String> write, Supplier<Reading<T>> readers) {
        this.place = place;
        this.what = what;
        this.write = write;
        this.readers = readers;
    }

    @Override
    public List<Shelved<T>> of(Collection<LocalDate> dates) {
        try {
            return place.file().with(connection -> some(connection, dates));
        } catch (SQLException | DateTimeParseException damaged) {
            place.file().startOver(damaged);
            return List.of();
        }
    }

    @Override
    public List<Shelved<T>> all() {
        try {
            return place.file().with(this::every);
        } catch (SQLException | DateTimeParseException damaged) {
            throw new LogFault(
                    "What is kept of past days is damaged ("
                            + damaged.getMessage()
                            + "). \"sopwell rebuild\" counts them anew.",
                    damaged);
        }
    }

    @Override
    public void put(List<Shelved<T>> tallies) {
        try {
            place.file().with(connection -> put(connection, tallies));
        } catch (SQLException notKept) {
            place.file().startOver(notKept);
        }
    }

    /** What is counted anew may be lost with the power; what is gone must not come back. */
    @Override
    public void forget(LocalDate date) {
        try {
            place.file().surely(connection -> forget(connection, date));
        } catch (SQLException damaged) {
            place.file().startOver(damaged);
        }
    }

    @Override
    public void clear() {
        try {
            place.file()
                    .with(
                            connection -> {
                                try (PreparedStatement all = prepare(connection, CLEAR)) {
                                    return all.executeUpdate();
                                }
                            });
        } catch (SQLException damaged) {
            place.file().startOver(damaged);
        }
    }

    private List<Shelved<T>> some(Connection connection, Collection<LocalDate> dates)
            throws SQLException {
        try (PreparedStatement query = prepare(connection, ONE)) {
            Reading<T> reading = readers.get();
            List<Shelved<T>> found = new ArrayList<>();
            for (LocalDate date : new TreeSet<>(dates)) {
                query.setString(3, date.toString());
                read(query, reading, found);
            }
            return found;
        }
    }

    private List<Shelved<T>> every(Connection connection) throws SQLException {
        try (PreparedStatement query = prepare(connection, ALL)) {
            List<Shelved<T>> found = new ArrayList<>();
            read(query, readers.get(), found);
            return found;
        }
    }

    private int put(Connection connection, List<Shelved<T>> tallies) throws SQLException {
        connection.setAutoCommit(false);
        try (PreparedStatement row = prepare(connection, PUT)) {
            for (Shelved<T> kept : tallies) {
                row.setString(3, kept.date().toString());
                row.setLong(4, kept.lastSeq());
                row.setString(5, write.apply(kept.tally().orElseThrow()));
                row.executeUpdate();
            }
        }
        connection.commit();
        connection.setAutoCommit(true);
        return tallies.size();
    }

    private int forget(Connection connection, LocalDate date) throws SQLException {
        try (PreparedStatement one = prepare(connection, FORGET)) {
            one.setString(3, date.toString());
            return one.executeUpdate();
        }
    }

    private PreparedStatement prepare(Connection connection, String sql) throws SQLException {
        PreparedStatement statement = connection.prepareStatement(sql);
        statement.setString(1, place.stand());
        statement.setString(2, what);
        return statement;
    }

    /** What can't be read is handed on as such: it is one day's, and the others are well. */
    private static <T> void read(
            PreparedStatement query, Reading<T> reading, List<Shelved<T>> found)
            throws SQLException {
        try (ResultSet rows = query.executeQuery()) {
            while (rows.next()) {
                LocalDate date = LocalDate.parse(rows.getString(1));
                Optional<T> tally;
                try {
                    tally = Optional.of(reading.read(date, rows.getString(3)));
                } catch (IOException unreadable) {
                    tally = Optional.empty();
                }
                found.add(new Shelved<>(date, rows.getLong(2), tally));
            }
        }
    }
}
