package sopwell.storage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import sopwell.access.AccessState;
import sopwell.access.Device;
import sopwell.access.Person;
import sopwell.access.ProgramToken;
import sopwell.access.Role;
import sopwell.access.Session;
import sopwell.access.Tries;
import sopwell.access.Use;
import sopwell.menu.Faults;

/** Reads and writes who may do what, {@code access.json}. Stateless. */
public final class AccessFile {
    private AccessFile() {}

    private record Place(String name, Tries tries) {}

    /** Reads it; every fault is found at once. */
    public static AccessReading read(byte[] json) {
        Faults faults = new Faults();
        Optional<JsonNode> tree = JsonTree.read(json, faults);
        if (tree.isEmpty()) {
            return new AccessReading(Optional.empty(), faults.found());
        }
        Fields fields = new Fields(tree.get(), "", faults);
        Map<String, Tries> tries = new HashMap<>();
        List<Person> people = fields.objects("people", AccessFile::person);
        List<Device> devices = fields.objects("devices", AccessFile::device);
        List<ProgramToken> tokens = fields.objects("tokens", AccessFile::token);
        List<Session> sessions = fields.objects("sessions", AccessFile::session);
        fields.objects("tries", AccessFile::place).forEach(p -> tries.put(p.name(), p.tries()));
        fields.close();
        return faults.isEmpty()
                ? new AccessReading(
                        Optional.of(new AccessState(people, devices, tokens, sessions, tries)),
                        List.of())
                : new AccessReading(Optional.empty(), faults.found());
    }

    /** The whole of it as a file. */
    public static byte[] write(AccessState state) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        list(node, "people", state.people(), AccessFile::write);
        list(node, "devices", state.devices(), AccessFile::write);
        list(node, "tokens", state.tokens(), AccessFile::write);
        list(node, "sessions", state.sessions(), AccessFile::write);
        List<Place> places =
                new TreeMap<>(state.tries())
                        .entrySet().stream()
                                .map(entry -> new Place(entry.getKey(), entry.getValue()))
                                .toList();
        list(node, "tries", places, AccessFile::write);
        return (node.toPrettyString() + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private static Person person(Fields fields) {
        return new Person(
                fields.text("id"),
                fields.secret("name"),
                role(fields),
                fields.secret("pin"),
                fields.secret("password"),
                fields.yes("ended"),
                fields.mayHave("endedAtMs") ? fields.moment("endedAtMs") : 0);
    }

    private static ObjectNode write(Person person) {
        ObjectNode node = bare(person);
        return person.endedAtMs() == 0 ? node : node.put("endedAtMs", person.endedAtMs());
    }

    private static ObjectNode bare(Person person) {
        return object().put("id", person.id())
                .put("name", person.name())
                .put("role", person.role().code())
                .put("pin", person.pinHash())
                .put("password", person.passwordHash())
                .put("ended", person.ended());
    }

    private static Device device(Fields fields) {
        return new Device(
                fields.text("id"),
                fields.secret("name"),
                known(fields, "use", Use.of(fields.text("use")), Use.GUESTS),
                fields.secret("token"),
                fields.moment("pairedAtMs"),
                fields.yes("ended"));
    }

    private static ObjectNode write(Device device) {
        return object().put("id", device.id())
                .put("name", device.name())
                .put("use", device.use().code())
                .put("token", device.tokenHash())
                .put("pairedAtMs", device.pairedAtMs())
                .put("ended", device.ended());
    }

    private static ProgramToken token(Fields fields) {
        return new ProgramToken(
                fields.text("id"),
                fields.secret("name"),
                role(fields),
                fields.secret("token"),
                fields.moment("madeAtMs"),
                fields.yes("ended"));
    }

    private static ObjectNode write(ProgramToken token) {
        return object().put("id", token.id())
                .put("name", token.name())
                .put("role", token.role().code())
                .put("token", token.tokenHash())
                .put("madeAtMs", token.madeAtMs())
                .put("ended", token.ended());
    }

    private static Session session(Fields fields) {
        return new Session(
                fields.secret("token"),
                fields.text("person"),
                fields.text("device"),
                fields.moment("signedInAtMs"),
                fields.moment("seenAtMs"),
                fields.moment("passwordUntilMs"));
    }

    private static ObjectNode write(Session session) {
        return object().put("token", session.tokenHash())
                .put("person", session.personId())
                .put("device", session.deviceId())
                .put("signedInAtMs", session.signedInAtMs())
                .put("seenAtMs", session.seenAtMs())
                .put("passwordUntilMs", session.passwordUntilMs());
    }

    private static Place place(Fields fields) {
        return new Place(
                fields.secret("place"), new Tries(fields.whole("count"), fields.moment("untilMs")));
    }

    private static ObjectNode write(Place place) {
        return object().put("place", place.name())
                .put("count", place.tries().count())
                .put("untilMs", place.tries().untilMs());
    }

    private static Role role(Fields fields) {
        return known(fields, "role", Role.of(fields.text("role")), Role.LINE);
    }

    private static <A> A known(Fields fields, String field, Optional<A> found, A usual) {
        if (found.isEmpty()) {
            fields.faults()
                    .add(fields.at(field), "This is none that we know.", "Take the file back.");
        }
        return found.orElse(usual);
    }

    private static <A> void list(
            ObjectNode node, String field, List<A> all, Function<A, ObjectNode> write) {
        all.forEach(one -> node.withArray("/" + field).add(write.apply(one)));
        node.withArray("/" + field);
    }

    private static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }
}
