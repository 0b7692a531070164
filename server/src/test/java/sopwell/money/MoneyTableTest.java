package sopwell.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Runs the table of worked cases, money.table. */
class MoneyTableTest {
    private static final int CASES_MIN = 60;
    private static final Pattern CASE =
            Pattern.compile("(tax|cash|change|tender) (.+?)=>\\s*(.+?)\\s*#\\s*(.+)");

    private record Case(String what, List<String> given, String expected, String source) {}

    @TestFactory
    Stream<DynamicTest> comesOutAsTheTableSays() throws IOException {
        return cases().stream()
                .map(
                        one ->
                                DynamicTest.dynamicTest(
                                        one.what() + " " + one.given(),
                                        () -> assertEquals(one.expected(), outcome(one))));
    }

    @Test
    void theTableHasEnoughCasesAndSaysWhereEachIsFrom() throws IOException {
        List<Case> cases = cases();
        assertTrue(cases.size() >= CASES_MIN, cases.size() + " cases");
        long published = cases.stream().filter(one -> !one.source().startsWith("worked")).count();
        assertTrue(published >= 20, published + " cases are from published rules");
        assertEquals(
                cases.size(),
                cases.stream().map(one -> one.what() + one.given()).distinct().count());
    }

    private static String outcome(Case one) {
        List<String> given = one.given();
        return switch (one.what()) {
            case "tax" -> bill(given);
            case "cash" -> {
                List<String> rule = List.of(given.get(0).split(" "));
                CashRounding rounding =
                        new CashRounding(
                                Integer.parseInt(rule.get(0)),
                                CashRounding.Tie.valueOf(rule.get(1).toUpperCase(Locale.ROOT)));
                yield "" + rounding.roundCents(Long.parseLong(given.get(1)));
            }
            case "change" ->
                    written(
                            units(given.get(0)).change(Long.parseLong(given.get(1))).stream()
                                    .map(count -> count.pieces() + "x" + count.unit().cents()));
            default ->
                    written(
                            units(given.get(0)).tendersCents(Long.parseLong(given.get(1))).stream()
                                    .map(cents -> "" + cents));
        };
    }

    private static String bill(List<String> given) {
        List<String> rule = List.of(given.get(0).split(" "));
        TaxRule tax =
                new TaxRule(
                        Integer.parseInt(rule.get(0)),
                        TaxRule.Basis.valueOf(rule.get(1).toUpperCase(Locale.ROOT)),
                        Rounding.valueOf(rule.get(2).toUpperCase(Locale.ROOT).replace('-', '_')),
                        rule.get(3).equals("in"));
        List<Bill.Line> lines =
                Stream.of(given.get(1).split(" ", -1))
                        .map(
                                line ->
                                        new Bill.Line(
                                                Long.parseLong(line.replace("x", "")),
                                                !line.endsWith("x")))
                        .toList();
        Totals totals = Bill.of(lines, discount(given.get(2)), tax).totals();
        return String.format(
                Locale.ROOT,
                "%d -%d %d = %d",
                totals.subtotalCents(),
                totals.discountCents(),
                totals.taxCents(),
                totals.totalCents());
    }

    private static Discount discount(String written) {
        if (written.equals("none")) {
            return Discount.NONE;
        }
        if (!written.endsWith("%")) {
            return new Discount(Discount.Kind.GUEST, Long.parseLong(written), 0, "why");
        }
        int milliPercent =
                new BigDecimal(written.replace("%", "")).movePointRight(3).intValueExact();
        return new Discount(Discount.Kind.GUEST, 0, milliPercent, "why");
    }

    private static CashUnits units(String written) {
        List<List<Long>> both =
                Stream.of(written.split(" ; "))
                        .map(half -> LongStream.of(numbers(half)).boxed().toList())
                        .toList();
        return CashUnits.of(both.get(0), both.get(1));
    }

    private static long[] numbers(String written) {
        return Stream.of(written.split(" ", -1)).mapToLong(Long::parseLong).toArray();
    }

    private static String written(Stream<String> parts) {
        String all = parts.collect(Collectors.joining(" "));
        return all.isEmpty() ? "none" : all;
    }

    private static List<Case> cases() throws IOException {
        try (InputStream in = MoneyTableTest.class.getResourceAsStream("/tables/money.table")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(MoneyTableTest::read)
                    .toList();
        }
    }

    private static Case read(String line) {
        Matcher matcher = CASE.matcher(line);
        assertTrue(matcher.matches(), line);
        List<String> given = Stream.of(matcher.group(2).split("\\|")).map(String::strip).toList();
        return new Case(matcher.group(1), given, matcher.group(3), matcher.group(4));
    }
}
