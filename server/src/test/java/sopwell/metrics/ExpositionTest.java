package sopwell.metrics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The strict reading takes what is in the format, and nothing else. */
class ExpositionTest {
    private static final String GOOD =
            """
            # HELP a_total Some \\\\ help.
            # TYPE a_total counter
            a_total{b="c\\"",d=""} 3
            a_total 1.5E3 1395066363000

            # a remark
            # TYPE h histogram
            h_bucket{r="x",le="0.5"} 1
            h_bucket{r="x",le="+Inf"} 2
            h_sum{r="x"} 3
            h_count{r="x"} 2
            # TYPE g gauge
            g NaN
            """;

    @Test
    void takesWhatIsInTheFormat() {
        Exposition read = new Exposition(GOOD);
        assertEquals(Map.of("a_total", "counter", "h", "histogram", "g", "gauge"), read.types());
        assertEquals(3, read.value("a_total{b=c\\\", d=}"));
        assertEquals(1_500, read.value("a_total"));
        assertEquals(2, read.value("h_count{r=x}"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "# TYPE a counter\na 1",
                "a 1\n",
                "# TYPE a countess\na 1\n",
                "# TYPE a counter\n# TYPE a counter\na 1\n",
                "# TYPE a counter\na 1\n# HELP a late\n",
                "# HELP a one\n# HELP a two\n# TYPE a counter\na 1\n",
                "# TYPE a counter\na 1\na 1\n",
                "# TYPE a counter\na -1\n",
                "# TYPE a counter\nb 1\n",
                "# TYPE a counter\na{b=c} 1\n",
                "# TYPE a counter\na{b=\"c} 1\n",
                "# TYPE a counter\na{b=\"\\t\"} 1\n",
                "# TYPE a counter\na{b=\"c\" d=\"e\"} 1\n",
                "# TYPE a counter\na{1b=\"c\"} 1\n",
                "# TYPE a counter\na one\n",
                "# TYPE a counter\na 0x1\n",
                "# TYPE a counter\na  1\n",
                "# TYPE a-b counter\na-b 1\n",
                "# TYPE a counter\na 1\n# TYPE b counter\nb 1\n# TYPE a gauge\n",
                "# TYPE h histogram\nh_sum 1\nh_count 0\n",
                "# TYPE h histogram\nh_bucket{le=\"1\"} 1\nh_sum 1\nh_count 1\n",
                "# TYPE h histogram\nh_bucket{le=\"+Inf\"} 1\nh_sum 1\nh_count 2\n",
                "# TYPE h histogram\nh_bucket{le=\"+Inf\"} 1\nh_count 1\n",
                """
                # TYPE h histogram
                h_bucket{le="1"} 2
                h_bucket{le="+Inf"} 1
                h_sum 1
                h_count 1
                """,
                """
                # TYPE h histogram
                h_bucket{le="+Inf"} 1
                h_bucket{le="1"} 1
                h_sum 1
                h_count 1
                """
            })
    void findsWhatIsNot(String text) {
        assertThrows(AssertionError.class, () -> new Exposition(text));
    }
}
