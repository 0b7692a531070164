package sopwell.lunch;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import sopwell.desk.Script;
import sopwell.menu.Menu;
import sopwell.menu.MenuParts;
import sopwell.menu.Station;
import sopwell.orders.OrderCommand;
import sopwell.storage.MenuWriter;

/** Lunch after lunch at one stand, which learns from one to the next. Not thread-safe. */
final class Season {
    private static final int DAY_MS = 86_400_000;

    private final Truth truth;
    private final boolean byStartTimes;
    private final Script script;
    private final long firstMs;
    private int days;

    Season(Truth truth, boolean byStartTimes) {
        this.truth = truth;
        this.byStartTimes = byStartTimes;
        this.script = new Script(Script.SETTINGS, menu(truth.lineHands()));
        this.firstMs = script.at("2026-01-14T11:00").nowMs();
    }

    Script script() {
        return script;
    }

    /** When the next day's lunch begins. */
    long nextBeginMs() {
        return firstMs + (long) DAY_MS * days;
    }

    /** The lunches of these seeds, one a day. */
    static List<Served> all(Truth truth, boolean byStartTimes, long fromSeed, int days) {
        Season season = new Season(truth, byStartTimes);
        List<Served> all = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            all.addAll(season.next(fromSeed + day, lunch -> {}));
        }
        return all;
    }

    /** The next day's lunch. */
    List<Served> next(long seed, Consumer<Lunch> before) {
        script.atMs(nextBeginMs());
        days++;
        Lunch lunch = new Lunch(script, truth, byStartTimes, new Draws(seed));
        before.accept(lunch);
        List<Served> served = lunch.run();
        script.must(new OrderCommand.CloseDay());
        return served;
    }

    /** The demo's menu with other hands on the line. */
    static Menu menu(int lineHands) {
        MenuParts demo = Script.demoMenu().parts();
        List<Station> stations = new ArrayList<>();
        for (Station station : demo.stations()) {
            boolean line = station.id().equals("line");
            stations.add(
                    new Station(
                            station.id(),
                            station.name(),
                            line ? lineHands : station.hands(),
                            station.load(),
                            station.builds()));
        }
        return MenuWriter.menu(
                new MenuParts(demo.speech(), stations, demo.steps(), demo.groups(), demo.items()));
    }
}
