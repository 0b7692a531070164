package sopwell.access;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import sopwell.Limits;

/**
 * Says who may do what from now on: staff, devices, programs. Thread-safe. What ends, ends its
 * sessions with it. That the actor may change access at all is for the caller to ask; what only an
 * owner may do is asked here.
 *
 * <p>Each change is noted after it was found to be allowed and before it is made: a note may stand
 * for a change that the disk then did not take, but no change is without its note.
 */
public final class Roster {
    /** What the places begin with at which the owner's password is tried without a name. */
    private static final String OWNER = "owner@";

    private final Kept kept;
    private final Throttle throttle;
    private final Tools tools;
    private final Pairings pairings;
    private final Noting noting;

    Roster(Kept kept, Throttle throttle, Tools tools) {
        this(kept, throttle, tools, new Pairings(), Noting.NOWHERE);
    }

    private Roster(Kept kept, Throttle throttle, Tools tools, Pairings pairings, Noting noting) {
        this.kept = kept;
        this.throttle = throttle;
        this.tools = tools;
        this.pairings = pairings;
        this.noting = noting;
    }

    /** The same roster, whose changes are noted so. */
    public Roster noted(Noting other) {
        return new Roster(kept, throttle, tools, pairings, other);
    }

    /**
     * Gives the first owner a password, and makes that owner if there is none; all tries are
     * forgotten. For the command line, whose user has the data folder anyway.
     */
    public Outcome<Person> foundOwner(String name, String password) {
        if (!Secrets.isPassword(password)) {
            return RosterRules.noPassword();
        }
        String hash = tools.hasher().hash(password);
        synchronized (kept) {
            Person owner =
                    kept.state().people().stream()
                            .filter(p -> p.role() == Role.OWNER && !p.ended())
                            .findFirst()
                            .orElseGet(() -> Person.fresh(nextPerson(), name, Role.OWNER))
                            .withPassword(hash);
            kept.change(state -> state.with(owner));
            throttle.forget(place -> true);
            endSessionsOf(owner.id());
            return Outcome.done(owner);
        }
    }

    /** Takes somebody on. */
    public Outcome<Person> addPerson(Actor by, String name, Role role) {
        synchronized (kept) {
            Optional<Refused> refused =
                    RosterRules.badName(name)
                            .or(() -> RosterRules.badRole(kept.state(), by, null, role));
            if (refused.isEmpty() && kept.state().people().size() >= AccessLimits.PEOPLE_MAX) {
                refused = Optional.of(Refused.of(Refused.Why.TOO_MANY, AccessLimits.PEOPLE_MAX));
            }
            if (refused.isPresent()) {
                return Outcome.not(refused.get());
            }
            Person person = Person.fresh(nextPerson(), name.strip(), role);
            noting.note(person.id());
            kept.change(state -> state.with(person));
            return Outcome.done(person);
        }
    }

    /** Calls somebody by another name. */
    public Outcome<Person> rename(Actor by, String id, String name) {
        return change(by, id, p -> p.withName(name.strip()), p -> RosterRules.badName(name));
    }

    /** Gives somebody another role. */
    public Outcome<Person> setRole(Actor by, String id, Role role) {
        return change(
                by,
                id,
                p -> p.withRole(role),
                p ->
                        role != Role.OWNER && RosterRules.isLastOwner(kept.state(), p)
                                ? Optional.of(Refused.of(Refused.Why.LAST_OWNER))
                                : RosterRules.badRole(kept.state(), by, p.role(), role));
    }

    /** Somebody no longer works here: PIN, password and sessions are gone at once. */
    public Outcome<Person> endPerson(Actor by, String id) {
        synchronized (kept) {
            Outcome<Person> ended =
                    change(
                            by,
                            id,
                            p -> p.gone(tools.clock().millis()),
                            p -> RosterRules.notLastOwner(kept.state(), p));
            ended.value().ifPresent(person -> endSessionsOf(person.id()));
            return ended;
        }
    }

    /** The same, and the name is forgotten too, also of somebody who left long ago. */
    public Outcome<Person> erasePerson(Actor by, String id) {
        synchronized (kept) {
            Optional<Person> left =
                    kept.state().people().stream()
                            .filter(p -> p.id().equals(id) && p.ended() && !p.name().isEmpty())
                            .findFirst();
            if (left.isPresent()) {
                return change(by, left, p -> p.withName(""), p -> Optional.empty());
            }
            long nowMs = tools.clock().millis();
            Outcome<Person> ended =
                    change(
                            by,
                            id,
                            p -> p.gone(nowMs).withName(""),
                            p -> RosterRules.notLastOwner(kept.state(), p));
            ended.value().ifPresent(person -> endSessionsOf(person.id()));
            return ended;
        }
    }

