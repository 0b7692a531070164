package sopwell.web.pages;

import io.undertow.server.HttpServerExchange;
import io.undertow.server.RoutingHandler;
import java.util.Optional;
import sopwell.access.Outcome;
import sopwell.access.Person;
import sopwell.access.Role;
import sopwell.access.Roster;
import sopwell.audit.AuditEvent.Change;
import sopwell.web.Gate;
import sopwell.web.Reply;

/** Where a lead or owner says who works here, and as what. Thread-safe. */
final class StaffRoutes {
    private static final String PEOPLE = AccessPages.PATH + "/people";
    private static final String PERSON = PEOPLE + "/{person}";

    private final PageHandling handling;
    private final AccessPages pages;
    private final AccessNotes notes;
    private final Roster roster;

    StaffRoutes(PageContext context, PageHandling handling) {
        this.handling = handling;
        this.pages = new AccessPages(context);
        this.notes = new AccessNotes(context);
        this.roster = context.access().roster();
    }

    void add(RoutingHandler routes) {
        routes.post(PEOPLE, handling.visiting(this::addPerson));
        routes.post(PERSON + "/name", handling.visiting(this::rename));
        routes.post(PERSON + "/role", handling.visiting(this::setRole));
        routes.post(PERSON + "/pin", handling.visiting(this::setPin));
        routes.post(PERSON + "/password", handling.visiting(this::setPassword));
        routes.post(PERSON + "/unlocked", handling.visiting(this::unlock));
        routes.post(PERSON + "/left", handling.visiting(this::endPerson));
        routes.post(PERSON + "/erased", handling.visiting(this::erase));
    }

    private Reply addPerson(HttpServerExchange exchange, Ask ask) {
        Optional<Role> role = Role.of(ask.field("role"));
        Optional<Reply> wrong = pages.unchosen(ask, role).or(() -> pages.misnamed(ask));
        Change change = Change.PERSON_ADDED;
        return wrong.orElseGet(
                () ->
                        answer(
                                ask,
                                noted(ask, change)
                                        .addPerson(
                                                Gate.actor(exchange),
                                                ask.field("name"),
                                                role.get()),
                                change));
    }

    private Reply rename(HttpServerExchange exchange, Ask ask) {
        Change change = Change.PERSON_RENAMED;
        return pages.misnamed(ask)
                .orElseGet(
                        () ->
                                answer(
                                        ask,
                                        noted(ask, change)
                                                .rename(
                                                        Gate.actor(exchange),
                                                        ask.in("person"),
                                                        ask.field("name")),
                                        change));
    }

    private Reply setRole(HttpServerExchange exchange, Ask ask) {
        Optional<Role> role = Role.of(ask.field("role"));
        Change change = Change.ROLE_SET;
        return pages.unchosen(ask, role)
                .orElseGet(
                        () ->
                                answer(
                                        ask,
                                        noted(ask, change)
                                                .setRole(
                                                        Gate.actor(exchange),
                                                        ask.in("person"),
                                                        role.get()),
                                        change));
    }

    private Reply setPin(HttpServerExchange exchange, Ask ask) throws PageHandling.Interrupted {
        Outcome<Person> set =
                PageHandling.await(
                        noted(ask, Change.PIN_SET)
                                .setPin(Gate.actor(exchange), ask.in("person"), ask.field("pin")));
        return answer(ask, set, Change.PIN_SET);
    }

    private Reply setPassword(HttpServerExchange exchange, Ask ask)
            throws PageHandling.Interrupted {
        String password = ask.fields().getOrDefault("password", "");
        Outcome<Person> set =
                PageHandling.await(
                        noted(ask, Change.PASSWORD_SET)
                                .setPassword(Gate.actor(exchange), ask.in("person"), password));
        return answer(ask, set, Change.PASSWORD_SET);
    }

    private Reply unlock(HttpServerExchange exchange, Ask ask) {
        Change change = Change.UNLOCKED;
        Outcome<Person> done = noted(ask, change).unlock(Gate.actor(exchange), ask.in("person"));
        return answer(ask, done, change);
    }

    private Reply endPerson(HttpServerExchange exchange, Ask ask) {
        Change change = Change.PERSON_LEFT;
        Outcome<Person> done = noted(ask, change).endPerson(Gate.actor(exchange), ask.in("person"));
        return answer(ask, done, change);
    }

    private Reply erase(HttpServerExchange exchange, Ask ask) {
        Change change = Change.PERSON_ERASED;
        Outcome<Person> done =
                noted(ask, change).erasePerson(Gate.actor(exchange), ask.in("person"));
        return answer(ask, done, change);
    }

    private Roster noted(Ask ask, Change change) {
        return roster.noted(notes.person(ask.who(), change));
    }

    private Reply answer(Ask ask, Outcome<Person> outcome, Change change) {
        return outcome.isDone()
                ? pages.done(change, outcome.value().get().id())
                : pages.refused(ask, outcome.refused().get());
    }
}
