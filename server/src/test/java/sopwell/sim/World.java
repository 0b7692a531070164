package sopwell.sim;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import sopwell.boards.Row;
import sopwell.call.Reading;
import sopwell.desk.Stand;
import sopwell.menu.Menu;
import sopwell.orders.Asked;
import sopwell.orders.Order;
import sopwell.web.live.SteppedScreens.Looker;

/** What the people of a day see and can choose from. Belongs to one thread. */
final class World {
    final SplittableRandom random;
    final SimClock clock;
    final Menus menus;
    private Stand shown;
    private List<Looker> lookers = List.of();

    World(SplittableRandom random, SimClock clock, Menus menus) {
        this.random = random;
        this.clock = clock;
        this.menus = menus;
    }

    void see(Stand stand, List<Looker> screens) {
        shown = stand;
        lookers = screens;
    }

    /** The stand as it is shown. */
    Stand shown() {
        return shown;
    }

    boolean oneIn(int many) {
        return random.nextInt(many) == 0;
    }

    <A> A any(List<A> list) {
        return list.get(random.nextInt(list.size()));
    }

    <A> Optional<A> some(Collection<A> all) {
        List<A> list = new ArrayList<>(all);
        return list.isEmpty() ? Optional.empty() : Optional.of(any(list));
    }

    /** Any order of the day, mostly one that is open. */
    Optional<Order> order() {
        return some(oneIn(8) ? shown.orders().all() : shown.orders().open());
    }

    /** Any row that some screen of a board shows, true or not yet true. */
    Optional<Row> rowOn(String board) {
        List<Row> rows = new ArrayList<>();
        for (Looker looker : lookers) {
            if (looker.board().equals(board)) {
                rows.addAll(looker.rows());
            }
        }
        return some(rows);
    }

    String station() {
        return any(shown.menu().stations()).id();
    }

    /** What a call asks for by a menu, or empty when it can't be read. */
    Optional<List<Asked>> read(Menu menu, String call) {
        Reading reading = menus.parser(menu).read(call);
        if (reading.refusal().isPresent() || reading.lines().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                reading.lines().stream()
                        .map(line -> new Asked(line.quantity(), line.selection()))
                        .toList());
    }
}