    /**
     * Forgets the names of those who left before a time. Of whom it is not known when they left, or
     * known to be later than now, it is taken to be now.
     *
     * @return how many were forgotten
     */
    public int forgetLeft(long beforeMs) {
        synchronized (kept) {
            long nowMs = tools.clock().millis();
            int forgotten = 0;
            for (Person person : kept.state().people()) {
                if (!person.ended() || person.name().isEmpty()) {
                    continue;
                }
                if (person.endedAtMs() == 0 || person.endedAtMs() > nowMs) {
                    kept.change(state -> state.with(person.gone(nowMs)));
                } else if (person.endedAtMs() < beforeMs) {
                    noting.note(person.id());
                    kept.change(state -> state.with(person.withName("")));
                    forgotten++;
                }
            }
            return forgotten;
        }
    }

    /** Sets somebody's PIN, of which no wrong tries are remembered; see {@link #secret}. */
    public CompletableFuture<Outcome<Person>> setPin(Actor by, String id, String pin) {
        if (!Secrets.isPin(pin)) {
            return CompletableFuture.completedFuture(
                    Outcome.not(
                            Refused.Why.PIN_FORM,
                            AccessLimits.PIN_DIGITS_MIN,
                            AccessLimits.PIN_DIGITS_MAX));
        }
        return hashed(
                pin,
                hash -> secret(by, id, p -> p.withPin(hash), p -> Optional.empty(), Throttle.PIN));
    }

    /** Sets a lead's or owner's password; see {@link #secret}. */
    public CompletableFuture<Outcome<Person>> setPassword(Actor by, String id, String password) {
        if (!Secrets.isPassword(password)) {
            return CompletableFuture.completedFuture(RosterRules.noPassword());
        }
        return hashed(
                password,
                hash ->
                        secret(
                                by,
                                id,
                                p -> p.withPassword(hash),
                                RosterRules::noPasswordHere,
                                Throttle.PASSWORD));
    }

    /** Forgets somebody's wrong tries at every place. */
    public Outcome<Person> unlock(Actor by, String id) {
        synchronized (kept) {
            Outcome<Person> found = change(by, id, p -> p, p -> Optional.empty());
            found.value()
                    .ifPresent(
                            person ->
                                    throttle.forget(
                                            place ->
                                                    place.startsWith(person.id() + "@")
                                                            || (person.role() == Role.OWNER
                                                                    && place.startsWith(OWNER))));
            return found;
        }
    }

    /** A code for one more device. */
    public Outcome<PairingOffer> offer(String name, Use use) {
        if (!RosterRules.isName(name)) {
            return Outcome.not(Refused.Why.NAME_FORM, Limits.NAME_CHARS_MAX);
        }
        String code = Secrets.code(tools.chance().get());
        long nowMs = tools.clock().millis();
        long untilMs = nowMs + AccessLimits.PAIRING_MILLIS_MAX;
        return pairings.offer(code, new Pairings.Offer(name.strip(), use, untilMs), nowMs)
                ? Outcome.done(new PairingOffer(code, untilMs))
                : Outcome.not(Refused.Why.TOO_MANY, AccessLimits.PAIRINGS_MAX);
    }

    /**
     * Lets in the device that a code was typed at. The code is good again when that can't be noted.
     *
     * @param address where the request comes from
     */
    public Outcome<Paired> pairByCode(String typed, String address) {
        String code = Secrets.read(typed);
        Outcome<Pairings.Offer> taken = pairings.take(code, address, tools.clock().millis());
        Optional<Refused.Why> refused = taken.refused().map(Refused::why);
        boolean wasLooked = refused.filter(why -> why == Refused.Why.CODE_TRIES).isEmpty();
        tools.witness().tried(new Witness.Attempt(Witness.Secret.CODE, "", "", refused, wasLooked));
        if (!taken.isDone()) {
            return Outcome.not(taken.refused().get());
        }
        Pairings.Offer offer = taken.value().get();
        boolean kept = false;
        try {
            Outcome<Paired> paired = pair(offer.name(), offer.use());
            kept = true;
            return paired;
        } finally {
            if (!kept) {
                pairings.offer(code, offer, tools.clock().millis());
            }
        }
    }

