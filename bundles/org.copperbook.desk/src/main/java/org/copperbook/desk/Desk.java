package org.copperbook.desk;

/** Names by which the desk's pieces are known to the platform. */
public final class Desk {

    public static final String BUNDLE = "org.copperbook.desk";
    public static final String EDITOR = BUNDLE + ".editor.job";
    public static final String REGISTER = BUNDLE + ".view.register";
    public static final String BEGINNING = BUNDLE + ".editor.beginning";
    public static final String FRONT_OFFICE = BUNDLE + ".perspective.office";
    public static final String BENCH = BUNDLE + ".perspective.bench";
    public static final String TEST_BAY = BUNDLE + ".perspective.testbay";

    /** Extension points. */
    public static final String JOB_PAGES = BUNDLE + ".jobPages";
    public static final String SHOP_PAGES = BUNDLE + ".shopPages";
    public static final String REGISTER_COLUMNS = BUNDLE + ".registerColumns";

    /** Widget data key under which every field control carries the JSON pointer of its field. */
    public static final String ID = "org.copperbook.id";

    private Desk() {
    }
}
