package sopwell.sim;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import sopwell.boards.Board;
import sopwell.desk.Answer;
import sopwell.desk.NameErasing;
import sopwell.desk.Script;
import sopwell.desk.Stand;
import sopwell.desk.StandCommand;
import sopwell.desk.SteppedDesk;
import sopwell.desk.SteppedDesk.Asking;
import sopwell.desk.TroubledLog;
import sopwell.desk.TroubledLog.Trouble;
import sopwell.log.LogFault;
import sopwell.menu.Station;
import sopwell.orders.Order;
import sopwell.orders.StandSettings;
import sopwell.prep.calendar.CalendarCommand;
import sopwell.stock.recipes.RecipeBook;
import sopwell.web.DayFigures;
import sopwell.web.live.BoardHub;
import sopwell.web.live.SteppedScreens;
import sopwell.web.live.SteppedScreens.Looker;

/**
 * One day, or a few, out of a seed: people do what they do through the real desk, the disk fails,
 * the process is killed, screens are slow, and after every step the validator looks. Belongs to one
 * thread.
 */
final class DaySim {
    /** Steps of one day. */
    static final int STEPS = 350;

    private static final int TOLD_STEPS = 20;
    private static final int EVERY_STATE = 25;
    private static final int EVERY_REPLAY = 70;
    private static final int EVERY_MIX = 5;
    private static final int EVERY_ACCESS = 40;
    private static final int EVERY_ERASING = 97;

    private final long seed;
    private final Store store;
    private final SplittableRandom random;
    private final StandSettings settings;
    private final SimClock clock;
    private final World world;
    private final Deeds deeds;
    private final Validator validator;
    private final Deque<String> lastSteps = new ArrayDeque<>();
    private final List<Asking> answered = new ArrayList<>();
    private TroubledLog log;
    private SteppedDesk desk;
    private SteppedScreens screens;
    private Answer lastAnswer;
    private int step;

    DaySim(long seed, Store store) {
        this.seed = seed;
        this.store = store;
        this.random = new SplittableRandom(seed);
        this.settings = Days.settings(random);
        LocalDateTime begin = Days.begin(random);
        this.clock = new SimClock(begin.atZone(settings.zone()).toInstant().toEpochMilli());
        this.world = new World(random, clock, Menus.demo());
        this.deeds = new Deeds(world);
        this.validator = new Validator(settings);
    }

    /** Plays it; throws what went wrong first. */
    DaySim play(int steps) {
        try {
            start();
            run(List.of(asking(new StandCommand.AdoptMenu(world.menus.first()))));
            run(List.of(recipes(), calendar()));
            look();
            for (step = 1; step <= steps; step++) {
                step();
            }
            end();
        } catch (SimFailure failure) {
            throw failure;
        } catch (RuntimeException | AssertionError fault) {
            throw failure(fault.toString(), fault);
        }
        return this;
    }

    /** The log that came of it. */
    TroubledLog log() {
        return log;
    }

    StandSettings settings() {
        return settings;
    }

    private void start() {
        log = new TroubledLog(store.open(settings.stand()));
        desk = new SteppedDesk(log, settings, clock);
        screens = new SteppedScreens(random.split(), log.epoch(), clock);
        world.see(desk.shown(), List.of());
        validator.newBoards();
    }

    private void step() {
        clock.move(Days.pause(random));
        if (world.oneIn(60)) {
            say("killed");
            start();
            if (!answered.isEmpty() && world.oneIn(2)) {
                run(List.of(world.any(answered)));
            }
        }
        StandCommand command = deeds.next(Days.isRush(step));
        if (command != null) {
            List<Asking> askings = new ArrayList<>(List.of(asking(command)));
            if (world.oneIn(25)) {
                askings.add(world.oneIn(2) ? askings.get(0) : again(command));
            }
            if (!answered.isEmpty() && world.oneIn(40)) {
                askings.add(world.any(answered));
            }
            if (step % EVERY_ACCESS == 0) {
                StandCommand access = People.changeOfAccess(step / EVERY_ACCESS);
                askings.add(new Asking("a" + step, print(access), asking(access).command()));
            }
            trouble();
            run(askings);
        }
        if (step % EVERY_ERASING == 0) {
            world.shown().orders().open().stream().findFirst().ifPresent(this::erase);
        }
        look();
    }

    /** A guest asks to be forgotten, while the order is still made. */
    private void erase(Order order) {
        LocalDate date = world.shown().orders().date().orElseThrow();
        NameErasing erasing = new NameErasing(log, this::submitted, before -> {}, after -> {});
        int names = erasing.order(order.id(), date, Optional.of(People.ALL.get(0)));
        validator.forget(order.id());
        say("erased " + order.id() + ": " + names);
        String left = desk.shown().orders().find(order.id()).orElseThrow().name();
        validator.that(left.isEmpty(), Invariant.ORDERS, "a name is shown that was erased");
    }

    private CompletableFuture<Answer> submitted(String key, String print, StandCommand command) {
        run(List.of(new Asking(key, print, command)));
        return CompletableFuture.completedFuture(lastAnswer);
    }

    /** Most of what is done is done by somebody. */
    private Asking asking(StandCommand command) {
        int turn = step % (People.ALL.size() + 1);
        StandCommand by =
                turn < People.ALL.size()
                        ? new StandCommand.By(People.ALL.get(turn), command)
                        : command;
        return new Asking("s" + step, print(command), by);
    }

    private static Asking recipes() {
        RecipeBook book = Script.demoRecipes().get(0);
        StandCommand adopt = new StandCommand.AdoptRecipes(book, RecipeBook.empty().revision());
        return new Asking("recipes", print(adopt), adopt);
    }

