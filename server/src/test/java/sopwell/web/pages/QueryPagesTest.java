package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.menu.Lang;

/** Questions and answers as the screens show them, and edits that come too late. */
class QueryPagesTest {
    private PageStand stand;
    private int answers;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    @Test
    void offersTheGroupsOfARowInOrderOfAssemblyWithADigitEach() {
        String beef = stand.place("beef dipped, fries", "Ines");
        String chooser = flat(stand.get("/boards/line/parts/" + beef + ".1.line/question"));
        assertTrue(chooser.contains("data-ask=\"1\""), chooser);
        assertTrue(chooser.indexOf("Cheese?") < chooser.indexOf("Dip?"), chooser);
        assertTrue(chooser.contains("hx-vals='{\"options\":\"dry,wet,dipped,twice\"}'"), chooser);
        assertTrue(chooser.contains("<b>5</b> Right as is?"), chooser);
        String fries = flat(stand.get("/boards/fryer/parts/" + beef + ".2.fryer/question"));
        assertTrue(fries.contains("<b>1</b> Right as is?"), fries);
        assertEquals(
                404, stand.get("/boards/grill/parts/" + beef + ".1.line/question").statusCode());
        assertEquals(
                404, stand.get("/boards/line/parts/20000101-0001.1.line/question").statusCode());
    }

    @Test
    void standsInTheRowAndAtTheCounterInTheReadersLanguage() {
        String beef = stand.place("2 beef dipped hot", "Ines");
        ask(beef, Map.of("options", "dry,dipped"));
        stand.later(40);
        String row = flat(stand.get("/boards/line"));
        assertTrue(row.contains("0:40</span></b> Dip: dry or dipped?"), row);
        assertTrue(row.contains(" asked\">"), "the cell is marked");
        String counter = flat(stand.get("/counter"));
        assertTrue(counter.contains("Line asks:</span> <b>Dip: dry or dipped?</b>"), counter);
        assertTrue(counter.contains("2 × regular beef, dipped, hot"), counter);
        assertTrue(counter.contains("the answer holds for all 2"), counter);
        assertTrue(counter.contains("<kbd>F2</kbd> <span>dipped</span>"), counter);
        String spanish = stand.written(stand.frame("counter"), Lang.ES).replaceAll("\\s+", " ");
        assertTrue(spanish.contains("Línea pregunta:"), spanish);
        assertTrue(spanish.contains("<b>Baño: ¿seco o bañado?</b>"), spanish);
        assertTrue(flat(stand.get("/pass")).contains("Line: asked"), "the pass knows it");
    }

    @Test
    void saysWhatAChoiceCostsMoreAndWhatTheOrderComesToThen() {
        String beef = stand.place("2 beef dipped", "");
        ask(beef, Map.of("options", "provolone,mozzarella,cheddar-sauce"));
        String counter = flat(stand.get("/counter"));
        assertTrue(counter.contains("<span>provolone</span> <small>+$1.50</small>"), counter);
        HttpResponse<String> answer =
                answer(Map.of("query", beef + ".1.line.1", "options", "provolone"));
        assertEquals(200, answer.statusCode());
        assertTrue(flat(answer).contains("Order 1 is changed: $18.73 in all."), flat(answer));
        String row = flat(stand.get("/boards/line"));
        assertTrue(row.contains("Answer:</b> changed"), row);
        assertFalse(stand.get("/counter").body().contains("data-query="), "nothing waits");
    }

    @Test
    void refusesASecondAnswerInWords() {
        String beef = stand.place("beef dipped", "");
        ask(beef, Map.of());
        Map<String, String> words = Map.of("query", beef + ".1.line.1", "text", "yes <b>");
        assertTrue(flat(answer(words)).contains("Order 1 stays as it is."));
        assertTrue(flat(stand.get("/boards/line")).contains("as it stands: “yes &lt;b&gt;”"));
        HttpResponse<String> second = answer(words);
        assertEquals(409, second.statusCode());
        assertTrue(second.body().contains("was answered already"), second.body());
        assertEquals(404, answer(Map.of("query", "gravel")).statusCode());
    }

