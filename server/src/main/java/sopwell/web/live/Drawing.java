package sopwell.web.live;

import java.util.Set;
import java.util.function.Function;
import sopwell.boards.Board;
import sopwell.boards.Digits;
import sopwell.boards.OrderBoards;
import sopwell.boards.PassBoards;
import sopwell.boards.Places;
import sopwell.boards.Scene;
import sopwell.boards.StationBoards;
import sopwell.desk.Stand;

/**
 * How each board is drawn, by its name: for the screens of now and for those of a past day alike.
 * Stateless; what it hands out is not, and belongs to one thread.
 */
public final class Drawing {
    private static final Set<String> FIXED =
            Set.of(BoardHub.PASS, BoardHub.READY, BoardHub.COUNTER);

    private Drawing() {}

    /** Whether a stand has a board of a name. */
    public static boolean isBoard(Stand stand, String name) {
        return FIXED.contains(name) || (stand.hasMenu() && stand.menu().hasStation(name));
    }

    /**
     * What draws a board; it remembers where rows stand from one drawing to the next.
     *
     * @param scene what the boards of stations are drawn from
     */
    public static Function<Stand, Board> of(String name, Function<Stand, Scene> scene) {
        return switch (name) {
            case BoardHub.PASS -> {
                Digits<String> digits = new Digits<>();
                yield s -> PassBoards.pass(passSources(s), digits);
            }
            case BoardHub.READY -> s -> PassBoards.ready(s.orders(), s.kitchen(), s.pass());
            case BoardHub.COUNTER ->
                    s ->
                            OrderBoards.counter(
                                    s.orders(), s.till(), s.kitchen(), s.outs(), s::menuOf);
            default -> {
                Places places = new Places();
                yield s -> StationBoards.of(s.menu().station(name), scene.apply(s), places);
            }
        };
    }

    private static PassBoards.Sources passSources(Stand stand) {
        return new PassBoards.Sources(
                stand.orders(), stand.till(), stand.kitchen(), stand.pass(), stand::menuOf);
    }
}
