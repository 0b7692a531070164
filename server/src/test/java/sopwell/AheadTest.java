package sopwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class AheadTest {
    private final RuntimeException damaged = new IllegalStateException("damaged");
    private final RuntimeException broken = new IllegalArgumentException("broken");

    private final List<String> undone = new ArrayList<>();

    @Test
    void whatIsMadeIsHandedOnOnlyAfterTheCheckHasEnded() {
        CountDownLatch made = new CountDownLatch(1);
        List<String> order = new ArrayList<>();
        String result =
                Ahead.whileChecking(
                        () -> {
                            await(made);
                            order.add("checked");
                        },
                        () -> {
                            made.countDown();
                            return "made";
                        },
                        undone::add);
        order.add(result);
        assertEquals(List.of("checked", "made"), order);
        assertEquals(List.of(), undone);
    }

    @Test
    void whatFailsTheCheckIsThrownAndWhatWasMadeIsUndone() {
        RuntimeException thrown =
                assertThrows(
                        IllegalStateException.class,
                        () -> Ahead.whileChecking(() -> fail(damaged), () -> "made", undone::add));
        assertSame(damaged, thrown);
        assertEquals(List.of("made"), undone);
    }

    @Test
    void whatBreaksBesideAFailedCheckSaysWhatTheCheckFound() {
        RuntimeException thrown =
                assertThrows(
                        IllegalStateException.class,
                        () -> Ahead.whileChecking(() -> fail(damaged), this::broken, undone::add));
        assertSame(damaged, thrown);
        assertEquals(List.of(), undone);
    }

    @Test
    void whatBreaksBesideAGoodCheckIsThrown() {
        RuntimeException thrown =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> Ahead.whileChecking(() -> {}, this::broken, undone::add));
        assertSame(broken, thrown);
    }

    private static void fail(RuntimeException fault) {
        throw fault;
    }

    private String broken() {
        throw broken;
    }

    private static void await(CountDownLatch latch) {
        try {
            if (!latch.await(10, TimeUnit.SECONDS)) {
                throw new IllegalStateException("it was not made beside the check");
            }
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }
}
