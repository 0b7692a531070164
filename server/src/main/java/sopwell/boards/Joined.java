package sopwell.boards;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sopwell.kitchen.Again;
import sopwell.kitchen.Kitchen;
import sopwell.kitchen.Making;
import sopwell.kitchen.Part;
import sopwell.kitchen.PartId;
import sopwell.kitchen.PartState;

/**
 * Parts of one order that a station can't tell apart: made the same way, equally far, with nothing
 * about any of them to be read. They are one row. Immutable.
 *
 * @param parts by their lines, one at least
 */
record Joined(List<Part> parts) {
    Joined {
        parts = List.copyOf(parts);
    }

    /** What parts must have in common to be one row; a part that must be read stands alone. */
    private record Alike(
            String order, Making one, PartState state, Optional<Again> again, long placedAtMs) {}

    /** The part that names the row. */
    Part lead() {
        return parts.get(0);
    }

    /** How many pieces in all. */
    int pieces() {
        return parts.stream().mapToInt(Part::pieces).sum();
    }

    /** How many pieces of it are made again, and why; parts that are not alike are not joined. */
    Optional<Again> again() {
        return lead().again()
                .map(
                        one ->
                                new Again(
                                        one.pieces() * parts.size(),
                                        one.toMake() * parts.size(),
                                        one.reason()));
    }

    List<PartId> ids() {
        return parts.stream().map(Part::id).toList();
    }

    /** The rows of parts in sight, in the order of the parts that come first. */
    static List<Joined> of(Kitchen kitchen, Collection<Part> inSight) {
        Map<Object, List<Part>> rows = new LinkedHashMap<>();
        for (Part part : inSight) {
            Object key = alike(kitchen, part).map(a -> (Object) a).orElse(part.id());
            rows.computeIfAbsent(key, k -> new ArrayList<>()).add(part);
        }
        return rows.values().stream().map(Joined::new).toList();
    }

    /** Each part as a row of its own. */
    static List<Joined> apart(Collection<Part> inSight) {
        return inSight.stream().map(part -> new Joined(List.of(part))).toList();
    }

    private static Optional<Alike> alike(Kitchen kitchen, Part part) {
        boolean plain = !kitchen.isUnseen(part) && kitchen.queries().inSight(part.id()).isEmpty();
        Making one = part.making().of(1);
        return plain
                ? Optional.of(
                        new Alike(
                                part.id().order(),
                                one,
                                part.state(),
                                part.again(),
                                part.placedAtMs()))
                : Optional.empty();
    }
}
