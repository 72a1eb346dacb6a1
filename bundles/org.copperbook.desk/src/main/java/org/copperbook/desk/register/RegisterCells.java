package org.copperbook.desk.register;

import org.copperbook.desk.text.Days;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.store.RegisterRow;

/** The columns that the desk itself brings to the register. */
public final class RegisterCells {

    private RegisterCells() {
    }

    /** Job number; says when it is void. */
    public static final class Number implements RegisterCell {
        @Override
        public String text(RegisterRow row) {
            return row.voided() ? DeskWords.text("register.void", row.number()) : row.number();
        }
    }

    /** Customer. */
    public static final class Customer implements RegisterCell {
        @Override
        public String text(RegisterRow row) {
            return row.customer();
        }
    }

    /** Short name of the machine. */
    public static final class Machine implements RegisterCell {
        @Override
        public String text(RegisterRow row) {
            return row.machine();
        }
    }

    /** Where the job stands. */
    public static final class Stage implements RegisterCell {
        @Override
        public String text(RegisterRow row) {
            return row.stage();
        }
    }

    /** Date promised. */
    public static final class Promised implements RegisterCell {
        private final Days days = Days.ofLocale();

        @Override
        public String text(RegisterRow row) {
            return row.promised() == null ? "" : days.day(row.promised());
        }
    }

    /** Serial number. */
    public static final class Serial implements RegisterCell {
        @Override
        public String text(RegisterRow row) {
            return row.serial();
        }
    }

    /** When the job was last saved. */
    public static final class Changed implements RegisterCell {
        private final Days days = Days.ofLocale();

        @Override
        public String text(RegisterRow row) {
            return row.changedAt() == null ? "" : days.moment(row.changedAt());
        }
    }
}
