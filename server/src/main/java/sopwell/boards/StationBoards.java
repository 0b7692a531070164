package sopwell.boards;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sopwell.Limits;
import sopwell.kitchen.CellWord;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.Part;
import sopwell.kitchen.PartId;
import sopwell.kitchen.PartState;
import sopwell.kitchen.Schedule.Slot;
import sopwell.kitchen.WaitQuote;
import sopwell.menu.Station;
import sopwell.menu.Step;

/** Draws up the boards of stations. Stateless. */
public final class StationBoards {
    private StationBoards() {}

    /**
     * The board of a station.
     *
     * @param places where the rows of this board stand
     */
    public static StationBoard of(Station station, Scene scene, Places places) {
        Kitchen kitchen = scene.kitchen();
        Collection<Part> inSight = kitchen.inSight(station.id());
        List<Joined> all = station.builds() ? Joined.of(kitchen, inSight) : Joined.apart(inSight);
        Map<PartId, Joined> byLead = new LinkedHashMap<>();
        all.forEach(row -> byLead.put(row.lead().id(), row));
        List<PartId> shown =
                places.place(all.stream().map(row -> wanted(row, scene)).toList()).stream()
                        .limit(Limits.BOARD_ROWS_MAX)
                        .toList();
        List<Step> steps =
                scene.menu().steps().stream()
                        .filter(s -> s.station().equals(station.id()))
                        .toList();
        Map<PartId, Integer> keys = places.digits(shown);
        PartRows drawing = new PartRows(scene, steps, station.builds(), places);
        List<PartRow> rows =
                shown.stream().map(id -> drawing.row(byLead.get(id), keys.get(id))).toList();
        places.keepExpected(
                rows.stream()
                        .flatMap(row -> row.waits().stream())
                        .map(RowWait::part)
                        .collect(Collectors.toSet()));
        List<Column> columns = steps.stream().map(step -> column(step, rows)).toList();
        return new StationBoard(
                station.id(),
                station.name(),
                station.builds(),
                columns,
                rows,
                all.size() - shown.size(),
                WaitQuote.now(kitchen, scene.menu(), station.id()),
                LoadRows.of(station, scene, places.loads()),
                places.pans().settled(PanRows.of(station, scene)));
    }

    private static Places.Wanted wanted(Joined row, Scene scene) {
        Part lead = row.lead();
        long startByMs =
                scene.schedule().slot(lead.id()).map(Slot::startByMs).orElse(lead.placedAtMs());
        boolean begun = lead.state() != PartState.WAITING || lead.again().isPresent();
        return new Places.Wanted(row.ids(), startByMs, lead.placedAtMs(), begun);
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
