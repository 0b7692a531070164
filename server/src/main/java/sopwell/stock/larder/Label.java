package sopwell.stock.larder;

import java.time.LocalDate;

/**
 * What stands on a batch that was made and is kept. Immutable.
 *
 * @param batch the batch's id
 * @param makes the ingredient
 * @param thousandths what it gave, in thousandths of the base unit
 * @param preparedOn day 1 of its life
 * @param useBy the last day on which it may be used
 */
public record Label(
        String batch, String makes, long thousandths, LocalDate preparedOn, LocalDate useBy) {}
