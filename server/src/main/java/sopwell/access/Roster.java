package sopwell.access;

import sopwell.Limits;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * Says who may do what from now on: staff, devices, programs. Thread-safe. What ends, ends its
 * sessions with it. That the actor may change access at all is for the caller to ask; what only an
 * owner may do is asked here.
 */
public final class Roster {
    private final Kept kept;
    private final Throttle throttle;
    private final Tools tools;
    private final Pairings pairings = new Pairings();

    Roster(Kept kept, Throttle throttle, Tools tools) {
        this.kept = kept;
        this.throttle = throttle;
        this.tools = tools;
    }

    /**
     * Gives the first owner a password, and makes that owner if there is none; all tries are
     * forgotten. For the command line, whose user has the data folder anyway.
     */
    public Outcome<Person> foundOwner(String name, String password) {
        if (!Secrets.isPassword(password)) {
            return noPassword();
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
            throttle.forget("");
            endSessionsOf(owner.id());
            return Outcome.done(owner);
        }
    }

    /** Takes somebody on. */
    public Outcome<Person> addPerson(Actor by, String name, Role role) {
        synchronized (kept) {
            Optional<Refused> refused = badName(name).or(() -> badRole(by, null, role));
            if (refused.isEmpty() && kept.state().people().size() >= AccessLimits.PEOPLE_MAX) {
                refused = Optional.of(Refused.of(Refused.Why.TOO_MANY, AccessLimits.PEOPLE_MAX));
            }
            if (refused.isPresent()) {
                return Outcome.not(refused.get());
            }
            Person person = Person.fresh(nextPerson(), name.strip(), role);
            kept.change(state -> state.with(person));
            return Outcome.done(person);
        }
    }

    /** Calls somebody by another name. */
    public Outcome<Person> rename(Actor by, String id, String name) {
        return change(by, id, p -> p.withName(name.strip()), p -> badName(name));
    }

    /** Gives somebody another role. */
    public Outcome<Person> setRole(Actor by, String id, Role role) {
        return change(
                by,
                id,
                p -> p.withRole(role),
                p ->
                        role != Role.OWNER && isLastOwner(p)
                                ? Optional.of(Refused.of(Refused.Why.LAST_OWNER))
                                : badRole(by, p.role(), role));
    }

    /** Somebody no longer works here: PIN, password and sessions are gone at once. */
    public Outcome<Person> endPerson(Actor by, String id) {
        synchronized (kept) {
            Outcome<Person> ended =
                    change(by, id, p -> p.gone(tools.clock().millis()), this::notLastOwner);
            ended.value().ifPresent(person -> endSessionsOf(person.id()));
            return ended;
        }
    }

    /** The same, and the name is forgotten too, also of somebody who left long ago. */
    public Outcome<Person> erasePerson(Actor by, String id) {
        synchronized (kept) {
            Optional<Person> left =
                    kept.state().people().stream()
                            .filter(p -> p.id().equals(id) && p.ended())
                            .findFirst();
            Outcome<Person> ended = left.map(Outcome::done).orElseGet(() -> endPerson(by, id));
            ended.value().ifPresent(p -> kept.change(state -> state.with(p.withName(""))));
            return ended;
        }
    }

    /**
     * Forgets the names of those who left before a time. Of whom it is not known when they left, it
     * is taken to be now.
     *
     * @return how many were forgotten
     */
    public int forgetLeft(long beforeMs) {
        synchronized (kept) {
            int forgotten = 0;
            for (Person person : kept.state().people()) {
                if (!person.ended() || person.name().isEmpty()) {
                    continue;
                }
                if (person.endedAtMs() == 0) {
                    kept.change(state -> state.with(person.gone(tools.clock().millis())));
                } else if (person.endedAtMs() < beforeMs) {
                    kept.change(state -> state.with(person.withName("")));
                    forgotten++;
                }
            }
            return forgotten;
        }
    }

    /** Sets somebody's PIN; their other sessions end when somebody else does it. */
    public CompletableFuture<Outcome<Person>> setPin(Actor by, String id, String pin) {
        if (!Secrets.isPin(pin)) {
            return CompletableFuture.completedFuture(
                    Outcome.not(
                            Refused.Why.PIN_FORM,
                            AccessLimits.PIN_DIGITS_MIN,
                            AccessLimits.PIN_DIGITS_MAX));
        }
        return hashed(pin, hash -> secret(by, id, p -> p.withPin(hash), p -> Optional.empty()));
    }

    /** Sets a lead's or owner's password; their sessions end when somebody else does it. */
    public CompletableFuture<Outcome<Person>> setPassword(Actor by, String id, String password) {
        if (!Secrets.isPassword(password)) {
            return CompletableFuture.completedFuture(noPassword());
        }
        return hashed(
                password,
                hash ->
                        secret(
                                by,
                                id,
                                p -> p.withPassword(hash),
                                p ->
                                        p.role().hasPassword()
                                                ? Optional.empty()
                                                : Optional.of(
                                                        Refused.of(
                                                                Refused.Why
                                                                        .ROLE_WITHOUT_PASSWORD))));
    }

