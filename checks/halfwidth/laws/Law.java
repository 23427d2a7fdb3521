package halfwidth.laws;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * A test that is run with many draws. Its method takes a {@link Draw} and gets every value from it;
 * draws that the law says nothing about it turns down by {@code assumeTrue}.
 */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@Test
@ExtendWith(LawExtension.class)
public @interface Law {
    /** How many draws it must hold for; those turned down are drawn again and do not count. */
    int tries() default 1000;
}
