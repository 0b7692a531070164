package sopwell.mix;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sopwell.menu.LocalText;
import sopwell.mix.MixTable.Way;
import sopwell.mix.MixTable.WayCount;

/** Counts how one item was made. Not thread-safe. */
final class MixTableBuilder {
    private static final String NO_GROUP = "";

    private final Names names;
    private final String item;
    private final String down;
    private final String across;
    private final String beside;
    private final Set<String> downs = new HashSet<>();
    private final Set<String> acrosses = new HashSet<>();
    private final Map<String, Integer> besides = new HashMap<>();
    private final Map<List<String>, Integer> pieces = new HashMap<>();

    /**
     * An empty table.
     *
     * @param ways ways of a piece of the item, for its groups when no menu has it any more
     */
    MixTableBuilder(Names names, String item, List<String> ways) {
        this.names = names;
        this.item = item;
        List<String> known = names.groups(item);
        List<String> groups = known.size() >= 2 ? known : ways.stream().map(Ways::group).toList();
        this.down = groups.get(0);
        this.across = groups.get(1);
        this.beside = groups.size() > 2 ? groups.get(2) : NO_GROUP;
    }

    void add(List<String> ways, int quantity) {
        String row = Ways.chosen(ways, down);
        String column = Ways.chosen(ways, across);
        downs.add(row);
        acrosses.add(column);
        pieces.merge(List.of(row, column), quantity, Integer::sum);
        if (!beside.equals(NO_GROUP)) {
            besides.merge(Ways.chosen(ways, beside), quantity, Integer::sum);
        }
    }

    MixTable build() {
        List<WayCount> aside = new ArrayList<>();
        for (String id : inOrder(beside, besides.keySet())) {
            aside.add(new WayCount(way(beside, id), besides.get(id)));
        }
        List<String> rows = inOrder(down, downs);
        List<String> columns = inOrder(across, acrosses);
        return new MixTable(
                item,
                names.item(item),
                names.group(down),
                names.group(across),
                beside.equals(NO_GROUP) ? new LocalText("", "") : names.group(beside),
                rows.stream().map(id -> way(down, id)).toList(),
                columns.stream().map(id -> way(across, id)).toList(),
                rows.stream().map(row -> row(row, columns)).toList(),
                aside);
    }

    private List<String> inOrder(String group, Set<String> chosen) {
        return chosen.stream().sorted(names.inMenuOrder(group)).toList();
    }

    private List<Integer> row(String row, List<String> columns) {
        return columns.stream()
                .map(column -> pieces.getOrDefault(List.of(row, column), 0))
                .toList();
    }

    private Way way(String group, String chosen) {
        return new Way(chosen, names.way(group, chosen));
    }
}
