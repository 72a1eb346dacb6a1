package org.copperbook.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class UserFoldersTest {

    private static UserFolders folders(Map<String, String> properties, Map<String, String> environment) {
        return UserFolders.of(properties::get, environment::get);
    }

    @Test
    void eachSystemHasItsPlace() {
        assertEquals(Path.of("/home/ada/.copperbook/workshop.sqlite"),
                folders(Map.of("user.home", "/home/ada", "os.name", "Linux"), Map.of()).store());
        assertEquals(Path.of("/Users/ada/Library/Application Support/Copperbook/demo.sqlite"),
                folders(Map.of("user.home", "/Users/ada", "os.name", "Mac OS X"), Map.of()).demoStore());
        assertEquals(Path.of("/roaming/Copperbook/journal"), folders(
                Map.of("user.home", "/users/ada", "os.name", "Windows 11"), Map.of("APPDATA", "/roaming")).journal());
        assertEquals(Path.of("/users/ada/AppData/Roaming/Copperbook"), folders(
                Map.of("user.home", "/users/ada", "os.name", "Windows 11"), Map.of()).home());
    }

    @Test
    void aNamedFolderGoesFirst() {
        assertEquals(Path.of("/elsewhere"), folders(Map.of("copperbook.home", "/elsewhere/x/..", "user.home", "/h",
                "os.name", "Linux"), Map.of()).home());
        assertEquals(Path.of("/h/.copperbook"),
                folders(Map.of("copperbook.home", " ", "user.home", "/h", "os.name", "Linux"), Map.of()).home());
    }
}
