package org.copperbook.desk.tests.run;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A test class that leaves the running product in a state in which no other test should find it. When all tests are run,
 * such classes run in a start of the product of their own, after the others.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
public @interface OwnStart {

    /** What to ask for instead of a class name to run these classes. */
    String NAME = "own-start";
}
