package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import sopwell.desk.DeskBusy;

/** A page that waits only so long, and what it waited for goes on. */
class WithinTest {
    @Test
    void whatTakesLongerIsLeftToGoOnAndIsThereForTheNextLook() throws Exception {
        CompletableFuture<String> slow = new CompletableFuture<>();
        assertEquals(Optional.empty(), PageHandling.within(5, slow));
        assertFalse(slow.isDone(), "nobody gave it up");
        slow.complete("counted");
        assertEquals(Optional.of("counted"), PageHandling.within(5, slow));
    }

    @Test
    void whatFailsIsNotTakenForWhatIsLate() {
        CompletableFuture<String> busy = CompletableFuture.failedFuture(new DeskBusy("full"));
        assertThrows(
                PageHandling.Interrupted.class, () -> PageHandling.within(1_000, busy).isEmpty());
    }
}
