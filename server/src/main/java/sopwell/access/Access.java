package sopwell.access;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * Who is who: knows requests by what they show, and lets people in. Thread-safe; {@link #who} never
 * waits.
 *
 * <p>A stand without an owner's password is open: whoever reaches it may do everything.
 */
public final class Access {
    /** Where the owner's password is tried at devices that are not paired. */
    private static final String UNPAIRED = "owner@unpaired";

    /** What a device is called that the owner's password let in. */
    private static final String OFFICE = "office";

    private final Tools tools;
    private final Kept kept;
    private final Throttle throttle;
    private final Roster roster;

    /** Who signs in where, and what was shown before. */
    private record At(Person person, Device device, Shown shown) {}

    /** Where a secret is tried, and whose it should be. */
    private record Door(String place, Witness.Secret secret, String person, String device) {
        Witness.Attempt attempt(Optional<Refused> refused, boolean wasLooked) {
            return new Witness.Attempt(
                    secret, person, device, refused.map(Refused::why), wasLooked);
        }
    }

    /** Knows whom the state knows. */
    public Access(AccessState state, Tools tools) {
        this.tools = tools;
        this.kept = new Kept(state, tools.keeper());
        this.throttle = new Throttle(kept);
        this.roster = new Roster(kept, throttle, tools);
    }

    /** What changes who may do what. */
    public Roster roster() {
        return roster;
    }

    /** What is kept just now. */
    public AccessState state() {
        return kept.state();
    }

    /** Whether no owner has a password, so that there is nothing to tell people apart by. */
    public boolean isOpen() {
        return kept.state().owners().isEmpty();
    }

    /** Who a request comes from; its session counts as used. */
    public Actor who(Shown shown) {
        return who(shown, true);
    }

    /** Who somebody is that came earlier and is still here; their session is not used by that. */
    public Actor stillWho(Shown shown) {
        return who(shown, false);
    }

    /** Signs somebody in at a paired device with their PIN. */
    public CompletableFuture<Outcome<SignedIn>> byPin(Shown shown, String personId, String pin) {
        Device device = kept.deviceOf(shown.device());
        if (device == null) {
            return no(Refused.Why.NOT_PAIRED);
        }
        Optional<Person> person = kept.state().person(personId);
        if (person.isEmpty()) {
            return no(Refused.Why.NO_SUCH_PERSON);
        }
        if (!person.get().hasPin()) {
            return no(Refused.Why.NONE_SET);
        }
        if (!Secrets.isPin(pin)) {
            return no(
                    Refused.Why.PIN_FORM, AccessLimits.PIN_DIGITS_MIN, AccessLimits.PIN_DIGITS_MAX);
        }
        Person found = person.get();
        return check(
                new Door(
                        place(found, device, Throttle.PIN),
                        Witness.Secret.PIN,
                        found.id(),
                        device.id()),
                () ->
                        isStill(
                                found,
                                now -> now.hasPin() && tools.hasher().matches(pin, now.pinHash())),
                () -> begin(new At(found, device, shown), 0, "", now()));
    }

    /** Signs a lead or owner in at a paired device with their password. */
    public CompletableFuture<Outcome<SignedIn>> byPassword(
            Shown shown, String personId, String password) {
        Device device = kept.deviceOf(shown.device());
        if (device == null) {
            return no(Refused.Why.NOT_PAIRED);
        }
        Optional<Person> person = kept.state().person(personId);
        if (person.isEmpty()) {
            return no(Refused.Why.NO_SUCH_PERSON);
        }
        return password(new At(person.get(), device, shown), password, now());
    }

    /**
     * Signs an owner in with the password alone; a new device is paired by that, for the office.
     *
     * @param noting how it is noted that this owner let a device in
     */
    public CompletableFuture<Outcome<SignedIn>> byOwner(
            Shown shown, String password, Function<Person, Noting> noting) {
        if (!Secrets.isPassword(password)) {
            return noPassword();
        }
        Optional<Device> paired = Optional.ofNullable(kept.deviceOf(shown.device()));
        String place = paired.map(device -> "owner@" + device.id()).orElse(UNPAIRED);
        Person[] found = new Person[1];
        return check(
                new Door(place, Witness.Secret.OWNER, "", paired.map(Device::id).orElse("")),
                () -> {
                    found[0] = firstOf(kept.state().owners(), password);
                    return found[0] != null;
                },
                () -> {
                    if (paired.isPresent()) {
                        return begin(new At(found[0], paired.get(), shown), fresh(), "", now());
                    }
                    return pairAndBegin(found[0], shown, noting);
                });
    }

    private Outcome<SignedIn> pairAndBegin(
            Person owner, Shown shown, Function<Person, Noting> noting) {
        Outcome<Paired> paired = roster.noted(noting.apply(owner)).pair(OFFICE, Use.OFFICE);
        if (!paired.isDone()) {
            return Outcome.not(paired.refused().get());
        }
        Paired office = paired.value().get();
        return begin(new At(owner, office.device(), shown), fresh(), office.token(), now());
    }

    /** Has somebody who is signed in type their password again: it counts as fresh from now on. */
    public CompletableFuture<Outcome<SignedIn>> prove(Shown shown, String password) {
        Session session = kept.sessionOf(shown.session());
        if (session == null || who(shown, true).kind() != Actor.Kind.PERSON) {
            return no(Refused.Why.NO_SUCH_PERSON);
        }
        Person person = kept.state().person(session.personId()).orElseThrow();
        Device device = kept.state().device(session.deviceId()).orElseThrow();
        return password(new At(person, device, shown), password, session.signedInAtMs());
    }

    /** Ends a session. */
    public void signOut(Shown shown) {
        kept.end(session -> session.tokenHash().equals(shown.session()));
    }

    /** Forgets what is over and keeps when the others were seen; for a clock's tick. */
    public void tick() {
        long nowMs = now();
        kept.end(session -> !isLive(session, nowMs));
        kept.keepSeen();
    }

    private Actor who(Shown shown, boolean isUsed) {
        if (isOpen()) {
            return Actor.ANYBODY;
        }
        if (!shown.bearer().isEmpty()) {
            ProgramToken token = kept.tokenOf(shown.bearer());
            return token == null ? Actor.NOBODY : Actor.of(token);
        }
        long nowMs = now();
        Session session = shown.session().isEmpty() ? null : kept.sessionOf(shown.session());
        if (session != null && isLive(session, nowMs)) {
            if (isUsed && nowMs - session.seenAtMs() >= AccessLimits.SESSION_SEEN_MILLIS) {
                kept.seen(session, nowMs);
            }
            AccessState state = kept.state();
            Optional<Person> person = state.person(session.personId());
            Optional<Device> device = state.device(session.deviceId());
            if (person.isPresent() && device.isPresent()) {
                return Actor.of(person.get(), device.get(), session.passwordUntilMs());
            }
        }
        Device device = shown.device().isEmpty() ? null : kept.deviceOf(shown.device());
        return device == null ? Actor.NOBODY : Actor.of(device);
    }

    private boolean isLive(Session session, long nowMs) {
        AccessState state = kept.state();
        Optional<Person> person = state.person(session.personId());
        if (person.isEmpty() || state.device(session.deviceId()).isEmpty()) {
            return false;
        }
        long idleMs =
                person.get().role().hasPassword()
                        ? AccessLimits.SESSION_LEAD_IDLE_MILLIS_MAX
                        : AccessLimits.SESSION_IDLE_MILLIS_MAX;
        // A clock that was set back far ends a session too: nobody can tell how long it was idle.
        return Math.abs(nowMs - session.seenAtMs()) < idleMs
                && Math.abs(nowMs - session.signedInAtMs()) < AccessLimits.SESSION_MILLIS_MAX;
    }

    private CompletableFuture<Outcome<SignedIn>> password(
            At at, String password, long signedInAtMs) {
        Person person = at.person();
        if (!person.hasPassword()) {
            return no(Refused.Why.NONE_SET);
        }
        if (!Secrets.isPassword(password)) {
            return noPassword();
        }
        return check(
                new Door(
                        place(person, at.device(), Throttle.PASSWORD),
                        Witness.Secret.PASSWORD,
                        person.id(),
                        at.device().id()),
                () ->
                        isStill(
                                person,
                                now ->
                                        now.hasPassword()
                                                && tools.hasher()
                                                        .matches(password, now.passwordHash())),
                () -> begin(at, fresh(), "", signedInAtMs));
    }

    /** Looked at when its turn comes: the secret may have been replaced while the try waited. */
    private boolean isStill(Person then, Predicate<Person> right) {
        return kept.state().person(then.id()).filter(right).isPresent();
    }

    /** One try: taken first, looked at afterwards; all are forgotten when it was right. */
    private CompletableFuture<Outcome<SignedIn>> check(
            Door door, Supplier<Boolean> isRight, Supplier<Outcome<SignedIn>> then) {
        Optional<Refused> refused = throttle.take(door.place(), now());
        if (refused.isPresent()) {
            tools.witness().tried(door.attempt(refused, false));
            return CompletableFuture.completedFuture(Outcome.not(refused.get()));
        }
        try {
            return CompletableFuture.supplyAsync(
                    () -> {
                        if (!isRight.get()) {
                            Refused wrong = throttle.wrong(door.place(), now());
                            tools.witness().tried(door.attempt(Optional.of(wrong), true));
                            return Outcome.not(wrong);
                        }
                        throttle.forget(door.place()::equals);
                        tools.witness().tried(door.attempt(Optional.empty(), true));
                        return then.get();
                    },
                    tools.hashing());
        } catch (RejectedExecutionException busy) {
            return no(Refused.Why.BUSY);
        }
    }

    /** A new session under a new token; the one that was shown is over. */
    private Outcome<SignedIn> begin(
            At at, long passwordUntilMs, String deviceToken, long signedInAtMs) {
        String token = Secrets.token(tools.chance().get());
        Session session =
                new Session(
                        Secrets.hash(token),
                        at.person().id(),
                        at.device().id(),
                        signedInAtMs,
                        now(),
                        passwordUntilMs);
        kept.begin(session, at.shown().session());
        Actor actor = Actor.of(at.person(), at.device(), passwordUntilMs);
        return Outcome.done(new SignedIn(actor, token, deviceToken));
    }

    private Person firstOf(List<Person> owners, String password) {
        return owners.stream()
                .filter(owner -> tools.hasher().matches(password, owner.passwordHash()))
                .findFirst()
                .orElse(null);
    }

    private long now() {
        return tools.clock().millis();
    }

    private long fresh() {
        return now() + AccessLimits.PASSWORD_FRESH_MILLIS;
    }

    private static String place(Person person, Device device, String what) {
        return person.id() + "@" + device.id() + what;
    }

    private static CompletableFuture<Outcome<SignedIn>> noPassword() {
        return no(
                Refused.Why.PASSWORD_FORM,
                AccessLimits.PASSWORD_CHARS_MIN,
                AccessLimits.PASSWORD_CHARS_MAX);
    }

    private static CompletableFuture<Outcome<SignedIn>> no(Refused.Why why, Object... args) {
        return CompletableFuture.completedFuture(Outcome.not(why, args));
    }
}
