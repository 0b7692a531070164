package sopwell.boards;

import java.util.List;
import java.util.Optional;
import sopwell.kitchen.Again;
import sopwell.kitchen.PartId;
import sopwell.menu.LocalText;

/**
 * One row of a station's board: so many alike of one order. Immutable.
 *
 * @param parts what is joined in it, the one that names the row first
 * @param digit the key that works this row, 1 to 9, kept while the row is there; 0 for none
 * @param number the order's number
 * @param name the guest's name, or empty
 * @param quantity how many alike
 * @param quantityBefore how many before an unseen change, or 0 when that did not change
 * @param item what it is
 * @param cells one for each column of the board
 * @param started whether work has begun
 * @param unseen whether the station must say "seen"
 * @param cancelled whether it was taken off the order
 * @param waits what it waits for at other stations, until that is up
 * @param again how many of it are made again, and why
 * @param query what the station has asked and not been answered, or not seen the answer to
 * @param startByMs when it is to be begun, milliseconds since 1970-01-01 UTC; 0 once that is over,
 *     or it is begun
 * @param placedAtMs since when its guest waits, milliseconds since 1970-01-01 UTC
 */
public record PartRow(
        List<PartId> parts,
        int digit,
        int number,
        String name,
        int quantity,
        int quantityBefore,
        LocalText item,
        List<StepCell> cells,
        boolean started,
        boolean unseen,
        boolean cancelled,
        List<RowWait> waits,
        Optional<Again> again,
        Optional<RowQuery> query,
        long startByMs,
        long placedAtMs)
        implements Row {
    public PartRow {
        parts = List.copyOf(parts);
        cells = List.copyOf(cells);
        waits = List.copyOf(waits);
    }

    /** The part that names the row. */
    public PartId part() {
        return parts.get(0);
    }

    @Override
    public String rowId() {
        return part().toString();
    }
}
