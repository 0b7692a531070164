package sopwell.web.pages;

import java.util.List;
import sopwell.kitchen.PartId;
import sopwell.menu.LocalText;

/**
 * What can be made again of a row. Immutable.
 *
 * @param parts one at least
 * @param number the order's
 * @param pieces how many there are
 */
public record Remakable(List<PartId> parts, int number, LocalText item, int pieces) {
    public Remakable {
        parts = List.copyOf(parts);
    }

    /** The first part, which the address names. */
    public PartId lead() {
        return parts.get(0);
    }

    /** The others, as the field {@code with} names them. */
    public String with() {
        return String.join(" ", parts.stream().skip(1).map(PartId::toString).toList());
    }
}
