package sopwell.mix;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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
    private final Map<String, Integer> downs;
    private final Map<String, Integer> acrosses;
    private final Map<String, Integer> besides;
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
        this.downs = new TreeMap<>(names.inMenuOrder(down));
        this.acrosses = new TreeMap<>(names.inMenuOrder(across));
        this.besides = new TreeMap<>(names.inMenuOrder(beside));
    }

    void add(List<String> ways, int quantity) {
        String row = chosen(ways, down);
        String column = chosen(ways, across);
        downs.merge(row, quantity, Integer::sum);
        acrosses.merge(column, quantity, Integer::sum);
        pieces.merge(List.of(row, column), quantity, Integer::sum);
        if (!beside.equals(NO_GROUP)) {
            besides.merge(chosen(ways, beside), quantity, Integer::sum);
        }
    }

    MixTable build() {
        List<WayCount> aside = new ArrayList<>();
        besides.forEach((id, n) -> aside.add(new WayCount(way(beside, id), n)));
        return new MixTable(
                item,
                names.item(item),
                names.group(down),
                names.group(across),
                beside.equals(NO_GROUP) ? new LocalText("", "") : names.group(beside),
                downs.keySet().stream().map(id -> way(down, id)).toList(),
                acrosses.keySet().stream().map(id -> way(across, id)).toList(),
                downs.keySet().stream().map(this::row).toList(),
                aside);
    }

    private List<Integer> row(String row) {
        return acrosses.keySet().stream()
                .map(column -> pieces.getOrDefault(List.of(row, column), 0))
                .toList();
    }

    private Way way(String group, String chosen) {
        return new Way(chosen, names.way(group, chosen));
    }

    private static String chosen(List<String> ways, String group) {
        return ways.stream()
                .filter(way -> Ways.group(way).equals(group))
                .map(Ways::chosen)
                .findFirst()
                .orElse(Ways.NONE);
    }
}
