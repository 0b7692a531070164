package sopwell.web.api;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.desk.StandCommand.ForStations;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.KitchenEvent;
import sopwell.kitchen.PartId;
import sopwell.kitchen.RemakeReason;
import sopwell.kitchen.StationCommand;
import sopwell.kitchen.StationEvent;
import sopwell.log.Recorded;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.web.Fields;
import sopwell.web.Json.BadJson;
import sopwell.web.Reply;

/** Parts and their stations for programs. Thread-safe. */
final class PartApi {
    private final ApiContext context;

    PartApi(ApiContext context) {
        this.context = context;
    }

    /** A handler's function for one kind of move. */
    Calls.Write move(Function<PartId, KitchenCommand> command) {
        return ask -> move(ask, command);
    }

    /** Has pieces of a part made again. */
    CompletableFuture<Reply> remake(Ask ask) throws BadJson, Refused {
        PartId part = part(ask);
        Fields fields = ask.fields();
        int pieces = fields.has("quantity") ? fields.number("quantity") : 1;
        RemakeReason reason = fields.word("reason", RemakeReason.class);
        String text = fields.has("text") ? fields.text("text") : "";
        fields.nothingElse();
        return Doing.submit(
                context.desk(),
                ask,
                new ForKitchen(new KitchenCommand.Remake(List.of(part), pieces, reason, text)),
                PartApi::remade);
    }

    /** An order that was handed is brought back first, and what goes into the part comes after. */
    private static Reply remade(List<Recorded> events) {
        Recorded recorded =
                events.stream()
                        .filter(one -> one.event() instanceof KitchenEvent.PartRemade)
                        .findFirst()
                        .orElseThrow();
        KitchenEvent.PartRemade event = (KitchenEvent.PartRemade) recorded.event();
        return Reply.json(
                200,
                json -> {
                    json.writeStartObject();
                    json.writeStringField("part", event.part().toString());
                    json.writeStringField("order", event.part().order());
                    json.writeStringField("station", event.part().station());
                    json.writeNumberField("quantity", event.pieces());
                    json.writeStringField("reason", OrderJson.word(event.reason()));
                    json.writeNumberField("seq", recorded.seq());
                    OrderJson.time(json, "at", recorded.atMs());
                    json.writeEndObject();
                });
    }

    private static PartId part(Ask ask) throws Refused {
        Optional<PartId> part = PartId.read(ask.path("part"));
        if (part.isEmpty()) {
            Refusal unknown = Refusal.of(Reason.UNKNOWN_PART, ask.path("part"));
            throw new Refused(RefusalProblems.of(unknown, ask.text()));
        }
        return part.get();
    }

    /** Says how many hands are on duty at a station. */
    CompletableFuture<Reply> hands(Ask ask) throws BadJson {
        Fields fields = ask.fields();
        int hands = fields.number("hands");
        fields.nothingElse();
        return Doing.submit(
                context.desk(),
                ask,
                new ForStations(new StationCommand.SetHands(ask.path("station"), hands)),
                events -> handsSet(events.get(events.size() - 1)));
    }

    private static Reply handsSet(Recorded recorded) {
        StationEvent.HandsSet event = (StationEvent.HandsSet) recorded.event();
        return Reply.json(
                200,
                json -> {
                    json.writeStartObject();
                    json.writeStringField("station", event.station());
                    json.writeNumberField("hands", event.hands());
                    json.writeNumberField("seq", recorded.seq());
                    json.writeEndObject();
                });
    }

    private CompletableFuture<Reply> move(Ask ask, Function<PartId, KitchenCommand> command)
            throws BadJson, Refused {
        ask.fields().nothingElse();
        return Doing.submit(
                context.desk(),
                ask,
                new ForKitchen(command.apply(part(ask))),
                events -> moved(events.get(0)));
    }

    private static Reply moved(Recorded recorded) {
        KitchenEvent event = (KitchenEvent) recorded.event();
        String state =
                switch (event.kind()) {
                    case STARTED, BROUGHT_BACK -> "started";
                    case UP -> "up";
                    case SEEN -> "seen";
                    case REMADE -> "remade";
                };
        return Reply.json(
                200,
                json -> {
                    json.writeStartObject();
                    json.writeStringField("part", event.part().toString());
                    json.writeStringField("order", event.part().order());
                    json.writeStringField("station", event.part().station());
                    json.writeStringField("state", state);
                    json.writeNumberField("seq", recorded.seq());
                    OrderJson.time(json, "at", recorded.atMs());
                    json.writeEndObject();
                });
    }
}