    /** Lets a device in. */
    Outcome<Paired> pair(String name, Use use) {
        synchronized (kept) {
            int number = kept.state().devices().size() + 1;
            if (number > AccessLimits.DEVICES_MAX) {
                return Outcome.not(Refused.Why.TOO_MANY, AccessLimits.DEVICES_MAX);
            }
            String token = Secrets.token(tools.chance().get());
            long nowMs = tools.clock().millis();
            Device device = new Device("d" + number, name, use, Secrets.hash(token), nowMs, false);
            noting.note(device.id());
            kept.change(state -> state.with(device));
            return Outcome.done(new Paired(device, token));
        }
    }

    /** A device no longer gets in, nor does anybody at it. */
    public Outcome<Device> endDevice(String id) {
        synchronized (kept) {
            Optional<Device> device = kept.state().device(id).map(Device::gone);
            if (device.isEmpty()) {
                return Outcome.not(Refused.Why.NO_SUCH_THING);
            }
            noting.note(id);
            kept.change(state -> state.with(device.get()));
            kept.end(session -> session.deviceId().equals(id));
            return Outcome.done(device.get());
        }
    }

    /** A token for a program. */
    public Outcome<MadeToken> makeToken(Actor by, String name, Role role) {
        synchronized (kept) {
            int number = kept.state().tokens().size() + 1;
            if (!RosterRules.isName(name)) {
                return Outcome.not(Refused.Why.NAME_FORM, Limits.NAME_CHARS_MAX);
            }
            if (role == Role.OWNER && by.role() != Role.OWNER) {
                return Outcome.not(Refused.Why.OWNERS_ONLY);
            }
            if (number > AccessLimits.TOKENS_MAX) {
                return Outcome.not(Refused.Why.TOO_MANY, AccessLimits.TOKENS_MAX);
            }
            String secret = Secrets.token(tools.chance().get());
            long nowMs = tools.clock().millis();
            ProgramToken token =
                    new ProgramToken(
                            "t" + number, name.strip(), role, Secrets.hash(secret), nowMs, false);
            noting.note(token.id());
            kept.change(state -> state.with(token));
            return Outcome.done(new MadeToken(token, secret));
        }
    }

    /** A program's token no longer works. */
    public Outcome<ProgramToken> endToken(String id) {
        synchronized (kept) {
            Optional<ProgramToken> token = kept.state().token(id).map(ProgramToken::gone);
            if (token.isEmpty()) {
                return Outcome.not(Refused.Why.NO_SUCH_THING);
            }
            noting.note(id);
            kept.change(state -> state.with(token.get()));
            return Outcome.done(token.get());
        }
    }

    /** What may stand against a change of somebody. */
    private interface Objection {
        Optional<Refused> to(Person person);
    }

    private Outcome<Person> change(
            Actor by, String id, UnaryOperator<Person> change, Objection objection) {
        synchronized (kept) {
            return change(by, kept.state().person(id), change, objection);
        }
    }

    private Outcome<Person> change(
            Actor by, Optional<Person> person, UnaryOperator<Person> change, Objection objection) {
        synchronized (kept) {
            if (person.isEmpty()) {
                return Outcome.not(Refused.Why.NO_SUCH_PERSON);
            }
            if (person.get().role() == Role.OWNER && by.role() != Role.OWNER) {
                return Outcome.not(Refused.Why.OWNERS_ONLY);
            }
            Optional<Refused> refused = objection.to(person.get());
            if (refused.isPresent()) {
                return Outcome.not(refused.get());
            }
            Person changed = change.apply(person.get());
            noting.note(changed.id());
            kept.change(state -> state.with(changed));
            return Outcome.done(changed);
        }
    }

    /**
     * Puts a secret in the place of another, with the wrong tries of the old one forgotten. Their
     * sessions end when somebody else does it.
     */
    private Outcome<Person> secret(
            Actor by, String id, UnaryOperator<Person> change, Objection objection, String kind) {
        synchronized (kept) {
            Outcome<Person> set = change(by, id, change, objection);
            if (set.isDone()) {
                throttle.forget(place -> place.startsWith(id + "@") && place.endsWith(kind));
                if (!by.personId().equals(id)) {
                    endSessionsOf(id);
                }
            }
            return set;
        }
    }

    private CompletableFuture<Outcome<Person>> hashed(
            String secret, java.util.function.Function<String, Outcome<Person>> then) {
        Supplier<Outcome<Person>> task = () -> then.apply(tools.hasher().hash(secret));
        try {
            return CompletableFuture.supplyAsync(task, tools.hashing());
        } catch (RejectedExecutionException busy) {
            return CompletableFuture.completedFuture(Outcome.not(Refused.Why.BUSY));
        }
    }

    private void endSessionsOf(String personId) {
        kept.end(session -> session.personId().equals(personId));
    }

    private String nextPerson() {
        return "s" + (kept.state().people().size() + 1);
    }
}
