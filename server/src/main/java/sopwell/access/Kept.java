package sopwell.access;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * The state in force, kept before it is in force. Reading never waits for the disk. Thread-safe;
 * whoever changes holds the monitor, so that looking and changing are one step.
 */
final class Kept {
    private final Consumer<AccessState> keeper;
    private final Map<String, Session> sessions = new ConcurrentHashMap<>();
    private volatile View view;

    /** The state with what it is asked for at each request. Immutable. */
    private record View(
            AccessState state, Map<String, Device> devices, Map<String, ProgramToken> tokens) {
        static View of(AccessState state) {
            Map<String, Device> devices = new HashMap<>();
            Map<String, ProgramToken> tokens = new HashMap<>();
            state.devices().stream()
                    .filter(device -> !device.ended())
                    .forEach(device -> devices.put(device.tokenHash(), device));
            state.tokens().stream()
                    .filter(token -> !token.ended())
                    .forEach(token -> tokens.put(token.tokenHash(), token));
            return new View(state, devices, tokens);
        }
    }

    Kept(AccessState state, Consumer<AccessState> keeper) {
        this.keeper = keeper;
        this.view = View.of(state);
        state.sessions().forEach(session -> sessions.put(session.tokenHash(), session));
    }

    AccessState state() {
        return view.state();
    }

    /** The device that shows this, or null. */
    Device deviceOf(String tokenHash) {
        return view.devices().get(tokenHash);
    }

    /** The program that shows this, or null. */
    ProgramToken tokenOf(String tokenHash) {
        return view.tokens().get(tokenHash);
    }

    /** The session that shows this, be it over or not, or null. */
    Session sessionOf(String tokenHash) {
        return sessions.get(tokenHash);
    }

    /** Notes that a session was seen; not for a moment in which it ended. */
    void seen(Session session, long nowMs) {
        sessions.replace(session.tokenHash(), session, session.seen(nowMs));
    }

    /** Changes what is kept, and keeps it. */
    synchronized void change(UnaryOperator<AccessState> change) {
        AccessState next = change.apply(state()).withSessions(List.copyOf(sessions.values()));
        keeper.accept(next);
        view = View.of(next);
    }

    /** Puts a session in the place of another, or beside all; keeps it. */
    synchronized void begin(Session session, String instead) {
        sessions.remove(instead);
        if (sessions.size() >= AccessLimits.SESSIONS_MAX) {
            sessions.values().stream()
                    .min(java.util.Comparator.comparingLong(Session::seenAtMs))
                    .ifPresent(oldest -> sessions.remove(oldest.tokenHash()));
        }
        sessions.put(session.tokenHash(), session);
        change(state -> state);
    }

    /** Ends sessions; keeps that, unless there were none. */
    synchronized void end(java.util.function.Predicate<Session> which) {
        if (sessions.values().removeIf(which)) {
            change(state -> state);
        }
    }

    /** Keeps when each session was seen last, unless that is kept already. */
    synchronized void keepSeen() {
        if (!java.util.Set.copyOf(state().sessions())
                .equals(java.util.Set.copyOf(sessions.values()))) {
            change(state -> state);
        }
    }
}
