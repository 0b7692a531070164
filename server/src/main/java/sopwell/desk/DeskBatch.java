package sopwell.desk;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import sopwell.Check;
import sopwell.audit.AuditEvent.NamesErased;
import sopwell.log.Entry;
import sopwell.log.Event;
import sopwell.log.EventLog;
import sopwell.log.Kept;
import sopwell.log.KeyTaken;
import sopwell.log.LogFault;
import sopwell.log.Recorded;
import sopwell.orders.Decision;
import sopwell.orders.Reason;
import sopwell.orders.StandSettings;

/**
 * One drained batch at a time: decide, append, hand on, answer. Belongs to the desk's thread.
 *
 * <p>The stand is changed while deciding, so that a later command of the batch sees the earlier
 * ones. If the batch then can't be kept, that stand is worthless and is rebuilt from the log.
 */
final class DeskBatch {
    private final EventLog log;
    private final StandSettings settings;
    private final InstantSource clock;
    private final Consumer<List<Recorded>> committed;
    private final DiskGuard guard;

    /** Keys of the newest day, so that the usual repeat never reaches the rules. */
    private final Set<String> keys = new HashSet<>();

    private Stand stand;
    private boolean worthless;

    DeskBatch(
            EventLog log,
            StandSettings settings,
            InstantSource clock,
            Consumer<List<Recorded>> committed,
            DiskGuard guard) {
        this.log = log;
        this.settings = settings;
        this.clock = clock;
        this.committed = committed;
        this.guard = guard;
    }

    /** Throws the stand away and reads it from the log again. */
    void rebuild() {
        worthless = true;
        keys.clear();
        stand = Replay.newestDay(log, settings, recorded -> keys.add(recorded.key()));
        worthless = false;
    }

    /** What the next command is decided by. */
    Stand stand() {
        return stand;
    }

    /** Answers every request, whatever happens. */
    void run(List<DeskRequest> requests) {
        Map<DeskRequest, Runnable> replies = new LinkedHashMap<>();
        List<DeskRequest> left = new ArrayList<>(requests);
        try {
            if (worthless) {
                rebuild();
                committed.accept(List.of());
            }
            while (!left.isEmpty()) {
                left = attempt(left, replies);
            }
        } catch (RuntimeException fault) {
            worthless = true;
            left.forEach(request -> replies.put(request, fail(request, fault)));
        }
        replies.values().forEach(Runnable::run);
    }

    /** Tries to keep all of these; what must be tried again without a troublemaker is returned. */
    private List<DeskRequest> attempt(List<DeskRequest> requests, Map<DeskRequest, Runnable> done) {
        Draft draft = new Draft(stand.seq());
        for (DeskRequest request : requests) {
            try {
                decide(request, draft);
            } catch (LogFault fault) {
                throw fault;
            } catch (RuntimeException bug) {
                done.put(request, fail(request, bug));
                return retryWithout(request, requests);
            }
        }
        if (!draft.entries.isEmpty()) {
            try {
                List<Recorded> recorded = log.append(draft.entries);
                Check.that(log.lastSeq() == draft.lastSeq, "the log numbers events as the desk");
                committed.accept(recorded);
                if (recorded.stream().anyMatch(this::changesTheStand)) {
                    rebuild();
                    committed.accept(List.of());
                }
            } catch (KeyTaken taken) {
                DeskRequest repeat = draft.askedBy.get(taken.key());
                done.put(repeat, answerKept(repeat, log.find(taken.key()).orElseThrow()));
                return retryWithout(repeat, requests);
            } catch (LogFault fault) {
                guard.failed(fault);
                throw fault;
            }
        }
        done.putAll(draft.replies);
        return List.of();
    }

    /** What is known of the open day has the names that are gone from the log. */
    private boolean changesTheStand(Recorded recorded) {
        return recorded.event() instanceof NamesErased erased
                && stand.orders().date().filter(erased.date()::equals).isPresent();
    }

    private List<DeskRequest> retryWithout(DeskRequest one, List<DeskRequest> requests) {
        rebuild();
        return requests.stream().filter(request -> !request.equals(one)).toList();
    }

    private void decide(DeskRequest request, Draft draft) {
        DeskRequest twin = draft.askedBy.get(request.key());
        if (twin != null) {
            draft.replies.put(request, answerTwin(request, twin, draft));
            return;
        }
        if (keys.contains(request.key())) {
            Kept kept = log.find(request.key()).orElseThrow();
            draft.replies.put(request, answerKept(request, kept));
            return;
        }
        long nowMs = Math.max(clock.millis(), stand.atMs());
        Decision decision =
                guard.lacksRoomFor(request.command())
                        ? Decision.refused(Reason.NO_ROOM)
                        : StandRules.decide(stand, request.command(), nowMs);
        if (decision.events().isEmpty()) {
            // What is refused, or nothing to do, today may be the repeat of what another day kept.
            Optional<Kept> kept = log.find(request.key());
            Runnable now =
                    answer(
                            request,
                            decision.refusal()
                                    .map(Answer::refused)
                                    .orElseGet(() -> Answer.done(List.of())));
            draft.replies.put(request, kept.map(k -> answerKept(request, k)).orElse(now));
            return;
        }
        List<Recorded> recorded = draft.add(request, decision.events(), nowMs);
        recorded.forEach(stand::apply);
        keys.add(request.key());
        draft.replies.put(request, answer(request, Answer.done(recorded)));
    }

    private static Runnable answerTwin(DeskRequest request, DeskRequest twin, Draft draft) {
        return request.fingerprint().equals(twin.fingerprint())
                ? answer(request, Answer.repeated(draft.recordedFor.get(twin.key())))
                : answer(request, Answer.keyReused());
    }

    private static Runnable answerKept(DeskRequest request, Kept kept) {
        return kept.isOf(request.fingerprint())
                ? answer(request, Answer.repeated(kept.events()))
                : answer(request, Answer.keyReused());
    }

    private static Runnable answer(DeskRequest request, Answer answer) {
        return () -> request.answer().complete(answer);
    }

    private static Runnable fail(DeskRequest request, RuntimeException fault) {
        return () -> request.answer().completeExceptionally(fault);
    }

    /** What one attempt has come to so far. */
    private static final class Draft {
        private final List<Entry> entries = new ArrayList<>();
        private final Map<String, DeskRequest> askedBy = new HashMap<>();
        private final Map<String, List<Recorded>> recordedFor = new HashMap<>();
        private final Map<DeskRequest, Runnable> replies = new LinkedHashMap<>();
        private long lastSeq;

        private Draft(long lastSeq) {
            this.lastSeq = lastSeq;
        }

        private List<Recorded> add(DeskRequest request, List<Event> events, long nowMs) {
            List<Recorded> recorded = new ArrayList<>();
            for (Event event : events) {
                lastSeq++;
                recorded.add(new Recorded(lastSeq, nowMs, request.key(), recorded.size(), event));
            }
            entries.add(new Entry(nowMs, request.key(), request.fingerprint(), events));
            askedBy.put(request.key(), request);
            recordedFor.put(request.key(), recorded);
            return recorded;
        }
    }
}
