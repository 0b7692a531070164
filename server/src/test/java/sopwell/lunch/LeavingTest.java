package sopwell.lunch;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * One of three leaves a busy line and nobody says so: two orders later the quote counts with those
 * who are left.
 */
class LeavingTest {
    private static final int ROUNDS = 24;

    @Test
    void twoOrdersLaterItIsKnownWhereStartsAreTapped() {
        Leavings tapped = Leavings.of(1, 200, ROUNDS);
        assertTrue(tapped.times() >= ROUNDS / 2, tapped.toString());
        assertTrue(tapped.mean(0) > 2.5, "nobody can know yet: " + tapped);
        assertTrue(tapped.mean(2) < 2.5, tapped.toString());
        assertTrue(tapped.known(2) >= 0.75, tapped.toString());
    }

    @Test
    void aTenthOfStartsForgottenMakesItSlowerNotBlind() {
        Leavings most = Leavings.of(0.9, 200, ROUNDS);
        assertTrue(most.mean(2) < 2.5, most.toString());
        assertTrue(most.known(4) >= 0.75, most.toString());
    }
}
