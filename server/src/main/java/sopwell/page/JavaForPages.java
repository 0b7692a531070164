package sopwell.page;

import org.teavm.extension.spi.substitution.SimpleSubstitutionPolicy;
import org.teavm.extension.spi.substitution.SubstitutionSink;

/**
 * Tells the compiler to JavaScript what stands in for classes of Java that it does not bring along.
 * Stateless; used by the build alone.
 */
public final class JavaForPages extends SimpleSubstitutionPolicy {
    @Override
    public void contribute(SubstitutionSink sink) {
        sink.selectClasses(name -> name.startsWith("java.text.Normalizer"))
                .replacePackage("java.text", "sopwell.page");
    }
}