    /** Forgets somebody's wrong tries at every place. */
    public Outcome<Person> unlock(Actor by, String id) {
        synchronized (kept) {
            Outcome<Person> found = change(by, id, p -> p, p -> Optional.empty());
            found.value().ifPresent(person -> throttle.forget(person.id() + "@"));
            found.value()
                    .filter(person -> person.role() == Role.OWNER)
                    .ifPresent(owner -> throttle.forget("owner@"));
            return found;
        }
    }

    /** A code for one more device. */
    public Outcome<PairingOffer> offer(String name, Use use) {
        if (!isName(name)) {
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
     * Lets in the device that a code was typed at.
     *
     * @param address where the request comes from
     */
    public Outcome<Paired> pairByCode(String code, String address) {
        Outcome<Pairings.Offer> taken =
                pairings.take(Secrets.read(code), address, tools.clock().millis());
        Optional<Refused.Why> refused = taken.refused().map(Refused::why);
        boolean wasLooked = refused.filter(why -> why == Refused.Why.CODE_TRIES).isEmpty();
        tools.witness().tried(new Witness.Attempt(Witness.Secret.CODE, "", "", refused, wasLooked));
        return taken.isDone()
                ? pair(taken.value().get().name(), taken.value().get().use())
                : Outcome.not(taken.refused().get());
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
            kept.change(state -> state.with(device));
            return Outcome.done(new Paired(device, token));
        }
    }

    /** A device no longer gets in, nor does anybody at it. */
    public Outcome<Device> endDevice(String id) {
        synchronized (kept) {
            Optional<Device> device = kept.state().device(id).map(Device::gone);
            device.ifPresent(gone -> kept.change(state -> state.with(gone)));
            kept.end(session -> session.deviceId().equals(id));
            return device.map(Outcome::done).orElse(Outcome.not(Refused.Why.NO_SUCH_THING));
        }
    }

    /** A token for a program. */
    public Outcome<MadeToken> makeToken(Actor by, String name, Role role) {
        synchronized (kept) {
            int number = kept.state().tokens().size() + 1;
            if (!isName(name)) {
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
            kept.change(state -> state.with(token));
            return Outcome.done(new MadeToken(token, secret));
        }
    }

    /** A program's token no longer works. */
    public Outcome<ProgramToken> endToken(String id) {
        synchronized (kept) {
            Optional<ProgramToken> token = kept.state().token(id).map(ProgramToken::gone);
            token.ifPresent(gone -> kept.change(state -> state.with(gone)));
            return token.map(Outcome::done).orElse(Outcome.not(Refused.Why.NO_SUCH_THING));
        }
    }

    /** What may stand against a change of somebody. */
    private interface Objection {
        Optional<Refused> to(Person person);
    }

    private Outcome<Person> change(
            Actor by, String id, UnaryOperator<Person> change, Objection objection) {
        synchronized (kept) {
            Optional<Person> person = kept.state().person(id);
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
            kept.change(state -> state.with(changed));
            return Outcome.done(changed);
        }
    }

    private Outcome<Person> secret(
            Actor by, String id, UnaryOperator<Person> change, Objection objection) {
        synchronized (kept) {
            Outcome<Person> set = change(by, id, change, objection);
            if (set.isDone() && !by.personId().equals(id)) {
                endSessionsOf(id);
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

    private static Optional<Refused> badName(String name) {
        return isName(name)
                ? Optional.empty()
                : Optional.of(Refused.of(Refused.Why.NAME_FORM, Limits.NAME_CHARS_MAX));
    }

    /** Only an owner makes an owner, and of them there are few. */
    private Optional<Refused> badRole(Actor by, Role before, Role role) {
        if (role != Role.OWNER || before == Role.OWNER) {
            return Optional.empty();
        }
        if (by.role() != Role.OWNER) {
            return Optional.of(Refused.of(Refused.Why.OWNERS_ONLY));
        }
        long owners =
                kept.state().people().stream()
                        .filter(p -> p.role() == Role.OWNER && !p.ended())
                        .count();
        return owners >= AccessLimits.OWNERS_MAX
                ? Optional.of(Refused.of(Refused.Why.TOO_MANY, AccessLimits.OWNERS_MAX))
                : Optional.empty();
    }

    private Optional<Refused> notLastOwner(Person person) {
        return isLastOwner(person)
                ? Optional.of(Refused.of(Refused.Why.LAST_OWNER))
                : Optional.empty();
    }

    private boolean isLastOwner(Person person) {
        List<Person> owners = kept.state().owners();
        return owners.size() == 1 && owners.get(0).id().equals(person.id());
    }

    private void endSessionsOf(String personId) {
        kept.end(session -> session.personId().equals(personId));
    }

    private String nextPerson() {
        return "s" + (kept.state().people().size() + 1);
    }

    private static boolean isName(String name) {
        return !name.isBlank() && name.strip().length() <= Limits.NAME_CHARS_MAX;
    }

    private static <A> Outcome<A> noPassword() {
        return Outcome.not(
                Refused.Why.PASSWORD_FORM,
                AccessLimits.PASSWORD_CHARS_MIN,
                AccessLimits.PASSWORD_CHARS_MAX);
    }
}
