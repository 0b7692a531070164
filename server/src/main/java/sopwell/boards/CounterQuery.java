package sopwell.boards;

import java.util.List;
import sopwell.kitchen.Answers;
import sopwell.menu.LocalText;

/**
 * A station's question as the counter sees it. Immutable.
 *
 * @param number the order's number
 * @param name the guest's name, or empty
 * @param station who asks
 * @param line the order's line in full words
 * @param quantity how many pieces the line has: an answer holds for all of them
 * @param choices the answers that take one press, what is ordered first
 */
public record CounterQuery(
        RowQuery asked,
        int number,
        String name,
        LocalText station,
        LocalText line,
        int quantity,
        List<Answers.Choice> choices) {
    public CounterQuery {
        choices = List.copyOf(choices);
    }
}
