package sopwell.web.pages;

import java.util.List;
import java.util.stream.Collectors;
import sopwell.boards.CounterQuery;
import sopwell.boards.RowQuery;
import sopwell.kitchen.Answers;
import sopwell.web.T;

/** Questions and answers in words. Immutable. */
public record QueryView(T t) {
    /**
     * The keys that answer, in the order of the answers; none that a browser or the counter needs.
     */
    private static final List<String> KEYS = List.of("F2", "F3", "F4", "F7");

    /** What is asked. */
    public String question(RowQuery asked) {
        String text = asked.query().question().text();
        String words = text.isEmpty() ? "" : t.of("query.text", text);
        if (!asked.isAboutGroup()) {
            return text.isEmpty() ? t.get("query.right") : words;
        }
        List<String> options = asked.options().stream().map(t::local).toList();
        String group =
                options.isEmpty()
                        ? t.of("query.group", t.local(asked.group()))
                        : t.of("query.options", t.local(asked.group()), t.either(options));
        return text.isEmpty() ? group : group + " " + words;
    }

    /** What was answered. */
    public String answer(RowQuery asked) {
        String what = t.get(asked.query().changed() ? "query.changed" : "query.as-ordered");
        String text = asked.query().answer();
        return text.isEmpty() ? what : t.of("query.and-text", what, text);
    }

    /**
     * Everything that makes the strip look as it does, so that it is left alone while that holds.
     */
    public String sameness(List<CounterQuery> queries) {
        return queries.stream()
                .map(query -> query.asked().query().id() + " " + t.local(query.line()))
                .collect(Collectors.joining(" | "));
    }

    /** The choices that change something. */
    public List<Answers.Choice> others(CounterQuery query) {
        return query.choices().stream().filter(choice -> !choice.asOrdered()).toList();
    }

    /** What stands on the key that leaves the line as it is. */
    public String asOrdered(CounterQuery query) {
        return query.choices().stream()
                .filter(Answers.Choice::asOrdered)
                .findFirst()
                .map(choice -> t.local(choice.name()))
                .orElse(t.get("query.as-ordered"));
    }

    /** What a choice costs more or less, with its sign, or empty. */
    public String more(Answers.Choice choice) {
        if (choice.moreCents() == 0) {
            return "";
        }
        String sign = choice.moreCents() < 0 ? "−" : "+";
        return sign + t.money(Math.abs(choice.moreCents()));
    }

    /** What an answer sends, as JSON. */
    public String sends(CounterQuery query, Answers.Choice choice) {
        String options = String.join(",", choice.options());
        return "{\"query\":\"" + query.asked().query().id() + "\",\"options\":\"" + options + "\"}";
    }

    /** What the answer that leaves the line as it is sends, as JSON. */
    public String sends(CounterQuery query) {
        return "{\"query\":\"" + query.asked().query().id() + "\"}";
    }

    /** The key of an answer, or empty when there are more answers than keys. */
    public String key(int place) {
        return place < KEYS.size() ? KEYS.get(place) : "";
    }
}
