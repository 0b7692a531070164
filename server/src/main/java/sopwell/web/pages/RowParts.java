package sopwell.web.pages;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sopwell.Limits;
import sopwell.kitchen.PartId;

/** Which parts a press on a board's row is about. Stateless. */
final class RowParts {
    private RowParts() {}

    /**
     * The part in the address, then those that the field {@code with} names, parted by spaces: what
     * the row showed when it was pressed. Empty when one of them is no part of the address's
     * station and order.
     */
    static Optional<List<PartId>> of(Ask ask) {
        List<String> written = new ArrayList<>(List.of(ask.in("part")));
        String with = ask.field("with").isEmpty() ? ask.in("with") : ask.field("with");
        if (!with.isBlank()) {
            written.addAll(List.of(with.strip().split(" ", -1)));
        }
        return written.size() > Limits.ORDER_LINES_MAX
                ? Optional.empty()
                : read(written, ask.in("station")).filter(RowParts::areOfOneOrder);
    }

    /** Parts by their names; empty when one of them is no part of the station. */
    static Optional<List<PartId>> read(List<String> written, String station) {
        List<PartId> parts = new ArrayList<>();
        for (String one : written) {
            Optional<PartId> part = PartId.read(one).filter(id -> id.station().equals(station));
            if (part.isEmpty()) {
                return Optional.empty();
            }
            parts.add(part.get());
        }
        return Optional.of(parts);
    }

    private static boolean areOfOneOrder(List<PartId> parts) {
        return parts.stream().map(PartId::order).distinct().count() == 1;
    }
}
