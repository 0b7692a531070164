package sopwell.counter;

import java.util.List;
import java.util.Optional;
import sopwell.menu.Item;
import sopwell.menu.Menu;
import sopwell.menu.Out;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;

/** What people call things that are out. Stateless. */
public final class OutWords {
    private OutWords() {}

    /** What a menu calls something that is out; it must be on that menu. */
    public static String name(Out out, Menu menu, Phrases phrases) {
        return switch (out.kind()) {
            case ITEM -> phrases.local(menu.item(out.item()).name());
            case OPTION -> phrases.local(menu.option(out.id()).name());
            case SIZE -> {
                Item item = menu.item(out.item());
                String size = phrases.local(item.size(out.id()).orElseThrow().name());
                yield phrases.of("out.size", size, phrases.local(item.name()));
            }
        };
    }

    /** The same of what was written, which stands for itself when no menu knows it. */
    public static String named(String written, Menu menu, Phrases phrases) {
        Optional<Out> out = menu == null ? Optional.empty() : Out.read(written);
        return out.filter(o -> o.isOn(menu)).map(o -> name(o, menu, phrases)).orElse(written);
    }

    /**
     * What is out, or how few are left, and what could be had instead.
     *
     * @param refusal for the reason {@link Reason#OUT} or {@link Reason#TOO_FEW_LEFT}
     */
    public static String sentence(Refusal refusal, Menu menu, Phrases phrases) {
        List<String> args = refusal.args();
        String key = "refusal." + refusal.reason().name();
        String what = named(args.get(0), menu, phrases);
        return refusal.reason() == Reason.OUT
                ? phrases.of(key, what, near(args, 1, menu, phrases))
                : phrases.of(key, what, args.get(1), args.get(2), near(args, 3, menu, phrases));
    }

    /** A sentence of its own; nothing when there is nothing near. */
    private static String near(List<String> args, int from, Menu menu, Phrases phrases) {
        if (args.size() <= from) {
            return "";
        }
        List<String> names =
                args.subList(from, args.size()).stream()
                        .map(near -> named(near, menu, phrases))
                        .toList();
        return " " + phrases.of("refusal.near", phrases.list(names));
    }
}
