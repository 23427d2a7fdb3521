package halfwidth.laws;

import java.lang.reflect.Method;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.InvocationInterceptor;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.junit.jupiter.api.extension.ReflectiveInvocationContext;
import org.junit.platform.commons.support.ReflectionSupport;

/** Runs the method of a law in place of JUnit, which would run it once. */
final class LawExtension implements ParameterResolver, InvocationInterceptor {
    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Draw.class;
    }

    /** Never used: each try gets draws of its own. */
    @Override
    public Draw resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return new Draw(new Seed(0));
    }

    @Override
    public void interceptTestMethod(
            Invocation<Void> invocation,
            ReflectiveInvocationContext<Method> method,
            ExtensionContext context)
            throws Throwable {
        invocation.skip();
        Method law = method.getExecutable();
        Object test = method.getTarget().orElseThrow();
        int tries = law.getAnnotation(Law.class).tries();
        new Tries(tries, Seed.asked()).of(draw -> ReflectionSupport.invokeMethod(law, test, draw));
    }
}
