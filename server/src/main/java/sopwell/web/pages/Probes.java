package sopwell.web.pages;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sopwell.boards.Column;
import sopwell.boards.StationBoard;
import sopwell.kitchen.CellWord;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Size;
import sopwell.menu.Step;
import sopwell.web.T;

/**
 * The widest texts that the menu can put into each column of a build board. The screen measures
 * them in its own letters, so that columns keep their width whatever rows come and go. Stateless.
 */
final class Probes {
    private static final int KEPT = 3;

    private Probes() {}

    /** The widest texts of every column, by step. */
    static Map<String, List<StationView.Probe>> of(StationBoard board, Menu menu, T t) {
        Map<String, List<StationView.Probe>> probes = new LinkedHashMap<>();
        for (Column column : board.columns()) {
            List<StationView.Probe> all = new ArrayList<>();
            for (Item item : menu.items()) {
                if (item.steps().contains(column.step())) {
                    add(menu, menu.step(column.step()), item, t, all);
                }
            }
            all.sort(Comparator.comparingInt((StationView.Probe p) -> -p.text().length()));
            probes.put(column.step(), widest(all));
        }
        return probes;
    }

    /** A few of each loudness, since letters differ in width and loudness in size. */
    private static List<StationView.Probe> widest(List<StationView.Probe> all) {
        List<StationView.Probe> kept = new ArrayList<>();
        for (String tone : List.of("quiet", "strong", "refused")) {
            all.stream()
                    .filter(p -> p.tone().equals(tone))
                    .distinct()
                    .limit(KEPT)
                    .forEach(kept::add);
        }
        return kept;
    }

    private static void add(Menu menu, Step step, Item item, T t, List<StationView.Probe> all) {
        for (Step.Show show : step.shows()) {
            switch (show.what()) {
                case ITEM -> all.add(probe(CellWord.Tone.STRONG, t.local(item.name())));
                case SERVICE -> {
                    all.add(probe(CellWord.Tone.STRONG, t.local(menu.speech().here())));
                    all.add(probe(CellWord.Tone.QUIET, t.local(menu.speech().toGo())));
                }
                case SIZE -> {
                    for (Size size : item.sizes()) {
                        boolean house = size.id().equals(item.defaultSize());
                        CellWord.Tone tone = house ? CellWord.Tone.QUIET : CellWord.Tone.STRONG;
                        all.add(probe(tone, t.local(size.name())));
                    }
                }
                case GROUP -> {
                    if (item.groups().contains(show.group())) {
                        group(menu.group(show.group()), t, all);
                    }
                }
            }
        }
    }

    private static void group(Group group, T t, List<StationView.Probe> all) {
        for (Option option : group.options()) {
            all.add(probe(CellWord.Tone.STRONG, t.local(option.name())));
            if (group.options().stream().anyMatch(o -> o.insteadOf().equals(option.id()))) {
                String no = t.get("board.no") + " " + t.local(option.name());
                all.add(new StationView.Probe("refused", no));
            }
        }
        group.bundles().stream()
                .filter(bundle -> !bundle.options().isEmpty())
                .forEach(b -> all.add(probe(CellWord.Tone.STRONG, t.local(b.name()))));
    }

    private static StationView.Probe probe(CellWord.Tone tone, String text) {
        return new StationView.Probe(StationView.tone(tone), longerLine(text));
    }

    /** A text of several words stands on two lines: the longer one, broken where it is shortest. */
    private static String longerLine(String text) {
        String[] words = text.split(" ", -1);
        String best = text;
        for (int cut = 1; cut < words.length; cut++) {
            String first = String.join(" ", Arrays.asList(words).subList(0, cut));
            String second = String.join(" ", Arrays.asList(words).subList(cut, words.length));
            String longer = first.length() >= second.length() ? first : second;
            best = longer.length() < best.length() ? longer : best;
        }
        return best;
    }
}
