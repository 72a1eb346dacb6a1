package org.copperbook.jobs.rights;

import static org.copperbook.jobs.signoff.Role.FOREMAN;
import static org.copperbook.jobs.signoff.Role.OFFICE;
import static org.copperbook.jobs.signoff.Role.OWNER;
import static org.copperbook.jobs.signoff.Role.QUALITY_CHECKER;
import static org.copperbook.jobs.signoff.Role.TESTER;
import static org.copperbook.jobs.signoff.Role.WINDER;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.Role;

/**
 * Which roles have which right: common practice, no source. A person has what any of the person's roles has. Who may sign
 * which hold point is not here but with the hold points.
 */
public final class Rights {

    private static final Map<Right, Set<Role>> TABLE = new EnumMap<>(Right.class);

    static {
        TABLE.put(Right.BOOK_IN, EnumSet.of(FOREMAN, OFFICE, OWNER));
        TABLE.put(Right.COPY_NAMEPLATE, EnumSet.allOf(Role.class));
        TABLE.put(Right.QUOTE, EnumSet.of(FOREMAN, OFFICE, OWNER));
        TABLE.put(Right.WORK_AT_BENCH, EnumSet.of(FOREMAN, WINDER, TESTER, QUALITY_CHECKER, OWNER));
        TABLE.put(Right.TEST, EnumSet.of(FOREMAN, TESTER, QUALITY_CHECKER, OWNER));
        TABLE.put(Right.SIGN, EnumSet.of(FOREMAN, WINDER, TESTER, QUALITY_CHECKER, OWNER));
        TABLE.put(Right.ISSUE_COPIES, EnumSet.allOf(Role.class));
        TABLE.put(Right.BOOK_HOURS, EnumSet.allOf(Role.class));
        TABLE.put(Right.KEEP_INSTRUMENTS, EnumSet.of(FOREMAN, TESTER, QUALITY_CHECKER, OWNER));
        TABLE.put(Right.KEEP_WIRE_STOCK, EnumSet.of(FOREMAN, WINDER, OFFICE, OWNER));
        TABLE.put(Right.ISSUE_STOCK, EnumSet.of(FOREMAN, WINDER, TESTER, OFFICE, OWNER));
        TABLE.put(Right.KEEP_STOCK, EnumSet.of(FOREMAN, OFFICE, OWNER));
        TABLE.put(Right.KEEP_CAPACITIES, EnumSet.of(FOREMAN, OFFICE, OWNER));
        TABLE.put(Right.KEEP_LABOUR_RATES, EnumSet.of(OFFICE, OWNER));
        TABLE.put(Right.KEEP_QUOTE_TEMPLATE, EnumSet.of(OFFICE, OWNER));
        TABLE.put(Right.SET_LIMITS, EnumSet.of(QUALITY_CHECKER, OWNER));
        TABLE.put(Right.SET_UP_WORKSHOP, EnumSet.of(OWNER));
        TABLE.put(Right.TAKE_IN_JOBS, EnumSet.of(FOREMAN, OWNER));
        TABLE.put(Right.TAKE_IN_CARDS, EnumSet.of(FOREMAN, WINDER, OFFICE, OWNER));
        TABLE.put(Right.KEEP_CONTACTS, EnumSet.of(FOREMAN, OFFICE, OWNER));
        TABLE.put(Right.KEEP_PEOPLE, EnumSet.of(OWNER));
        TABLE.put(Right.ERASE, EnumSet.of(OWNER));
    }

    private Rights() {
    }

    /** The roles that have a right. */
    public static Set<Role> of(Right right) {
        return Collections.unmodifiableSet(TABLE.get(right));
    }

    /** Whether somebody who works here has a right; nobody has who has left. */
    public static boolean has(Person person, Right right) {
        return person.active() && person.roles().stream().anyMatch(TABLE.get(right)::contains);
    }

    /** Why somebody may not, and who may; nothing when the person may. */
    public static Optional<String> refusal(Person person, Right right) {
        if (has(person, right)) {
            return Optional.empty();
        }
        if (!person.active()) {
            return Optional.of(say("refused.left", person.name()));
        }
        return Optional.of(say("refused", person.name(), say("right." + word(right)), roles(right)));
    }

    /** Why nobody may while nobody is signed in, and who may. */
    public static String signInFirst(Right right) {
        return say("refused.nobody", say("right." + word(right)), roles(right));
    }

    private static String roles(Right right) {
        List<String> names = new ArrayList<>();
        TABLE.get(right).forEach(r -> names.add(say("role." + word(r))));
        return String.join(", ", names);
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String say(String key, Object... values) {
        return new MessageFormat(ResourceBundle.getBundle("org.copperbook.jobs.rights.rights", Locale.getDefault(),
                Rights.class.getClassLoader()).getString(key), Locale.getDefault()).format(values);
    }
}
