package sopwell.web.pages;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Out;
import sopwell.menu.Shortage;
import sopwell.menu.Size;
import sopwell.web.T;

/**
 * Everything that can be out, with what is. Immutable.
 *
 * @param sections the menu's things in groups, in its order
 * @param now what is out, first
 */
public record OutView(List<Section> sections, List<Row> now) {
    public OutView {
        sections = List.copyOf(sections);
        now = List.copyOf(now);
    }

    /** Things of one kind. */
    public record Section(String name, List<Row> rows) {
        public Section {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One thing.
     *
     * @param out how it is written, see {@link Out}
     * @param state what is said of it; empty when it is sold as usual
     * @param gone whether none can be sold
     */
    public record Row(String out, String name, String state, boolean gone) {}

    /**
     * What is on the menu.
     *
     * @param station only what this station works with; empty for everything
     */
    static OutView of(Menu menu, String station, Map<Out, Shortage> shortages, ZoneId zone, T t) {
        Namer namer = new Namer(menu, shortages, zone, t);
        List<Section> sections = new ArrayList<>();
        List<Row> items = new ArrayList<>();
        List<Row> sizes = new ArrayList<>();
        for (Item item : menu.items()) {
            if (!isMadeAt(menu, item, station)) {
                continue;
            }
            items.add(namer.row(Out.item(item.id())));
            for (Size size : item.sizes()) {
                sizes.add(namer.row(Out.size(item.id(), size.id())));
            }
        }
        sections.add(new Section(t.get("out.items"), items));
        for (Group group : menu.groups()) {
            if (!isShownAt(menu, group, station)) {
                continue;
            }
            List<Row> options = new ArrayList<>();
            for (Option option : group.options()) {
                options.add(namer.row(Out.option(option.id())));
            }
            sections.add(new Section(t.local(group.name()), options));
        }
        if (!sizes.isEmpty()) {
            sections.add(new Section(t.get("out.sizes"), sizes));
        }
        List<Row> now =
                shortages.keySet().stream().filter(o -> o.isOn(menu)).map(namer::row).toList();
        return new OutView(sections, now);
    }

    private static boolean isMadeAt(Menu menu, Item item, String station) {
        return station.isEmpty()
                || item.steps().stream().anyMatch(id -> menu.step(id).station().equals(station));
    }

    private static boolean isShownAt(Menu menu, Group group, String station) {
        return station.isEmpty()
                || menu.steps().stream()
                        .filter(step -> step.station().equals(station))
                        .anyMatch(step -> step.showsGroup(group.id()));
    }

    /** How short something is, in words: "out", "out until 12:40", "7 left". */
    static String state(Shortage shortage, ZoneId zone, T t) {
        String until = shortage.untilMs() == 0 ? "" : t.time(shortage.untilMs(), zone);
        if (!shortage.isGone()) {
            return until.isEmpty()
                    ? t.of("out.left", shortage.left())
                    : t.of("out.left.until", shortage.left(), until);
        }
        return until.isEmpty() ? t.get("out.gone") : t.of("out.gone.until", until);
    }

    private record Namer(Menu menu, Map<Out, Shortage> shortages, ZoneId zone, T t) {
        Row row(Out out) {
            Shortage shortage = shortages.get(out);
            String state = shortage == null ? "" : state(shortage, zone, t);
            boolean gone = shortage != null && shortage.isGone();
            return new Row(out.toString(), t.name(out, menu), state, gone);
        }
    }
}
