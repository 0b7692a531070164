package sopwell.counter;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sopwell.Check;
import sopwell.call.CallParser;
import sopwell.counter.Lines.In;
import sopwell.counter.Lines.Out;
import sopwell.menu.Lang;
import sopwell.menu.Menu;
import sopwell.money.Rounding;
import sopwell.money.TaxRule;

/**
 * Everything that a counter needs to read and price calls by itself. Immutable.
 *
 * @param menu the menu in force when it was made
 * @param tax the stand's sales tax
 * @param phrases the texts of one language that the counter says
 */
public record Kit(Menu menu, TaxRule tax, Phrases phrases) {
    private static final String FORM = "sopwell counter 1";
    private static final String[] SAID = {
        "call.",
        "counter.",
        "outbox.",
        "quote",
        "list.and",
        "out.size",
        "refusal.OUT",
        "refusal.TOO_FEW_LEFT",
        "refusal.near",
        "refusal.CARD_NUMBER",
        "field.name"
    };

    /** A kit whose texts are those that a counter can need. */
    public static Kit of(Menu menu, TaxRule tax, Phrases all) {
        return new Kit(menu, tax, all.only(SAID));
    }

    /** The kit as plain text. */
    public String written() {
        Out out = new Out().text(FORM).text(menu.revision());
        out.number(tax.rateMilliPercent()).text(tax.basis().name());
        out.text(tax.rounding().name()).flag(tax.included());
        out.text(phrases.lang().name());
        List<Map.Entry<String, String>> texts =
                List.copyOf(new TreeMap<>(phrases.texts()).entrySet());
        out.list(texts, (o, text) -> o.text(text.getKey()).text(text.getValue()));
        MenuLines.write(out, menu.parts());
        return out.written();
    }

    /** The kit that was written. */
    public static Kit read(String written) {
        In in = new In(written);
        Check.that(in.text().equals(FORM), "a kit is of the form that this Sopwell writes");
        String revision = in.text();
        TaxRule tax =
                new TaxRule(
                        in.whole(),
                        TaxRule.Basis.valueOf(in.text()),
                        Rounding.valueOf(in.text()),
                        in.flag());
        Lang lang = Lang.valueOf(in.text());
        Map<String, String> texts = new TreeMap<>();
        in.list(
                i -> {
                    String key = i.text();
                    return texts.put(key, i.text());
                });
        Menu menu = new Menu(revision, MenuLines.read(in));
        in.end();
        return new Kit(menu, tax, new Phrases(lang, texts));
    }

    /** Views by this kit. */
    public CallViews views() {
        return new CallViews(new CallParser(menu), phrases, tax);
    }
}
