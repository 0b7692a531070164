package sopwell.kitchen;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.Check;

/**
 * The queries of the newest business day. Not thread-safe: its owner is one thread.
 *
 * <p>A part has at most one open query. A query lapses when its part goes up or leaves its order,
 * and when the day closes. An answer is in sight of its station until it is seen.
 */
public final class Queries {
    private final Map<QueryId, Query> all = new LinkedHashMap<>();
    private final Map<PartId, Query> open = new LinkedHashMap<>();
    private final Map<PartId, Query> unseen = new HashMap<>();
    private final Map<PartId, Integer> asked = new HashMap<>();
    private LocalDate date;

    /** Every query of the day, in the order in which they were asked. */
    public Collection<Query> all() {
        return Collections.unmodifiableCollection(all.values());
    }

    /** The queries that wait for the counter, oldest first. */
    public Collection<Query> open() {
        return Collections.unmodifiableCollection(open.values());
    }

    public Optional<Query> find(QueryId id) {
        return Optional.ofNullable(all.get(id));
    }

    /** The query that a part waits for, if it does. */
    public Optional<Query> openOn(PartId part) {
        return Optional.ofNullable(open.get(part));
    }

    /** What a part's station must see: the open query, or else an answer that it has not seen. */
    public Optional<Query> inSight(PartId part) {
        return openOn(part).or(() -> Optional.ofNullable(unseen.get(part)));
    }

    boolean hasUnseenAnswer(PartId part) {
        return unseen.containsKey(part);
    }

    /** The id of the next query about a part. */
    QueryId next(PartId part) {
        return new QueryId(part, asked.getOrDefault(part, 0) + 1);
    }

    void apply(QueryEvent event, long atMs) {
        PartId part = event.query().part();
        switch (event.kind()) {
            case ASKED -> {
                Query query = Query.asked((QueryEvent.QueryAsked) event, atMs);
                Check.that(!open.containsKey(part), "a part has one open query");
                asked.put(part, query.id().place());
                unseen.remove(part);
                all.put(query.id(), query);
                open.put(part, query);
            }
            case ANSWERED -> {
                Query query = open.remove(part);
                Check.that(
                        query != null && query.id().equals(event.query()),
                        "an answer is to an open query");
                Query answered = query.answered((QueryEvent.QueryAnswered) event, atMs);
                all.put(answered.id(), answered);
                unseen.put(part, answered);
            }
        }
    }

    void seen(PartId part) {
        unseen.remove(part);
    }

    /** The part goes up or leaves its order: nobody waits any more. */
    void lapse(PartId part, long atMs) {
        unseen.remove(part);
        Query query = open.remove(part);
        if (query != null) {
            all.put(query.id(), query.lapsed(atMs));
        }
    }

    void lapseAll(long atMs) {
        List.copyOf(open.keySet()).forEach(part -> lapse(part, atMs));
        unseen.clear();
    }

    /** A day opens; another date starts with nothing asked. Answers whether it is another date. */
    boolean begin(LocalDate opened) {
        boolean another = !opened.equals(date);
        if (another) {
            all.clear();
            asked.clear();
        }
        date = opened;
        return another;
    }
}
