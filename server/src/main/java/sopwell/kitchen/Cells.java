package sopwell.kitchen;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sopwell.kitchen.CellWord.Tone;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;
import sopwell.menu.Option;
import sopwell.menu.Size;
import sopwell.menu.Step;
import sopwell.menu.Wishes;

/**
 * The words of a part, step by step: the house's way is quiet, a departure is strong, a refusal is
 * spelled out. Stateless.
 */
public final class Cells {
    private Cells() {}

    /** The cells of a making at one station, in order of assembly. */
    public static List<Cell> of(Menu menu, Making making, String station) {
        List<Cell> cells = new ArrayList<>();
        for (Step step : Router.steps(menu, making.selection(), station)) {
            cells.add(new Cell(step.id(), words(menu, step, making)));
        }
        return cells;
    }

    /** The modifier groups that a station works with on a making, in order of assembly. */
    public static List<Group> groups(Menu menu, Making making, String station) {
        Item item = menu.item(making.selection().item());
        Set<Group> groups = new LinkedHashSet<>();
        for (String id : item.steps()) {
            Step step = menu.step(id);
            for (Step.Show show : step.shows()) {
                boolean here = step.station().equals(station) && show.what() == Step.What.GROUP;
                if (here && item.groups().contains(show.group())) {
                    groups.add(menu.group(show.group()));
                }
            }
        }
        return List.copyOf(groups);
    }

    /** What a selection says of one group: its choice, then its refusals. */
    public static List<CellWord> group(Menu menu, Group group, Making making) {
        Set<String> chosen = new HashSet<>(making.selection().options());
        chosen.retainAll(group.options().stream().map(Option::id).toList());
        List<CellWord> words = new ArrayList<>();
        boolean house = chosen.equals(Set.copyOf(group.defaults()));
        Optional<Bundle> bundle = bundle(group, chosen);
        if (bundle.isPresent() && !(house && chosen.isEmpty())) {
            words.add(new CellWord(house ? Tone.QUIET : Tone.STRONG, bundle.get().name()));
        } else {
            for (Option option : group.options()) {
                if (chosen.contains(option.id())) {
                    words.add(new CellWord(house ? Tone.QUIET : Tone.STRONG, option.name()));
                }
            }
        }
        Set<String> refused = Wishes.impliedNo(group, chosen);
        refused.addAll(making.selection().refused());
        for (Option option : group.options()) {
            if (refused.contains(option.id())) {
                words.add(new CellWord(Tone.NO, option.name()));
            }
        }
        return words;
    }

    private static List<CellWord> words(Menu menu, Step step, Making making) {
        List<CellWord> words = new ArrayList<>();
        Item item = menu.item(making.selection().item());
        for (Step.Show show : step.shows()) {
            switch (show.what()) {
                case ITEM -> words.add(new CellWord(itemTone(menu, item), item.name()));
                case SIZE -> size(item, making).ifPresent(words::add);
                case SERVICE -> words.add(service(menu, making));
                case GROUP -> {
                    if (item.groups().contains(show.group())) {
                        words.addAll(group(menu, menu.group(show.group()), making));
                    }
                }
            }
        }
        return words;
    }

    /** The first item on the menu is what the stand is known for, so its name is quiet. */
    private static Tone itemTone(Menu menu, Item item) {
        return menu.items().get(0).equals(item) ? Tone.QUIET : Tone.STRONG;
    }

    private static Optional<CellWord> size(Item item, Making making) {
        Optional<Size> size = item.size(making.selection().size());
        return size.map(
                s -> {
                    boolean house = s.id().equals(item.defaultSize());
                    return new CellWord(house ? Tone.QUIET : Tone.STRONG, s.name());
                });
    }

    private static CellWord service(Menu menu, Making making) {
        LocalText text = making.toGo() ? menu.speech().toGo() : menu.speech().here();
        return new CellWord(making.toGo() ? Tone.QUIET : Tone.STRONG, text);
    }

    private static Optional<Bundle> bundle(Group group, Set<String> chosen) {
        return group.bundles().stream()
                .filter(bundle -> Set.copyOf(bundle.options()).equals(chosen))
                .findFirst();
    }
}
