package org.copperbook.office.registers;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.Role;
import org.copperbook.sheets.cards.HeaderGuess;
import org.copperbook.sheets.registers.RegisterField;
import org.copperbook.sheets.registers.RegisterImport;
import org.copperbook.sheets.registers.RegisterShape;
import org.copperbook.sheets.registers.RowRefusedException;

/** The people of the shop as rows of a table: name, roles with commas between, whether they work here. Secrets are in none. */
final class PeopleRows {

    private static final String YES = "TRUE";
    private static final String NO = "FALSE";

    private final Words words;
    private final RegisterShape shape;

    PeopleRows(Words words, String title) {
        this.words = words;
        Map<String, String> here = new LinkedHashMap<>();
        words(words, "registers.yes").forEach(w -> here.put(w, YES));
        words(words, "registers.no").forEach(w -> here.put(w, NO));
        shape = new RegisterShape(title, List.of(
                RegisterField.text("name", words.text("people.name"), words.text("people.nameTitles")).needed(),
                RegisterField.text("roles", words.text("people.roles"), words.text("people.rolesTitles")).needed(),
                RegisterField.choice("active", words.text("people.active"), words.text("people.activeTitles"), here)),
                List.of("name"));
    }

    private static List<String> words(Words words, String key) {
        return List.of(words.text(key).split("\\|"));
    }

    RegisterShape shape() {
        return shape;
    }

    List<Map<String, Object>> rows(Collection<Person> people) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Person p : people) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("name", p.name());
            row.put("roles", roles(p));
            row.put("active", p.active() ? YES : NO);
            rows.add(row);
        }
        return rows;
    }

    /** The roles of somebody in words. */
    static String roles(Person p) {
        return p.roles().stream().sorted().map(DeskWords.get()::of).collect(Collectors.joining(", "));
    }

    /** Makes people; a row is refused that names somebody who is here, or a role that there is not. */
    RegisterImport.Maker<Person> maker(Collection<Person> there) {
        Set<String> known = there.stream().map(p -> HeaderGuess.folded(p.name() == null ? "" : p.name())).collect(Collectors.toSet());
        return row -> {
            String name = row.text("name").orElseThrow().strip();
            if (known.contains(HeaderGuess.folded(name))) {
                throw new RowRefusedException("name", words.text("people.known", name));
            }
            return new Person(Person.newKey(), name, roles(row.text("roles").orElseThrow()), null, null,
                    !row.text("active").filter(NO::equals).isPresent());
        };
    }

    private Set<Role> roles(String cell) throws RowRefusedException {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        for (String said : cell.split("[,;/+]")) {
            String word = HeaderGuess.folded(said);
            if (!word.isBlank()) {
                roles.add(role(word, said.strip()));
            }
        }
        if (roles.isEmpty()) {
            throw new RowRefusedException("roles", words.text("people.noRole"));
        }
        return roles;
    }

    private Role role(String folded, String said) throws RowRefusedException {
        for (Role r : Role.values()) {
            if (HeaderGuess.folded(DeskWords.get().of(r)).equals(folded)
                    || words(words, "people.words." + r.name()).stream().anyMatch(w -> HeaderGuess.folded(w).equals(folded))) {
                return r;
            }
        }
        throw new RowRefusedException("roles", words.text("people.unknownRole", said,
                java.util.Arrays.stream(Role.values()).map(DeskWords.get()::of).collect(Collectors.joining(", "))));
    }
}
