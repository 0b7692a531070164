package sopwell.net;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import sopwell.web.StandServer;

/** Answers lost, requests doubled and out of order: everything is done once. */
class AnswerTest {
    @Test
    void ordersAreThereOnceWhateverBecomesOfTheirAnswers() throws IOException {
        try (StandServer stand = StandServer.fresh();
                BadLink link = new BadLink(stand.port())) {
            AnswerRun run = new AnswerRun(stand.uri("").toString(), link, 11);
            run.orders(60);
            assertTrue(link.laid() > 120 * 1.1, "answers were lost on the way: " + link.laid());
            run.oneKey(20);
            run.otherBodies(10);
            run.edits(8);
        }
    }
}
