package sopwell.boards;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.kitchen.Cell;
import sopwell.kitchen.CellWord;
import sopwell.kitchen.Cells;
import sopwell.kitchen.Making;
import sopwell.kitchen.Part;
import sopwell.kitchen.PartState;
import sopwell.kitchen.Query;
import sopwell.kitchen.Router;
import sopwell.kitchen.Schedule.Slot;
import sopwell.menu.Menu;
import sopwell.menu.Step;

/**
 * Draws the rows of one station's board. For one drawing.
 *
 * @param steps the station's, in order of assembly
 * @param builds whether its rows are worked off as hands come free, so that only a row that waits
 *     for something says when to begin
 */
record PartRows(Scene scene, List<Step> steps, boolean builds, Places places) {
    /** What is to be begun within so short a time is to be begun now. */
    private static final long DUE_MS = 30_000;

    PartRow row(Joined joined, int digit) {
        Part part = joined.lead();
        Making now = part.making();
        Menu menu = scene.menuOf(part);
        Optional<Making> old = part.before();
        int quantityBefore = old.map(Making::quantity).filter(q -> q != now.quantity()).orElse(0);
        Optional<RowQuery> query = RowQuery.of(scene.kitchen(), part, scene.menus());
        List<RowWait> waits = waits(joined);
        return new PartRow(
                joined.ids(),
                digit,
                part.number(),
                part.name(),
                joined.pieces(),
                quantityBefore,
                menu.item(now.selection().item()).name(),
                cells(part, query, menu),
                part.state() != PartState.WAITING,
                scene.kitchen().isUnseen(part),
                part.cancelled(),
                waits,
                joined.again(),
                query,
                builds && waits.isEmpty() ? 0 : startByMs(part),
                part.placedAtMs());
    }

    private long startByMs(Part part) {
        Optional<Slot> slot = scene.schedule().slot(part.id());
        if (slot.isEmpty() || part.state() != PartState.WAITING) {
            return 0;
        }
        long shown = places.startBy(part.id(), slot.get().startByMs(), scene.nowMs());
        return shown - scene.nowMs() < DUE_MS ? 0 : shown;
    }

    /** What the first of the joined parts that waits is waiting for. */
    private List<RowWait> waits(Joined joined) {
        for (Part part : joined.parts()) {
            List<Part> awaited = scene.kitchen().awaited(part);
            if (!awaited.isEmpty() && !part.cancelled()) {
                return awaited.stream().map(this::waitFor).toList();
            }
        }
        return List.of();
    }

    private RowWait waitFor(Part feed) {
        Menu menu = scene.menuOf(feed);
        String station = feed.id().station();
        Step first = Router.steps(menu, feed.making().selection(), station).get(0);
        long expectedMs =
                scene.schedule()
                        .slot(feed.id())
                        .map(s -> places.expected(feed.id(), s.upAtMs(), scene.nowMs()))
                        .orElse(0L);
        return new RowWait(
                feed.id(),
                first.name(),
                menu.station(station).name(),
                feed.state() != PartState.WAITING,
                expectedMs);
    }

    private List<StepCell> cells(Part part, Optional<RowQuery> query, Menu menu) {
        Map<String, Cell> cells = cells(part, part.making());
        Map<String, Cell> before = part.before().map(old -> cells(part, old)).orElse(cells);
        List<StepCell> row = new ArrayList<>();
        for (Step step : steps) {
            boolean asked = query.isPresent() && isAbout(query.get().query(), step, menu);
            row.add(cell(step.id(), cells.get(step.id()), before.get(step.id()), asked));
        }
        return row;
    }

    private Map<String, Cell> cells(Part part, Making making) {
        Menu menu = scene.menus().apply(making.menuRevision());
        Map<String, Cell> cells = new LinkedHashMap<>();
        Cells.of(menu, making, part.id().station()).forEach(cell -> cells.put(cell.step(), cell));
        return cells;
    }

    private static boolean isAbout(Query query, Step step, Menu menu) {
        return query.isOpen()
                && query.question().options().stream()
                        .filter(menu::hasOption)
                        .anyMatch(option -> step.showsGroup(menu.groupOf(option).id()));
    }

    private static StepCell cell(String step, Cell now, Cell before, boolean asked) {
        List<CellWord> words = now == null ? List.of() : now.words();
        List<CellWord> old = before == null ? List.of() : before.words();
        boolean changed = !words.equals(old);
        return new StepCell(step, now != null, words, changed, changed ? old : List.of(), asked);
    }
}
