package sopwell;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.logging.Logger;
import sopwell.desk.Answer;
import sopwell.desk.Desk;
import sopwell.desk.Follower;
import sopwell.desk.StandCommand;
import sopwell.journal.Happening;
import sopwell.journal.Told;
import sopwell.prep.MadePlan;
import sopwell.prep.past.KeepPlan;
import sopwell.prep.past.KeptTask;
import sopwell.prep.past.PlanEvent.PlanKept;
import sopwell.prep.plan.PrepPlan.Task;
import sopwell.stock.larder.Measures;
import sopwell.web.PrepPlans;

/**
 * Has a day's plan of prep kept once the day is open, so that it can be held against what became of
 * it. Belongs to the thread that ticks.
 */
final class PlanKeeping {
    private static final Logger LOGGER = Logger.getLogger(PlanKeeping.class.getName());

    /** The shelves are often counted just after a day was opened. */
    private static final long LOOKS_BEFORE = Limits.PLAN_KEPT_AFTER_SECONDS / Limits.TICK_SECONDS;

    private static final CompletableFuture<Optional<Answer>> NOTHING =
            CompletableFuture.completedFuture(Optional.empty());

    private final Follower follower;
    private final Desk desk;
    private final PrepPlans plans;
    private final ZoneId zone;

    /** The open day that is waited for, and how often it was seen without a plan. */
    private Optional<LocalDate> waiting = Optional.empty();

    private int looks;

    /** The last day whose plan was asked for: one that can't be made is not tried again. */
    private Optional<LocalDate> asked = Optional.empty();

    PlanKeeping(Follower follower, Desk desk, PrepPlans plans, ZoneId zone) {
        this.follower = follower;
        this.desk = desk;
        this.plans = plans;
        this.zone = zone;
    }

    /**
     * Looks whether the open day's plan is still to be kept, and waits for nothing.
     *
     * @return what came of it, once it has: empty when nothing was to be kept now, or could be
     */
    CompletableFuture<Optional<Answer>> look() {
        Optional<LocalDate> due =
                follower.ask(
                                stand ->
                                        stand.orders()
                                                .date()
                                                .filter(date -> stand.orders().isDayOpen())
                                                .filter(
                                                        date ->
                                                                stand.keptPlan()
                                                                        .map(PlanKept::date)
                                                                        .filter(date::equals)
                                                                        .isEmpty()))
                        .join();
        if (due.isEmpty() || due.equals(asked)) {
            return NOTHING;
        }
        looks = due.equals(waiting) ? looks + 1 : 0;
        waiting = due;
        if (looks < LOOKS_BEFORE) {
            return NOTHING;
        }
        asked = due;
        return plans.now()
                .thenCompose(made -> keep(made.plan(), due.get()))
                .exceptionally(
                        fault -> {
                            Told.of(Happening.PLAN_UNKEPT).fault(fault).to(LOGGER);
                            return Optional.empty();
                        });
    }

    private CompletableFuture<Optional<Answer>> keep(MadePlan made, LocalDate date) {
        if (made.days().isEmpty() || !made.today().equals(date)) {
            return NOTHING;
        }
        List<KeptTask> tasks = new ArrayList<>();
        for (Task task : made.plan().tasks()) {
            if (LocalDate.ofInstant(task.start(), zone).equals(date)) {
                tasks.add(kept(task));
            }
        }
        Instant asOf = made.asOf();
        String key = "plan " + date + " " + asOf.toEpochMilli();
        return desk.submit(key, key, new StandCommand.ForPlan(new KeepPlan(date, tasks)))
                .thenApply(Optional::of);
    }

    private static KeptTask kept(Task task) {
        return new KeptTask(
                task.makes(),
                task.lots(),
                Measures.thousandths(task.gives()),
                task.start().toEpochMilli(),
                task.why().by().toEpochMilli(),
                task.why().firstDay());
    }
}
