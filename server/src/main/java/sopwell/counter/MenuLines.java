package sopwell.counter;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sopwell.counter.Lines.In;
import sopwell.counter.Lines.Out;
import sopwell.menu.Bundle;
import sopwell.menu.Group;
import sopwell.menu.Item;
import sopwell.menu.LocalText;
import sopwell.menu.MenuParts;
import sopwell.menu.Option;
import sopwell.menu.Size;
import sopwell.menu.Speech;
import sopwell.menu.Station;
import sopwell.menu.Step;

/**
 * A menu's parts as plain lines and back: all that a call is read and priced by, without what can
 * hurt at a station and what is kept hot there. Stateless.
 */
final class MenuLines {
    private MenuLines() {}

    static void write(Out out, MenuParts parts) {
        speech(out, parts.speech());
        out.list(parts.stations(), MenuLines::station);
        out.list(parts.steps(), MenuLines::step);
        out.list(parts.groups(), MenuLines::group);
        out.list(parts.items(), MenuLines::item);
    }

    static MenuParts read(In in) {
        Speech speech = speech(in);
        List<Station> stations = in.list(MenuLines::station);
        List<Step> steps = in.list(MenuLines::step);
        List<Group> groups = in.list(MenuLines::group);
        List<Item> items = in.list(MenuLines::item);
        return new MenuParts(speech, stations, steps, groups, items);
    }

    private static void speech(Out out, Speech speech) {
        out.texts(speech.and()).texts(speech.no()).texts(speech.skip());
        List<Map.Entry<String, Integer>> numbers =
                List.copyOf(new TreeMap<>(speech.numbers()).entrySet());
        out.list(numbers, (o, number) -> o.text(number.getKey()).number(number.getValue()));
        local(out, speech.toGo());
        local(out, speech.here());
    }

    private static Speech speech(In in) {
        List<String> and = in.texts();
        List<String> no = in.texts();
        List<String> skip = in.texts();
        Map<String, Integer> numbers = new TreeMap<>();
        in.list(
                i -> {
                    String word = i.text();
                    return numbers.put(word, i.whole());
                });
        return new Speech(and, no, skip, numbers, local(in), local(in));
    }

    private static void station(Out out, Station station) {
        local(out.text(station.id()), station.name());
        out.number(station.hands()).number(station.load()).flag(station.builds());
    }

    private static Station station(In in) {
        return new Station(in.text(), local(in), in.whole(), in.whole(), in.flag());
    }

    private static void step(Out out, Step step) {
        local(out.text(step.id()), step.name());
        out.text(step.station());
        out.list(step.shows(), (o, show) -> o.text(show.what().name()).text(show.group()));
        out.number(step.seconds());
    }

    private static Step step(In in) {
        String id = in.text();
        LocalText name = local(in);
        String station = in.text();
        List<Step.Show> shows = in.list(i -> new Step.Show(Step.What.valueOf(i.text()), i.text()));
        return new Step(id, name, station, shows, in.whole());
    }

    private static void group(Out out, Group group) {
        local(out.text(group.id()), group.name());
        out.number(group.chooseMin()).number(group.chooseMax()).texts(group.defaults());
        out.list(group.options(), MenuLines::option);
        out.list(group.bundles(), MenuLines::bundle);
    }

    private static Group group(In in) {
        return new Group(
                in.text(),
                local(in),
                in.whole(),
                in.whole(),
                in.texts(),
                in.list(MenuLines::option),
                in.list(MenuLines::bundle));
    }

    private static void option(Out out, Option option) {
        local(out.text(option.id()), option.name());
        out.texts(option.words()).number(option.priceCents());
        out.text(option.insteadOf()).texts(option.allergens());
    }

    private static Option option(In in) {
        return new Option(in.text(), local(in), in.texts(), in.number(), in.text(), in.texts());
    }

    private static void bundle(Out out, Bundle bundle) {
        local(out.text(bundle.id()), bundle.name());
        out.texts(bundle.words()).texts(bundle.options());
    }

    private static Bundle bundle(In in) {
        return new Bundle(in.text(), local(in), in.texts(), in.texts());
    }

    private static void item(Out out, Item item) {
        local(out.text(item.id()), item.name());
        out.texts(item.words());
        out.list(item.sizes(), MenuLines::size);
        out.text(item.defaultSize()).number(item.priceCents());
        out.texts(item.groups()).texts(item.steps()).texts(item.allergens());
        out.list(item.days(), (o, day) -> o.number(day.getValue())).flag(item.taxed());
        out.number(item.keepsSeconds());
    }

    private static Item item(In in) {
        return new Item(
                in.text(),
                local(in),
                in.texts(),
                in.list(MenuLines::size),
                in.text(),
                in.number(),
                in.texts(),
                in.texts(),
                in.texts(),
                in.list(i -> DayOfWeek.of(i.whole())),
                in.flag(),
                in.whole());
    }

    private static void size(Out out, Size size) {
        local(out.text(size.id()), size.name());
        out.texts(size.words()).number(size.priceCents());
    }

    private static Size size(In in) {
        return new Size(in.text(), local(in), in.texts(), in.number());
    }

    private static void local(Out out, LocalText text) {
        out.text(text.en()).text(text.es());
    }

    private static LocalText local(In in) {
        return new LocalText(in.text(), in.text());
    }
}
