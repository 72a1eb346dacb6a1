package org.copperbook.store.scale;

import java.nio.file.Path;
import java.time.YearMonth;
import org.copperbook.jobs.winding.WindingRole;
import org.copperbook.store.JobStore;
import org.copperbook.store.RegisterQuery;
import org.copperbook.store.RegisterSlice;
import org.copperbook.store.memory.Asked;
import org.copperbook.store.sqlite.SqliteJobStore;

/** Pages through the register, looks at a month and for a winding, on a heap that could not hold them all. */
final class SmallHeapProgram {

    private SmallHeapProgram() {
    }

    public static void main(String[] arguments) {
        int rows = 0;
        try (JobStore store = SqliteJobStore.open(Path.of(arguments[0]))) {
            int total = store.register(RegisterQuery.first(1)).total();
            for (int at = 0; at < total; at += Math.max(100, total / 50)) {
                RegisterSlice slice = store.register(new RegisterQuery("", at, 100, null));
                rows += slice.rows().size();
                store.register(new RegisterQuery("mill " + at % 10, 0, 100, null));
            }
            store.monthReport(YearMonth.of(2016, 2));
            store.memory().nearest(new Asked(WindingRole.MAIN_STATOR, ScaleTest.bench(7), "", "", ""), 20);
            store.memory().nearest(new Asked(WindingRole.MAIN_STATOR, ScaleTest.plateOnly(7), "", "", ""), 20);
        }
        System.out.println(rows);
    }
}
