package sopwell.mix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Selection;
import sopwell.mix.MixTable.Way;
import sopwell.mix.MixTable.WayCount;

/** Counts how one item was made. Not thread-safe. */
final class MixTableBuilder {
    private static final LocalText NONE = new LocalText("none", "nada");

    private final Item item;
    private final List<Group> groups;
    private final Map<Cross, Integer> pieces = new LinkedHashMap<>();

    private record Cross(String down, String across, String beside) {}

    MixTableBuilder(Menu menu, Item item) {
        this.item = item;
        this.groups = menu.groupsOf(item);
    }

    void add(Selection selection, int quantity) {
        String beside = groups.size() > 2 ? way(groups.get(2), selection) : "";
        Cross cross =
                new Cross(way(groups.get(0), selection), way(groups.get(1), selection), beside);
        pieces.merge(cross, quantity, Integer::sum);
    }

    MixTable build() {
        Map<String, Integer> down = new TreeMap<>(inMenuOrder(groups.get(0)));
        Map<String, Integer> across = new TreeMap<>(inMenuOrder(groups.get(1)));
        Map<String, Integer> beside = new TreeMap<>();
        if (groups.size() > 2) {
            beside = new TreeMap<>(inMenuOrder(groups.get(2)));
        }
        for (Map.Entry<Cross, Integer> entry : pieces.entrySet()) {
            down.merge(entry.getKey().down(), entry.getValue(), Integer::sum);
            across.merge(entry.getKey().across(), entry.getValue(), Integer::sum);
            beside.merge(entry.getKey().beside(), entry.getValue(), Integer::sum);
        }
        List<WayCount> besides = new ArrayList<>();
        if (groups.size() > 2) {
            beside.forEach((id, n) -> besides.add(new WayCount(named(groups.get(2), id), n)));
        }
        return new MixTable(
                item.id(),
                item.name(),
                groups.get(0).name(),
                groups.get(1).name(),
                groups.size() > 2 ? groups.get(2).name() : new LocalText("", ""),
                down.keySet().stream().map(id -> named(groups.get(0), id)).toList(),
                across.keySet().stream().map(id -> named(groups.get(1), id)).toList(),
                counts(List.copyOf(down.keySet()), List.copyOf(across.keySet())),
                besides);
    }

    private List<List<Integer>> counts(List<String> down, List<String> across) {
        List<List<Integer>> rows = new ArrayList<>();
        for (String row : down) {
            List<Integer> cells = new ArrayList<>();
            for (String column : across) {
                cells.add(
                        pieces.entrySet().stream()
                                .filter(e -> e.getKey().down().equals(row))
                                .filter(e -> e.getKey().across().equals(column))
                                .mapToInt(Map.Entry::getValue)
                                .sum());
            }
            rows.add(cells);
        }
        return rows;
    }

    private static String way(Group group, Selection selection) {
        String options =
                group.options().stream()
                        .map(Option::id)
                        .filter(selection::has)
                        .collect(Collectors.joining("+"));
        return options.isEmpty() ? "none" : options;
    }

    private static Way named(Group group, String id) {
        Set<String> chosen = id.equals("none") ? Set.of() : Set.of(id.split("\\+", -1));
        for (Bundle bundle : group.bundles()) {
            if (Set.copyOf(bundle.options()).equals(chosen)) {
                return new Way(id, bundle.name());
            }
        }
        List<LocalText> names =
                group.options().stream()
                        .filter(option -> chosen.contains(option.id()))
                        .map(Option::name)
                        .toList();
        if (names.isEmpty()) {
            return new Way(id, NONE);
        }
        return new Way(
                id,
                new LocalText(
                        names.stream().map(LocalText::en).collect(Collectors.joining(" + ")),
                        names.stream().map(LocalText::es).collect(Collectors.joining(" + "))));
    }

    /** Options in the menu's order, then the ways with more than one, "none" last. */
    private static Comparator<String> inMenuOrder(Group group) {
        List<String> order = group.options().stream().map(Option::id).toList();
        return Comparator.comparing((String id) -> id.equals("none"))
                .thenComparing(id -> id.contains("+"))
                .thenComparing(id -> order.indexOf(id.split("\\+", -1)[0]))
                .thenComparing(Comparator.naturalOrder());
    }
}
