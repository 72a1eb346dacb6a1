package org.copperbook.jobs.faults;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.copperbook.jobs.faults.machine.FaultCampaign;
import org.copperbook.jobs.json.PartJson;
import org.junit.jupiter.api.Test;

/**
 * The finder on simulated machines. The model of the machine is written apart from the tables of likelihood: it knows
 * physics, figures of published machines and usual ranges only. {@code -Dcopperbook.faults=N} simulates each kind of fault N times and prints the table.
 */
class FaultProofTest {

    @Test
    void theTrueFaultEndsFirstAfterFewerTestsThanFixedOrder() {
        int each = Integer.getInteger("copperbook.faults", 40);
        FaultCampaign run = new FaultCampaign(DefaultFaultTables.load(new PartJson()).knowledge()).run(each, 20260105L);
        if (System.getProperty("copperbook.faults") != null) {
            System.out.println(run.table());
        }
        assertTrue(run.all().firstShare() >= 0.9, run.table());
        assertTrue(run.all().meanTests() < run.all().meanFixed(), run.table());
    }
}
