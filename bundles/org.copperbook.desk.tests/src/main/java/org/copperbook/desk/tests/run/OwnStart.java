package org.copperbook.desk.tests.run;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A test class that needs the product started in another way, or leaves it in a state in which no other test should find
 * it. When all tests are run, such classes run in starts of the product of their own, after the others.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
public @interface OwnStart {

    /** How the product is started for it. */
    Way value() default Way.ALONE;

    /** Ways to start the product; their words stand in place of a class name to run the classes of that way. */
    enum Way {
        /** As for the other tests, on the demo workshop, but without them. */
        ALONE("own-start"),
        /** As somebody starts it who has never had it: on an empty store. */
        FIRST("first-start"),
        /** On the demo workshop on a PostgreSQL server of the test's own. */
        SERVER("server-start"),
        /** On the demo workshop in a store that a newer version has laid out, which can only be read. */
        READING("reading-start");

        private final String word;

        Way(String word) {
            this.word = word;
        }

        static Optional<Way> of(String word) {
            return Stream.of(values()).filter(w -> w.word.equals(word)).findFirst();
        }
    }
}
