package sopwell.boards;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.Part;
import sopwell.kitchen.Query;
import sopwell.menu.Group;
import sopwell.menu.LocalText;
import sopwell.menu.Menu;

/**
 * A query with the names that its words are made of. Immutable.
 *
 * @param group the modifier group that it asks about, or empty texts
 * @param options the options that it asks about; none when it means the whole group, or no group
 */
public record RowQuery(Query query, LocalText group, List<LocalText> options) {
    private static final LocalText NO_TEXT = new LocalText("", "");

    public RowQuery {
        options = List.copyOf(options);
    }

    /** What a part's station has asked and not been answered, or was answered and has not seen. */
    static Optional<RowQuery> of(Kitchen kitchen, Part part, Function<String, Menu> menus) {
        return kitchen.queries()
                .inSight(part.id())
                .map(query -> of(query, menus.apply(part.making().menuRevision())));
    }

    static RowQuery of(Query query, Menu menu) {
        List<String> asked = query.question().options();
        if (asked.isEmpty() || !asked.stream().allMatch(menu::hasOption)) {
            return new RowQuery(query, NO_TEXT, List.of());
        }
        Group group = menu.groupOf(asked.get(0));
        boolean whole = asked.size() == group.options().size();
        return new RowQuery(
                query,
                group.name(),
                whole ? List.of() : asked.stream().map(id -> menu.option(id).name()).toList());
    }

    /** Whether it is about a modifier group. */
    public boolean isAboutGroup() {
        return !group.en().isEmpty();
    }
}
