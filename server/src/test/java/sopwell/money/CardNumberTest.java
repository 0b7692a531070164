package sopwell.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The numbers here are the card schemes' published test numbers; none belongs to anybody. */
class CardNumberTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "4111111111111111",
                "4111 1111 1111 1111",
                "4111-1111-1111-1111",
                "4111 – 1111 – 1111 – 1111",
                "4111\u00a01111\u20111111\u20111111",
                "5555555555554444",
                "5105 1051 0510 5100",
                "2223003122003222",
                "378282246310005",
                "3714 496353 98431",
                "6011111111111117",
                "3530111333300000",
                "30569309025904",
                "4222222222222",
                "6304 0000 0000 0000 000",
                "card 4111 1111 1111 1111, Ines",
                "4111 1111 1111 1111 123",
                "2 4111 1111 1111 1111",
                "4111 1111 1111 1111 12/27",
                "４１１１ １１１１ １１１１ １１１１",
                "beef for 4242424242424242 please"
            })
    void findsTheNumberOfACard(String text) {
        assertTrue(CardNumber.isIn(text), text);
        String hidden = CardNumber.hidden(text);
        assertFalse(CardNumber.isIn(hidden), hidden);
        assertTrue(hidden.contains("…"), hidden);
        assertFalse(hidden.contains("1111 1111"), hidden);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "Ines",
                "4111111111111112",
                "4111111111111110",
                "4111 1111 1111 1121",
                "5555555555554445",
                "378282246310006",
                "411111111111",
                "41111111111111111111",
                "4111, 1111, 1111, 1111",
                "2 beef dipped hot, fries",
                "555 0100, 555 0101",
                "20261125-0214",
                "out of rolls since 12:40, ask Theo (ext. 4111)"
            })
    void letsEverythingElsePass(String text) {
        assertFalse(CardNumber.isIn(text), text);
        assertEquals(text, CardNumber.hidden(text));
    }

    @Test
    void hidesOnlyTheNumber() {
        assertEquals("for … please", CardNumber.hidden("for 4111 1111 1111 1111 please"));
        assertEquals("…; …", CardNumber.hidden("4111111111111111; 5555 5555 5555 4444"));
    }

    @Test
    void findsAnyNumberThatIsRightByTheFormulaAndNoOther() {
        java.util.SplittableRandom random = new java.util.SplittableRandom(3);
        for (int i = 0; i < 5_000; i++) {
            int digits = 10 + random.nextInt(12);
            StringBuilder number = new StringBuilder();
            for (int d = 0; d < digits; d++) {
                number.append(random.nextInt(10));
            }
            boolean length = digits >= 13 && digits <= 19;
            assertEquals(
                    length && luhn(number.toString()),
                    CardNumber.isIn(number.toString()),
                    String.format(Locale.ROOT, "%s", number));
        }
    }

    /** The formula as it is usually told, with a table for the doubled digits. */
    private static boolean luhn(String number) {
        int[] doubled = {0, 2, 4, 6, 8, 1, 3, 5, 7, 9};
        int sum = 0;
        boolean second = false;
        for (char digit : new StringBuilder(number).reverse().toString().toCharArray()) {
            sum += second ? doubled[digit - '0'] : digit - '0';
            second = !second;
        }
        return sum % 10 == 0;
    }
}
