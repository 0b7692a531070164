package sopwell.boards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.Limits;
import sopwell.kitchen.Part;
import sopwell.kitchen.PartId;
import sopwell.kitchen.Router;
import sopwell.kitchen.Schedule;
import sopwell.menu.Item;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.menu.Selection;
import sopwell.menu.Size;
import sopwell.menu.Station;

/** Draws up what a station makes in one go. Stateless. */
final class LoadRows {
    private static final LocalText NOWHERE = new LocalText("", "");

    private LoadRows() {}

    /** The loads of a station; empty for one that makes its pieces one by one. */
    static Optional<StationLoads> of(Station station, Scene scene, LoadTimes times) {
        if (station.load() == 1) {
            return Optional.empty();
        }
        List<Schedule.Load> planned = scene.schedule().loads(station.id());
        Map<PartId, Integer> lastAt = new HashMap<>();
        for (int at = 0; at < planned.size(); at++) {
            for (Schedule.Share share : planned.get(at).shares()) {
                lastAt.put(share.part(), at);
            }
        }
        List<StationLoads.Load> loads = new ArrayList<>();
        for (int at = 0; at < planned.size(); at++) {
            loads.add(load(planned.get(at), at, lastAt, scene, times));
        }
        times.keepOnly(lastAt.keySet());
        loads.sort(
                Comparator.comparing((StationLoads.Load load) -> !load.started())
                        .thenComparingLong(l -> l.started() ? l.upAtMs() : l.startByMs()));
        long begun = loads.stream().filter(StationLoads.Load::started).count();
        int shown = (int) Math.min(loads.size(), begun + Limits.LOADS_AHEAD_MAX);
        return Optional.of(
                new StationLoads(
                        station.load(),
                        loads.subList(0, shown),
                        loads.size() - shown,
                        feeds(station, scene)));
    }

    private static StationLoads.Load load(
            Schedule.Load load, int at, Map<PartId, Integer> lastAt, Scene scene, LoadTimes times) {
        PartId first = load.shares().get(0).part();
        Map<LocalText, Integer> counts = new LinkedHashMap<>();
        List<StationLoads.Share> shares = new ArrayList<>();
        for (Schedule.Share share : load.shares()) {
            Part part = scene.kitchen().find(share.part()).orElseThrow();
            Menu menu = scene.menuOf(part);
            counts.merge(name(menu, part.making().selection()), share.pieces(), Integer::sum);
            shares.add(
                    new StationLoads.Share(
                            share.part(),
                            part.number(),
                            share.pieces(),
                            fed(menu, part).map(id -> menu.station(id).name()).orElse(NOWHERE),
                            lastAt.get(share.part()) == at));
        }
        boolean started = load.started();
        return new StationLoads.Load(
                started,
                started ? load.startByMs() : times.startBy(first, load.startByMs(), scene.nowMs()),
                started ? times.upAt(first, load.startByMs(), load.upAtMs()) : load.upAtMs(),
                counts.entrySet().stream()
                        .map(count -> new StationLoads.Count(count.getKey(), count.getValue()))
                        .toList(),
                shares);
    }

    /** What a piece is called among others of its kind: by its size too, if it has one. */
    private static LocalText name(Menu menu, Selection selection) {
        Item item = menu.item(selection.item());
        LocalText name = item.name();
        return item.size(selection.size())
                .map(Size::name)
                .map(
                        size ->
                                new LocalText(
                                        size.en() + " " + name.en(), name.es() + " " + size.es()))
                .orElse(name);
    }

    /** The station that a part goes on to, if it does not go to the guest. */
    private static Optional<String> fed(Menu menu, Part part) {
        Selection selection = part.making().selection();
        String station = part.id().station();
        return Router.stations(menu, selection).stream()
                .filter(other -> !other.equals(station))
                .filter(other -> Router.waitsFor(menu, selection, other).contains(station))
                .findFirst();
    }

    private static Map<PartId, LocalText> feeds(Station station, Scene scene) {
        Map<PartId, LocalText> feeds = new HashMap<>();
        for (Part part : scene.kitchen().inSight(station.id())) {
            Menu menu = scene.menuOf(part);
            fed(menu, part).ifPresent(id -> feeds.put(part.id(), menu.station(id).name()));
        }
        return feeds;
    }
}
