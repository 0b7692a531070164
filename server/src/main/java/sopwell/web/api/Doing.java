package sopwell.web.api;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import sopwell.desk.Answer;
import sopwell.desk.Desk;
import sopwell.desk.StandCommand;
import sopwell.desk.StandCommand.ForOrders;
import sopwell.log.Recorded;
import sopwell.orders.OrderCommand;
import sopwell.orders.Reason;
import sopwell.orders.Refusal;
import sopwell.web.Actors;
import sopwell.web.Problem;
import sopwell.web.ProblemKind;
import sopwell.web.Reply;

/** Submits a command and turns the desk's answer into a reply. Stateless. */
final class Doing {
    /** An order with nothing on it, which the rules always refuse: the key alone is asked about. */
    private static final StandCommand NEVER_DONE =
            new ForOrders(new OrderCommand.Place("", true, List.of()));

    private Doing() {}

    /**
     * Submits a command.
     *
     * @param done the reply, from the events that the command came to the first time; runs on the
     *     desk's thread and must be short
     */
    static CompletableFuture<Reply> submit(
            Desk desk, Ask ask, StandCommand command, Function<List<Recorded>, Reply> done) {
        StandCommand by = new StandCommand.By(Actors.of(ask.exchange()), command);
        return desk.submit(ask.key(), ask.fingerprint(), by)
                .thenApplyAsync(answer -> reply(answer, ask, done), ask.exchange().getIoThread());
    }

    /** The same, where a refusal takes a second look. */
    static CompletableFuture<Reply> submit(
            Desk desk,
            Ask ask,
            StandCommand command,
            Function<List<Recorded>, Reply> done,
            Function<Refusal, CompletableFuture<Problem>> refused) {
        StandCommand by = new StandCommand.By(Actors.of(ask.exchange()), command);
        return desk.submit(ask.key(), ask.fingerprint(), by)
                .thenComposeAsync(
                        answer ->
                                answer.outcome() == Answer.Outcome.REFUSED
                                        ? refused.apply(answer.refusal().orElseThrow())
                                                .thenApply(Reply::problem)
                                        : CompletableFuture.completedFuture(
                                                reply(answer, ask, done)),
                        ask.exchange().getIoThread());
    }

    /**
     * What to answer a request that can't be read against the menu of today: if it was done before
     * under its key, under whatever menu, its first answer again.
     */
    static CompletableFuture<Reply> doneBeforeOr(
            Problem problem, Desk desk, Ask ask, Function<List<Recorded>, Reply> done) {
        return desk.submit(ask.key(), ask.fingerprint(), NEVER_DONE)
                .thenApplyAsync(
                        answer ->
                                isUndone(answer)
                                        ? Reply.problem(problem)
                                        : reply(answer, ask, done),
                        ask.exchange().getIoThread());
    }

    /** Whether it is known that the key stands for nothing: a stand that only reads can't say. */
    private static boolean isUndone(Answer answer) {
        return answer.outcome() == Answer.Outcome.REFUSED
                && answer.refusal().orElseThrow().reason() != Reason.READING_ONLY;
    }

    private static Reply reply(Answer answer, Ask ask, Function<List<Recorded>, Reply> done) {
        return switch (answer.outcome()) {
            case DONE -> done.apply(answer.events());
            case REPEATED -> done.apply(answer.events()).with("Idempotent-Replayed", "true");
            case REFUSED ->
                    Reply.problem(RefusalProblems.of(answer.refusal().orElseThrow(), ask.text()));
            case KEY_REUSED -> Reply.problem(Problem.of(ProblemKind.KEY_REUSED, ask.text()));
        };
    }
}
