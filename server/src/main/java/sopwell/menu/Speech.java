package sopwell.menu;

import java.util.List;
import java.util.Map;

/**
 * The small words of a call, whatever is sold. Immutable.
 *
 * @param and words that part two lines, beside the comma
 * @param no words that refuse the modifier after them; the first is how Sopwell writes it
 * @param skip words that mean nothing ("with", "please")
 * @param numbers words for quantities
 * @param toGo what an order that leaves the stand is called on the boards
 * @param here what an order eaten at the stand is called on the boards
 */
public record Speech(
        List<String> and,
        List<String> no,
        List<String> skip,
        Map<String, Integer> numbers,
        LocalText toGo,
        LocalText here) {
    public Speech {
        and = List.copyOf(and);
        no = List.copyOf(no);
        skip = List.copyOf(skip);
        numbers = Map.copyOf(numbers);
    }
}
