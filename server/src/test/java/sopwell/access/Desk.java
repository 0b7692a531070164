package sopwell.access;

import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;

/** An access with a clock that is set by hand, and a hash that counts what it is asked. */
final class Desk {
    static final String PASSWORD = "correct horse";
    static final String PIN = "4711";

    final AtomicLong nowMs = new AtomicLong(1_000_000);
    final AtomicInteger looked = new AtomicInteger();
    final List<AccessState> kept = new ArrayList<>();
    final List<Witness.Attempt> attempts = new ArrayList<>();
    private final AtomicInteger chance = new AtomicInteger();
    private Access access;

    Desk() {
        this(Runnable::run);
    }

    Desk(Executor hashing) {
        access = new Access(AccessState.EMPTY, tools(hashing));
    }

    Access access() {
        return access;
    }

    /** The same over what was kept, as after a start. */
    void restart() {
        access = new Access(kept.get(kept.size() - 1), tools(Runnable::run));
    }

    void later(long millis) {
        nowMs.addAndGet(millis);
    }

    /** A stand with an owner, s1. */
    static Desk closed() {
        return closed(Runnable::run);
    }

    static Desk closed(Executor hashing) {
        Desk desk = new Desk(hashing);
        value(desk.access.roster().foundOwner("Olga", PASSWORD));
        return desk;
    }

    /** Somebody with a PIN. */
    Person person(String name, Role role) {
        Person person = value(access.roster().addPerson(Actor.ANYBODY, name, role));
        return value(access.roster().setPin(Actor.ANYBODY, person.id(), PIN));
    }

    /** What a browser at a newly paired device shows. */
    Shown paired(Use use) {
        PairingOffer offer = value(access.roster().offer("a device", use));
        return Shown.of("", value(access.roster().pairByCode(offer.code(), "x")).token(), "");
    }

    /** What the browser shows after signing in. */
    static Shown after(Shown before, SignedIn in) {
        return new Shown(
                Secrets.hash(in.sessionToken()),
                in.deviceToken().isEmpty() ? before.device() : Secrets.hash(in.deviceToken()),
                "");
    }

    static <A> A value(Outcome<A> outcome) {
        return outcome.value()
                .orElseThrow(() -> new AssertionError(outcome.refused().orElseThrow().toString()));
    }

    static <A> A value(CompletableFuture<Outcome<A>> outcome) {
        return value(outcome.join());
    }

    static <A> Refused.Why why(CompletableFuture<Outcome<A>> outcome) {
        return why(outcome.join());
    }

    static <A> Refused.Why why(Outcome<A> outcome) {
        return outcome.refused().map(Refused::why).orElse(null);
    }

    private Tools tools(Executor hashing) {
        InstantSource clock = () -> Instant.ofEpochMilli(nowMs.get());
        return new Tools(new Plain(), hashing, this::bytes, clock, kept::add, attempts::add);
    }

    private byte[] bytes() {
        byte[] bytes = new byte[32];
        int n = chance.incrementAndGet();
        bytes[0] = (byte) n;
        bytes[1] = (byte) (n >> 5);
        return bytes;
    }

    /** No hash at all, which says how often it was asked. */
    private final class Plain implements Tools.Hasher {
        @Override
        public String hash(String secret) {
            return "plain " + secret;
        }

        @Override
        public boolean matches(String secret, String hash) {
            looked.incrementAndGet();
            return hash.equals("plain " + secret);
        }
    }
}