    @Test
    void tellsTheSecondCashierWhatChangedAndLetsThemPutTheirsOverIt() {
        String order = stand.place("beef dipped, fries", "Ines");
        stand.change(order, "beef dry, fries, cola");
        Map<String, String> mine = new HashMap<>();
        mine.put("key", "mine");
        mine.put("call", "2 beef dipped, fries");
        mine.put("name", "Ines");
        mine.put("service", "here");
        mine.put("version", "1");
        mine.put("number", "1");
        String path = "/counter/orders/" + order + "/changes";
        HttpResponse<String> stale = stand.press(path, "a", mine);
        assertEquals(409, stale.statusCode());
        String said = flat(stale);
        assertTrue(said.contains("line 1</b> <s>regular beef, dipped</s>"), said);
        assertTrue(said.contains("regular beef, dry"), said);
        assertTrue(said.contains("line 3</b> <span class=\"after\">regular cola"), said);
        assertTrue(said.contains("Name</b> <s>Ines</s>"), said);
        assertTrue(said.contains("hx-vals='{\"over\":\"2\"}'"), said);
        mine.put("over", "2");
        HttpResponse<String> over = stand.press(path, "b", mine);
        assertEquals("/counter?changed=1", over.headers().firstValue("HX-Redirect").get());
    }

    @Test
    void keepsVoidReasonsAsIdsAndReadsThemInEachLanguage() {
        String order = stand.place("beef", "");
        stand.place("beef", "");
        String edit = stand.get("/counter/orders/" + order + "/edit").body();
        assertTrue(edit.contains("value=\"gone\">Guest is gone</button>"), edit);
        Map<String, String> why = Map.of("reason", "gone", "number", "1", "version", "1");
        stand.press("/counter/orders/" + order + "/voids", "a", why);
        String other = stand.place("beef", "");
        Map<String, String> own = Map.of("written", "Fell down", "number", "3", "version", "1");
        stand.press("/counter/orders/" + other + "/voids", "b", own);
        String mix = flat(stand.get("/mix/today"));
        assertTrue(mix.contains("Guest is gone</th>") && mix.contains("Fell down</th>"), mix);
        String spanish = flat(stand.get("/mix/today?lang=es"));
        assertTrue(spanish.contains("El cliente se fue</th>"), spanish);
    }

    @Test
    void asksAgainBeforeItVoidsWhatWasChangedMeanwhile() {
        String order = stand.place("beef dipped", "");
        stand.change(order, "beef dry");
        String path = "/counter/orders/" + order + "/voids";
        Map<String, String> why = Map.of("reason", "gone", "number", "1", "version", "1");
        HttpResponse<String> stale = stand.press(path, "a", why);
        assertEquals(409, stale.statusCode());
        String said = flat(stale);
        assertTrue(said.contains("regular beef, dry"), said);
        assertTrue(said.contains("id=\"void-version\" name=\"version\" value=\"2\""), said);
        Map<String, String> again = Map.of("reason", "gone", "number", "1", "version", "2");
        assertEquals(
                "/counter?voided=1",
                stand.press(path, "b", again).headers().firstValue("HX-Redirect").get());
    }

    private void ask(String order, Map<String, String> fields) {
        String path = "/boards/line/parts/" + order + ".1.line/queries";
        assertEquals(200, stand.press(path, "ask-" + order, fields).statusCode());
    }

    private HttpResponse<String> answer(Map<String, String> fields) {
        return stand.press("/counter/answers", "answer-" + ++answers, fields);
    }

    private static String flat(HttpResponse<String> reply) {
        return reply.body().replaceAll("\\s+", " ").replace(" >", ">");
    }
}
