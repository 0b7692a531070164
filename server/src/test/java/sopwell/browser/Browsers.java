package sopwell.browser;

import java.util.Arrays;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ExtensionContext.StoreScope;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Gives tests their {@link Browser} parameters. A browser's start costs seconds of a processor, so
 * that each stays open from one class to the next of the same JVM, and is made {@link
 * Browser#fresh() as good as new} for each who asks. The first of a method's browsers is always the
 * same one, the second always another. JUnit closes what its store holds after the last test.
 */
public final class Browsers implements ParameterResolver {
    private static final Namespace OURS = Namespace.create(Browsers.class);

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Browser.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        Class<?>[] before = parameter.getDeclaringExecutable().getParameterTypes();
        long place =
                Arrays.stream(before, 0, parameter.getIndex())
                        .filter(type -> type == Browser.class)
                        .count();
        Browser browser =
                context.getStore(StoreScope.LAUNCHER_SESSION, OURS)
                        .getOrComputeIfAbsent(place, none -> Browser.start(), Browser.class);
        browser.fresh();
        return browser;
    }
}
