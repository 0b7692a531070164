package sopwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Looks at the list that the build makes of what is in the jar. */
class BillOfMaterialsTest {
    /** By SPDX's ids, or by the name that a library gives a licence for which there is no id. */
    private static final Set<String> ALLOWED =
            Set.of(
                    "Apache-2.0",
                    "MIT",
                    "BSD-2-Clause",
                    "BSD-3-Clause",
                    "BSD-4-Clause", // So is jzlib's told, which the build alone needs.
                    "EPL-2.0",
                    "MPL-2.0",
                    "GPL-2.0-with-classpath-exception",
                    "Bouncy Castle Licence");

    @Test
    void everyLibraryHasAnAllowedLicence() throws Exception {
        JsonNode bill = bill();
        List<String> faults = new ArrayList<>();
        for (JsonNode component : bill.path("components")) {
            Set<String> licences = licences(component);
            if (licences.stream().noneMatch(ALLOWED::contains)) {
                faults.add(component.path("purl").asText() + " " + licences);
            }
        }
        assertEquals("", String.join("\n", faults));
    }

    @Test
    void everyLibraryOfTheJarIsListed() throws Exception {
        JsonNode bill = bill();
        assertEquals("CycloneDX", bill.path("bomFormat").asText());
        Set<String> listed = new TreeSet<>();
        bill.path("components").forEach(c -> listed.add(c.path("name").asText()));
        Set<String> wanted =
                Set.of(
                        "undertow-core",
                        "undertow-servlet",
                        "undertow-websockets-jsr",
                        "xnio-nio",
                        "jackson-databind",
                        "jackson-dataformat-csv",
                        "commons-statistics-distribution",
                        "sqlite-jdbc",
                        "jte-runtime",
                        "picocli",
                        "prometheus-metrics-exposition-textformats",
                        "bcpkix-jdk18on",
                        "bcprov-jdk18on",
                        "teavm-classlib");
        assertTrue(listed.containsAll(wanted), () -> "" + listed);
        assertTrue(!listed.contains("junit-jupiter"), "tests are not in the jar");
    }

    private static JsonNode bill() throws Exception {
        Path jar = Path.of(System.getProperty("sopwell.jar"));
        return new JsonMapper()
                .readTree(Files.readAllBytes(jar.resolveSibling("sopwell-bom.json")));
    }

    private static Set<String> licences(JsonNode component) {
        Set<String> found = new TreeSet<>();
        for (JsonNode entry : component.path("licenses")) {
            JsonNode licence = entry.path("license");
            found.add(licence.path("id").asText(licence.path("name").asText()));
            found.add(entry.path("expression").asText());
        }
        found.remove("");
        return found;
    }
}
