package sopwell.access;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import sopwell.SourceTree;

/** The guide's table is the program's. */
class AccessTableTest {
    private static final Pattern ROW = Pattern.compile("(?m)^\\| `([A-Z_]+)` \\| (.*) \\|$");

    @Test
    void theGuideSaysWhatTheProgramDoes() {
        String guide = SourceTree.read("docs", name -> name.equals("access.md")).get(0).text();
        List<String> said = new ArrayList<>();
        Matcher row = ROW.matcher(guide);
        while (row.find()) {
            said.add(row.group(1) + " " + row.group(2).replace(" | ", " "));
        }
        assertEquals(Arrays.stream(Right.values()).map(AccessTableTest::row).toList(), said);
    }

    private static String row(Right right) {
        StringBuilder row = new StringBuilder(right.name());
        for (Role role : Role.values()) {
            row.append(has(AccessRules.rights(role), right));
        }
        for (Use use : List.of(Use.LINE, Use.GUESTS, Use.COUNTER, Use.OFFICE)) {
            row.append(has(AccessRules.rights(use), right));
        }
        return row.append(right.needsPassword() ? " yes" : " -").toString();
    }

    private static String has(Set<Right> rights, Right right) {
        return rights.contains(right) ? " yes" : " -";
    }
}
