package sopwell.boards;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import sopwell.Limits;
import sopwell.kitchen.Cell;
import sopwell.kitchen.CellWord;
import sopwell.kitchen.Cells;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.Making;
import sopwell.kitchen.Part;
import sopwell.kitchen.PartId;
import sopwell.kitchen.PartState;
import sopwell.kitchen.Query;
import sopwell.kitchen.WaitQuote;
import sopwell.menu.Menu;
import sopwell.menu.Station;
import sopwell.menu.Step;

/** Draws up the boards of stations. Stateless. */
public final class StationBoards {
    private StationBoards() {}

    /**
     * The board of a station.
     *
     * @param menu the menu in force: its steps are the columns
     * @param menus the menu of a revision, for parts ordered from an earlier one
     * @param places where the rows of this board stand
     */
    public static StationBoard of(
            Station station,
            Menu menu,
            Function<String, Menu> menus,
            Kitchen kitchen,
            Places places) {
        Collection<Part> inSight = kitchen.inSight(station.id());
        List<Joined> all = station.builds() ? Joined.of(kitchen, inSight) : Joined.apart(inSight);
        Map<PartId, Joined> byLead = new LinkedHashMap<>();
        all.forEach(row -> byLead.put(row.lead().id(), row));
        List<PartId> shown =
                places.place(all.stream().map(StationBoards::wanted).toList()).stream()
                        .limit(Limits.BOARD_ROWS_MAX)
                        .toList();
        List<Step> steps =
                menu.steps().stream().filter(s -> s.station().equals(station.id())).toList();
        Map<PartId, Integer> keys = places.digits(shown);
        List<PartRow> rows = new ArrayList<>();
        for (PartId lead : shown) {
            rows.add(row(kitchen, byLead.get(lead), keys.get(lead), steps, menus));
        }
        List<Column> columns = steps.stream().map(step -> column(step, rows)).toList();
        return new StationBoard(
                station.id(),
                station.name(),
                station.builds(),
                columns,
                rows,
                all.size() - shown.size(),
                WaitQuote.now(kitchen, menu, station.id()));
    }

    private static Places.Wanted wanted(Joined row) {
        Part lead = row.lead();
        boolean begun = lead.state() != PartState.WAITING;
        return new Places.Wanted(row.ids(), lead.placedAtMs(), lead.placedAtMs(), begun);
    }

    private static PartRow row(
            Kitchen kitchen,
            Joined joined,
            int digit,
            List<Step> steps,
            Function<String, Menu> menus) {
        Part part = joined.lead();
        Making now = part.making();
        Menu menu = menus.apply(now.menuRevision());
        Map<String, Cell> cells = cells(menu, now, part.id().station());
        Optional<Making> old = part.before();
        Map<String, Cell> before =
                old.map(m -> cells(menus.apply(m.menuRevision()), m, part.id().station()))
                        .orElse(cells);
        Optional<RowQuery> query = RowQuery.of(kitchen, part, menus);
        List<StepCell> row = new ArrayList<>();
        for (Step step : steps) {
            boolean asked = query.isPresent() && isAbout(query.get().query(), step, menu);
            row.add(cell(step.id(), cells.get(step.id()), before.get(step.id()), asked));
        }
        int quantityBefore = old.map(Making::quantity).filter(q -> q != now.quantity()).orElse(0);
        return new PartRow(
                joined.ids(),
                digit,
                part.number(),
                part.name(),
                joined.pieces(),
                quantityBefore,
                menu.item(now.selection().item()).name(),
                row,
                part.state() != PartState.WAITING,
                kitchen.isUnseen(part),
                part.cancelled(),
                query,
                part.placedAtMs());
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

    private static Map<String, Cell> cells(Menu menu, Making making, String station) {
        Map<String, Cell> cells = new LinkedHashMap<>();
        Cells.of(menu, making, station).forEach(cell -> cells.put(cell.step(), cell));
        return cells;
    }

    private static Column column(Step step, List<PartRow> rows) {
        int total = 0;
        Map<CellWord, Integer> pieces = new LinkedHashMap<>();
        for (PartRow row : rows) {
            for (StepCell cell : row.cells()) {
                if (cell.step().equals(step.id()) && cell.applies() && !row.cancelled()) {
                    total += row.quantity();
                    cell.words().stream()
                            .filter(word -> word.tone() != CellWord.Tone.NO)
                            .forEach(word -> pieces.merge(word, row.quantity(), Integer::sum));
                }
            }
        }
        List<Column.Count> counts =
                pieces.entrySet().stream()
                        .map(entry -> new Column.Count(entry.getKey(), entry.getValue()))
                        .sorted(Comparator.comparingInt(Column.Count::pieces).reversed())
                        .toList();
        return new Column(step.id(), step.name(), total, counts);
    }
}
