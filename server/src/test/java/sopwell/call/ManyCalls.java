package sopwell.call;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import sopwell.menu.Menu;

/** Menus and calls in quantity, for tests of other packages. The same seed gives the same ones. */
public final class ManyCalls {
    private ManyCalls() {}

    /**
     * A menu and texts that somebody could type at its counter.
     *
     * @param texts orders as they are printed, mixtures of the menu's words, slips and any text
     */
    public record Case(Menu menu, List<String> texts) {}

    /** The demo's menu and so many texts. */
    public static Case demo(long seed, int texts) {
        return of(DemoMenu.read(), seed, texts);
    }

    /** Some other menu and so many texts. */
    public static Case other(long seed, int texts) {
        return of(RandomMenus.menu(seed), seed, texts);
    }

    private static Case of(Menu menu, long seed, int count) {
        RandomCalls calls = new RandomCalls(menu, seed);
        CallPrinter printer = new CallPrinter(new CallParser(menu));
        SplittableRandom random = new SplittableRandom(seed);
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            texts.add(
                    switch (i % 5) {
                        case 0 -> printer.print(calls.order(5));
                        case 1 -> calls.mixture(12);
                        case 2 -> calls.line();
                        case 3 -> slipped(printer.print(calls.order(3)), random);
                        default -> anything(random);
                    });
        }
        return new Case(menu, texts);
    }

    /** A text with a letter left out, doubled, exchanged, or in capitals. */
    private static String slipped(String text, SplittableRandom random) {
        int at = random.nextInt(text.length());
        String rest = text.substring(at + 1);
        String before = text.substring(0, at);
        char letter = text.charAt(at);
        return switch (random.nextInt(4)) {
            case 0 -> before + rest;
            case 1 -> before + letter + letter + rest;
            case 2 -> before + (char) ('a' + random.nextInt(26)) + rest;
            default -> before + Character.toUpperCase(letter) + rest;
        };
    }

    /** Any characters at all that Unicode knows; of others the browser's Java thinks otherwise. */
    private static String anything(SplittableRandom random) {
        StringBuilder text = new StringBuilder();
        int length = random.nextInt(60);
        for (int i = 0; i < length; i++) {
            int below = random.nextInt(3) == 0 ? 0x110000 : 0x250;
            int point = random.nextInt(below);
            text.appendCodePoint(Character.isDefined(point) ? point : '?');
        }
        return text.toString();
    }
}
