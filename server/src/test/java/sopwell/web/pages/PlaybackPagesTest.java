package sopwell.web.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import sopwell.desk.StandCommand.ForKitchen;
import sopwell.kitchen.KitchenCommand;
import sopwell.kitchen.PartId;
import sopwell.menu.Lang;
import sopwell.web.Texts;
import sopwell.web.past.PastDay;

class PlaybackPagesTest {
    private PageStand stand;

    @BeforeEach
    void open() throws Exception {
        stand = new PageStand();
    }

    @AfterEach
    void close() {
        stand.close();
    }

    /** At noon an order, five minutes later another one, and after seven the first is up. */
    private void lunch() {
        String first = stand.place("beef dipped hot", "Ines");
        stand.later(300);
        stand.place("fries, combo sweet", "");
        stand.later(120);
        stand.ask(new ForKitchen(new KitchenCommand.Up(new PartId(first, 1, "line"))));
    }

    @Test
    void aMomentShowsItsBoardWithItsOwnAgesAndNothingToPress() {
        lunch();
        String page = stand.get("/playback/2026-11-27?board=line&at=240").body();
        assertTrue(page.contains("Not live."), page);
        assertTrue(page.contains("Ines"), page);
        assertTrue(page.contains("<b class=\"minutes\">4</b>"), "not the age of now: " + page);
        assertFalse(page.contains("combo"), "the second order is not there yet: " + page);
        String board = page.substring(page.indexOf("id=\"past-board\""), page.indexOf("</main>"));
        assertFalse(board.contains("hx-") || board.contains("data-act"), board);
        assertEquals(count(board, "<button"), count(board, "<button disabled"), board);
        assertTrue(count(board, "<button") > 0, board);
        assertFalse(page.contains("board-socket") || page.contains("board-keys"), page);
        String later = stand.get("/playback/2026-11-27/boards/line?at=420").body();
        assertTrue(later.contains("combo") && !later.contains("Ines"), later);
        assertFalse(later.contains("<html"), later);
        assertTrue(stand.get("/playback/today/boards/fryer?at=420").body().contains("fries"));
        assertTrue(stand.get("/playback/today/boards/pass?at=420").body().contains("Ines"));
    }

    @Test
    void thePageLeadsToThePeakToTheSlowestAndToEachBoard() {
        lunch();
        String page = stand.get("/playback/today?lang=es").body();
        assertTrue(page.contains("Máximo 12:05: 2 en espera"), page);
        assertTrue(page.contains("El más lento: pedido 1, 7:00 min"), page);
        assertTrue(page.contains("data-to=\"419\""), page);
        assertTrue(page.contains("href=\"/playback/2026-11-27?board=pass&amp;at=0\""), page);
        assertTrue(page.contains("max=\"420\""), page);
        assertTrue(page.contains("<polygon points=\"0,600 0,600 60,540 "), page);
        assertTrue(page.contains("12:00:00") || page.contains("12:00"), page);
        assertEquals(303, stand.get("/playback").statusCode());
        assertTrue(stand.get("/mix/today").body().contains("href=\"/playback/2026-11-27\""));
    }

    @Test
    void whatCannotBeShownIsSaid() {
        assertSays(200, "Nothing was sold yet.", "/playback/today");
        lunch();
        assertSays(404, "There is no business day", "/playback/2026-11-20");
        assertSays(404, "has not begun. It can be played back", "/playback/2030-01-01");
        assertSays(404, "“soon” is not a date", "/playback/soon");
        assertSays(404, "There is no station called “roof”", "/playback/today?board=roof");
        assertSays(404, "called “ready”", "/playback/today/boards/ready?at=3");
        assertSays(422, "“noon” is not a moment", "/playback/today?at=noon");
        assertSays(422, "“-5” is not a moment", "/playback/today/boards/line?at=-5");
    }

    private void assertSays(int status, String sentence, String path) {
        HttpResponse<String> page = stand.get(path);
        assertEquals(status, page.statusCode(), path);
        assertTrue(page.body().contains(sentence), page.body());
    }

    @Test
    void whenTheClockIsPutBackAnHourStandsTwiceUnderTheCurve() {
        assertEquals(
                List.of("1:00", "1:00", "2:00", "3:00"), hours("2026-11-01T05:30:00Z", 4 * 3_600));
        assertEquals(List.of("1:00", "3:00", "4:00"), hours("2026-03-08T06:30:00Z", 3 * 3_600));
        assertEquals(6, hours("2026-11-01T05:30:00Z", 16 * 3_600).size(), "every third hour");
    }

    private static List<String> hours(String from, int seconds) {
        PastDay day =
                new PastDay(
                        LocalDate.of(2026, 11, 1),
                        Instant.parse(from).toEpochMilli(),
                        seconds,
                        List.of(),
                        List.of(),
                        Optional.empty(),
                        Optional.empty());
        PlaybackView view =
                new PlaybackView(
                        Texts.load().in(Lang.EN), ZoneId.of("America/Chicago"), day, "line", 0);
        return view.hours().stream().map(PlaybackView.Hour::time).toList();
    }

    private static int count(String text, String part) {
        return text.split(part, -1).length - 1;
    }
}
