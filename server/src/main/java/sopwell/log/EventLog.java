package sopwell.log;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;

/**
 * The log of one stand. Events are only ever added; what names somebody in them can be taken out.
 *
 * <p>Threading: {@link #append} belongs to one thread, the desk's; the reading calls may come from
 * any thread and see only what is durable.
 */
public interface EventLog extends AutoCloseable {
    /** Changes when the log is replaced by an older copy, so that screens know to start over. */
    String epoch();

    /** The last durable place; 0 when the log is empty. */
    long lastSeq();

    /**
     * Makes the entries durable, all of them or none, and numbers their events.
     *
     * @return the recorded events, in order
     * @throws KeyTaken when a key is in the log already; nothing was written
     * @throws LogFault when the store failed; whether the entries were kept is unknown
     */
    List<Recorded> append(List<Entry> entries);

    /**
     * Writes something that changes nothing, to see whether the store takes it. Any thread may ask.
     *
     * @throws LogFault when it does not
     */
    void probe();

    /**
     * Hands on the events from one place to another, both included, in order.
     *
     * @throws LogFault when the store failed or what it holds is damaged
     */
    void read(long fromSeq, long toSeq, Consumer<Recorded> reader);

    /** The place of the newest event of a type at or before a place. */
    OptionalLong lastOf(Class<? extends Event> type, long atOrBeforeSeq);

    /** The places of all events of a type, in order. Only for types that are rare. */
    List<Long> placesOf(Class<? extends Event> type);

    /**
     * Prepares to take names out of what is in the log. They are gone with the append of the
     * names-erased event that has the digest which is returned, and not without it. What is
     * prepared replaces what was prepared before; so one at a time asks for this.
     *
     * @return empty when there is nothing to take out
     * @throws LogFault when the store failed or what it holds is damaged
     */
    Optional<Blanked> prepare(Blanking asked);

    /** What a key stands for, if it was ever accepted. */
    Optional<Kept> find(String key);

    @Override
    void close();
}