    /** What the owner says of a day to come; the stand holds it over every day and every kill. */
    private static Asking calendar() {
        StandCommand festival =
                new StandCommand.ForCalendar(
                        new CalendarCommand.AddOccasion("tomorrow", "river festival", "+40 %"));
        return new Asking("calendar", print(festival), festival);
    }

    /** Books are known by their revision. */
    private static String print(StandCommand command) {
        if (command instanceof StandCommand.AdoptMenu adopt) {
            return "menu " + adopt.menu().revision();
        }
        return command instanceof StandCommand.AdoptRecipes adopt
                ? "recipes " + adopt.book().revision()
                : command.toString();
    }

    /** A second press: the same under a key of its own. */
    private Asking again(StandCommand command) {
        Asking first = asking(command);
        return new Asking(first.key() + "-again", first.fingerprint(), first.command());
    }

    private void trouble() {
        if (world.oneIn(40)) {
            log.next(world.oneIn(2) ? Trouble.FAILS_BEFORE_KEEPING : Trouble.FAILS_AFTER_KEEPING);
        }
    }

    /** Whoever does not know what came of it asks again, perhaps of another process. */
    private void run(List<Asking> askings) {
        List<Asking> left = askings;
        while (!left.isEmpty()) {
            List<CompletableFuture<Answer>> answers = desk.run(left);
            log.next(Trouble.NONE);
            List<Asking> unknown = new ArrayList<>();
            log.read(validator.seq() + 1, log.lastSeq(), validator::take);
            for (int i = 0; i < answers.size(); i++) {
                if (isUnknown(answers.get(i))) {
                    unknown.add(left.get(i));
                    say(left.get(i).fingerprint() + " -> unknown");
                } else {
                    heard(left.get(i), answers.get(i).join());
                }
            }
            if (!unknown.isEmpty() && world.oneIn(2)) {
                say("killed");
                start();
            }
            left = unknown;
        }
    }

    private static boolean isUnknown(CompletableFuture<Answer> answer) {
        try {
            answer.join();
            return false;
        } catch (CompletionException fault) {
            if (fault.getCause() instanceof LogFault) {
                return true;
            }
            throw fault;
        }
    }

    private void heard(Asking asking, Answer answer) {
        say(
                asking.key()
                        + " "
                        + asking.fingerprint()
                        + " -> "
                        + answer.outcome()
                        + " "
                        + answer.refusal().map(r -> r.reason().toString()).orElse("")
                        + answer.events().size());
        validator.answered(asking.key(), answer);
        lastAnswer = answer;
        if (answer.outcome() == Answer.Outcome.DONE
                || answer.outcome() == Answer.Outcome.REPEATED) {
            validator.askedBy(asking.key(), People.behind(asking.command()));
        }
        if (answer.outcome() != Answer.Outcome.REFUSED && !answer.events().isEmpty()) {
            answered.add(asking);
        }
    }

    private void look() {
        Stand shown = desk.shown();
        watch(shown);
        screens.show(shown);
        world.see(shown, screens.lookers());
        validator.check(shown);
        validator.check(boards(shown));
        if (step % EVERY_MIX == 0) {
            mix(shown);
        }
        if (step % EVERY_STATE == 0) {
            validator.same(desk.deciding(), shown, Invariant.FOLLOWER);
        }
        if (step % EVERY_REPLAY == 0) {
            validator.same(SteppedDesk.replayed(log, settings), desk.deciding(), Invariant.REPLAY);
        }
        complain();
    }

    /** Somebody looks at every board there is. */
    private void watch(Stand shown) {
        for (String name : names(shown)) {
            boolean watched =
                    screens.lookers().stream().anyMatch(looker -> looker.board().equals(name));
            if (!watched) {
                screens.join(shown, name);
            }
        }
        if (world.oneIn(50)) {
            screens.join(shown, world.any(names(shown)));
        }
    }

    private List<Board> boards(Stand shown) {
        return names(shown).stream().map(name -> screens.board(shown, name)).toList();
    }

    private static List<String> names(Stand shown) {
        List<String> names =
                new ArrayList<>(List.of(BoardHub.PASS, BoardHub.READY, BoardHub.COUNTER));
        shown.menu().stations().stream().map(Station::id).forEach(names::add);
        return names;
    }

    private void mix(Stand shown) {
        if (shown.orders().date().isPresent()) {
            validator.check(DayFigures.of(shown).mix());
        }
    }

    private void end() {
        screens.settle();
        for (Looker looker : screens.lookers()) {
            validator.check(looker, screens.board(desk.shown(), looker.board()));
        }
        validator.same(desk.deciding(), desk.shown(), Invariant.FOLLOWER);
        start();
        validator.same(SteppedDesk.replayed(log, settings), desk.deciding(), Invariant.REPLAY);
        look();
    }

    private void say(String what) {
        lastSteps.addLast("  " + step + " " + clock.instant() + " " + what);
        if (lastSteps.size() > TOLD_STEPS) {
            lastSteps.removeFirst();
        }
    }

    private void complain() {
        if (!validator.complaints().isEmpty()) {
            throw failure(validator.complaints().get(0).toString(), null);
        }
    }

    private SimFailure failure(String what, Throwable cause) {
        return new SimFailure(
                "seed "
                        + seed
                        + ", step "
                        + step
                        + ": "
                        + what
                        + "\nagain: "
                        + SimMain.command(seed, step)
                        + "\n"
                        + String.join("\n", lastSteps),
                cause);
    }
}
