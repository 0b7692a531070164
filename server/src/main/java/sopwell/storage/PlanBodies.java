package sopwell.storage;

import java.io.IOException;
import java.time.LocalDate;
import sopwell.prep.past.KeptTask;
import sopwell.prep.past.PlanEvent;
import sopwell.prep.past.PlanEvent.PlanKept;

/** The written form of kept plans, version 1. Stateless. */
final class PlanBodies {
    private PlanBodies() {}

    static void write(BodyWriter body, PlanEvent event) throws IOException {
        PlanKept kept = (PlanKept) event;
        body.text("date", kept.date().toString());
        body.objects(
                "tasks",
                kept.tasks(),
                (fields, task) -> {
                    fields.text("makes", task.makes());
                    fields.number("lots", task.lots());
                    fields.number("thousandths", task.thousandths());
                    fields.number("startMs", task.startMs());
                    fields.number("neededMs", task.neededMs());
                    fields.text("firstDay", task.firstDay().toString());
                });
    }

    static PlanEvent read(BodyReader body) throws IOException {
        LocalDate date = LocalDate.parse(body.text("date"));
        return new PlanKept(
                date,
                body.objects(
                        "tasks",
                        each ->
                                new KeptTask(
                                        each.text("makes"),
                                        each.whole("lots"),
                                        each.number("thousandths"),
                                        each.number("startMs"),
                                        each.number("neededMs"),
                                        LocalDate.parse(each.text("firstDay")))));
    }
}
