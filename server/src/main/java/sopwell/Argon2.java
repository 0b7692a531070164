package sopwell;

import java.security.SecureRandom;
import java.util.Base64;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;
import sopwell.access.Secrets;
import sopwell.access.Tools;

/**
 * The slow hash of PINs and passwords: Argon2id (RFC 9106) with 19 MiB, two passes and one lane, as
 * the OWASP Password Storage Cheat Sheet asks. Thread-safe.
 */
final class Argon2 implements Tools.Hasher {
    private static final String FORM = "argon2id$v=19$m=19456,t=2,p=1$";
    private static final int MEMORY_KIB = 19_456;
    private static final int PASSES = 2;
    private static final int LANES = 1;
    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;

    private final SecureRandom random = new SecureRandom();

    @Override
    public String hash(String secret) {
        byte[] salt = new byte[SALT_BYTES];
        random.nextBytes(salt);
        return written(secret, salt);
    }

    @Override
    public boolean matches(String secret, String hash) {
        if (!hash.startsWith(FORM)) {
            return false;
        }
        String salt = hash.substring(FORM.length(), hash.lastIndexOf('$'));
        return Secrets.same(hash, written(secret, Base64.getDecoder().decode(salt)));
    }

    private static String written(String secret, byte[] salt) {
        Argon2BytesGenerator generator = new Argon2BytesGenerator();
        generator.init(
                new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                        .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                        .withMemoryAsKB(MEMORY_KIB)
                        .withIterations(PASSES)
                        .withParallelism(LANES)
                        .withSalt(salt)
                        .build());
        byte[] hash = new byte[HASH_BYTES];
        generator.generateBytes(secret.toCharArray(), hash);
        Base64.Encoder base64 = Base64.getEncoder().withoutPadding();
        return FORM + base64.encodeToString(salt) + "$" + base64.encodeToString(hash);
    }
}
