package sopwell.planted;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.junit.platform.engine.discovery.DiscoverySelectors;
import org.junit.platform.launcher.Launcher;
import org.junit.platform.launcher.LauncherDiscoveryRequest;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.junit.platform.launcher.listeners.SummaryGeneratingListener;
import org.junit.platform.launcher.listeners.TestExecutionSummary;

/** Runs one class of tests in a process of its own: ends with 0 when green, 1 red, 2 none run. */
public final class RunTests {
    static final int GREEN = 0;
    static final int RED = 1;
    static final int NONE = 2;

    private RunTests() {}

    /** Runs the class that is named. */
    public static void main(String[] args) {
        LauncherDiscoveryRequest request =
                LauncherDiscoveryRequestBuilder.request()
                        .selectors(DiscoverySelectors.selectClass(args[0]))
                        .build();
        SummaryGeneratingListener heard = new SummaryGeneratingListener();
        Launcher launcher = LauncherFactory.create();
        launcher.execute(request, heard);
        TestExecutionSummary summary = heard.getSummary();
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        summary.printFailuresTo(out, 1);
        long red = summary.getTotalFailureCount();
        long ran = summary.getTestsSucceededCount() + summary.getTestsFailedCount();
        System.exit(red > 0 ? RED : ran > 0 ? GREEN : NONE);
    }
}
