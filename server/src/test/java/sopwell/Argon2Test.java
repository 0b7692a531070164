package sopwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;
import org.junit.jupiter.api.Test;

/** The slow hash is the standard's, with the figures that are asked for. */
class Argon2Test {
    private final Argon2 argon2 = new Argon2();

    /** RFC 9106, section 5.3: the test vector of Argon2id. */
    @Test
    void theLibraryComesToTheStandardsVector() {
        Argon2Parameters asked =
                new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                        .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                        .withMemoryAsKB(32)
                        .withIterations(3)
                        .withParallelism(4)
                        .withSalt(filled(16, 2))
                        .withSecret(filled(8, 3))
                        .withAdditional(filled(12, 4))
                        .build();
        Argon2BytesGenerator generator = new Argon2BytesGenerator();
        generator.init(asked);
        byte[] tag = new byte[32];
        generator.generateBytes(filled(32, 1), tag);
        assertEquals(
                "0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659",
                HexFormat.of().formatHex(tag));
    }

    /**
     * OWASP Password Storage Cheat Sheet: Argon2id with 19 MiB (19,456 KiB), two passes and one
     * lane; RFC 9106, section 3.1: a salt of 16 bytes.
     */
    @Test
    void asksForWhatTheCheatSheetAsks() {
        String[] parts = argon2.hash("4711").split("\\$");
        assertEquals(List.of("argon2id", "v=19", "m=19456,t=2,p=1"), List.of(parts).subList(0, 3));
        assertEquals(16, java.util.Base64.getDecoder().decode(parts[3]).length);
        assertEquals(32, java.util.Base64.getDecoder().decode(parts[4]).length);
    }

    @Test
    void knowsTheSecretAndNoOtherAndSaltsEachAnew() {
        String hash = argon2.hash("correct horse");
        assertTrue(argon2.matches("correct horse", hash));
        assertFalse(argon2.matches("correct horsf", hash));
        assertFalse(argon2.matches("", hash));
        assertNotEquals(hash, argon2.hash("correct horse"));
    }

    @Test
    void aWeakerHashThatSomebodyPutIntoTheFileLetsNobodyIn() {
        String weak = argon2.hash("4711").replace("m=19456,t=2", "m=8,t=1");
        assertFalse(argon2.matches("4711", weak));
        assertFalse(argon2.matches("", ""));
    }

    private static byte[] filled(int bytes, int with) {
        byte[] filled = new byte[bytes];
        Arrays.fill(filled, (byte) with);
        return filled;
    }
}
