package sopwell.web;

import java.util.List;
import sopwell.menu.MenuFault;
import sopwell.stock.recipes.RecipeFault;

/** Makes sentences of what is wrong with recipes. Stateless. */
public final class RecipeFaults {
    private RecipeFaults() {}

    /** Each fault in one language: what is wrong, and what would be right. */
    public static List<MenuFault> told(List<RecipeFault> faults, T text) {
        return faults.stream().map(fault -> told(fault, text)).toList();
    }

    /** A fault in one language. */
    public static MenuFault told(RecipeFault fault, T text) {
        String key = "recipes.fault." + ProblemKind.code(fault.kind());
        Object[] args = fault.args().toArray();
        return new MenuFault(
                fault.place(), text.of(key + ".wrong", args), text.of(key + ".right", args));
    }
}
