package org.copperbook.desk.shell;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What was asked for on the command line.
 *
 * @param demo  folder of the demo workshop to open, if any
 * @param store file of the store to open instead of the user's own, if any
 * @param job   number of a job to open at once, if any
 */
public record DeskArguments(Optional<Path> demo, Optional<Path> store, Optional<String> job) {

    /** Nothing asked for. */
    public static final DeskArguments NONE = new DeskArguments(Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * Reads the arguments; those of the platform are passed over.
     *
     * @throws IllegalArgumentException when an argument lacks its value
     */
    public static DeskArguments parse(String... args) {
        Optional<Path> demo = Optional.empty();
        Optional<Path> store = Optional.empty();
        Optional<String> job = Optional.empty();
        for (int i = 0; i < args.length; i++) {
            switch (args[i]) {
                case "-demo" -> demo = Optional.of(Path.of(value(args, i++)));
                case "-store" -> store = Optional.of(Path.of(value(args, i++)));
                case "-job" -> job = Optional.of(value(args, i++));
                default -> {
                }
            }
        }
        return new DeskArguments(demo, store, job);
    }

    private static String value(String[] args, int at) {
        if (at + 1 >= args.length) {
            throw new IllegalArgumentException(args[at] + " needs a value behind it");
        }
        return args[at + 1];
    }
}
