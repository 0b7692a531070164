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
import sopwell.money.CashRounding;
import sopwell.money.CashRule;
import sopwell.money.CashUnit;
import sopwell.money.CashUnits;
import sopwell.money.Rounding;
import sopwell.money.TaxRule;

/**
 * Everything that a counter needs to read and price calls by itself. Immutable.
 *
 * @param menu the menu in force when it was made
 * @param tax the stand's sales tax
 * @param cash how the stand deals in cash
 * @param phrases the texts of one language that the counter says
 */
public record Kit(Menu menu, TaxRule tax, CashRule cash, Phrases phrases) {
    private static final String FORM = "sopwell counter 1";
    private static final String[] SAID = {
        "call.",
        "counter.",
        "outbox.",
        "reason.",
        "quote",
        "list.and",
        "out.size",
        "refusal.OUT",
        "refusal.TOO_FEW_LEFT",
        "pay.",
        "refusal.near",
        "refusal.CARD_NUMBER",
        "field.name",
        "field.text"
    };

    /** A kit whose texts are those that a counter can need. */
    public static Kit of(Menu menu, TaxRule tax, CashRule cash, Phrases all) {
        return new Kit(menu, tax, cash, all.only(SAID));
    }

    /** The kit as plain text. */
    public String written() {
        Out out = new Out().text(FORM).text(menu.revision());
        out.number(tax.rateMilliPercent()).text(tax.basis().name());
        out.text(tax.rounding().name()).flag(tax.included());
        cash(out);
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
        CashRule cash = cash(in);
        Lang lang = Lang.valueOf(in.text());
        Map<String, String> texts = new TreeMap<>();
        in.list(
                i -> {
                    String key = i.text();
                    return texts.put(key, i.text());
                });
        Menu menu = new Menu(revision, MenuLines.read(in));
        in.end();
        return new Kit(menu, tax, cash, new Phrases(lang, texts));
    }

    private void cash(Out out) {
        out.number(cash.rounding().stepCents()).text(cash.rounding().tie().name());
        out.list(cash.units().units(), (o, unit) -> o.number(unit.cents()).flag(unit.note()));
    }

    private static CashRule cash(In in) {
        CashRounding rounding = new CashRounding(in.whole(), CashRounding.Tie.valueOf(in.text()));
        return new CashRule(
                rounding, new CashUnits(in.list(i -> new CashUnit(i.number(), i.flag()))));
    }

    /** Taking money by this kit. */
    public CashWords cashWords() {
        return new CashWords(cash, phrases);
    }

    /** Views by this kit. */
    public CallViews views() {
        return new CallViews(new CallParser(menu), phrases, tax);
    }
}
