package sopwell.web.pages;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sopwell.boards.StationBoard;
import sopwell.boards.StationLoads;
import sopwell.boards.StationLoads.Load;
import sopwell.boards.StationLoads.Share;
import sopwell.kitchen.PartId;
import sopwell.menu.LocalText;
import sopwell.web.T;

/** What a station makes in one go, in one language. Immutable. */
public record LoadView(T t, String station, StationLoads all) {
    /** The loads of a board that has some. */
    public static LoadView of(T t, StationBoard board) {
        return new LoadView(t, board.station(), board.loads().orElseThrow());
    }

    /** What is to be begun, in its order. */
    public List<Load> toStart() {
        return all.loads().stream().filter(load -> !load.started()).toList();
    }

    /** What is under way, the one that comes up first in front. */
    public List<Load> underWay() {
        return all.loads().stream().filter(Load::started).toList();
    }

    /** The parts that a press on a load is about; none when another load has the rest of them. */
    public List<PartId> pressed(Load load) {
        return load.started()
                ? load.moved()
                : load.shares().stream().map(Share::part).distinct().toList();
    }

    /** Where a press on a load is sent. */
    public String address(Load load) {
        return "/boards/" + station + "/loads/" + (load.started() ? "up" : "started");
    }

    /** What a press on a load is sent with. */
    public String with(Load load) {
        return "{\"part\":\""
                + pressed(load).stream().map(PartId::toString).collect(Collectors.joining(" "))
                + "\"}";
    }

    /** What is in a load. */
    public String counts(Load load) {
        return load.counts().stream()
                .map(count -> count.pieces() + " " + t.local(count.item()))
                .collect(Collectors.joining(", "));
    }

    /** Whose it is: the orders that it goes to, and those that it goes on to a station for. */
    public String whose(Load load) {
        Map<LocalText, String> orders = new LinkedHashMap<>();
        for (Share share : load.shares()) {
            String one = share.number() + (share.pieces() > 1 ? " ×" + share.pieces() : "");
            orders.merge(share.feeds(), one, (some, more) -> some + ", " + more);
        }
        return orders.entrySet().stream()
                .map(
                        to ->
                                to.getKey().en().isEmpty()
                                        ? to.getValue()
                                        : t.of("load.to", t.local(to.getKey()), to.getValue()))
                .collect(Collectors.joining(" · "));
    }

    /** A load as it is read out. */
    public String spoken(Load load) {
        return t.of(load.started() ? "load.up.of" : "load.start.of", counts(load), whose(load));
    }
}
