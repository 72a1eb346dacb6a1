package org.copperbook.batch.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.Signing;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.SignOffs;
import org.copperbook.store.JobStore;
import org.copperbook.store.demo.DemoShop;
import org.copperbook.store.sqlite.SqliteJobStore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The releases of the demo are ones that the product itself grants, with the seal that it puts on them. */
class DemoReleaseTest {

    @TempDir
    Path folder;

    static Stream<Job> released() {
        return DemoFiles.jobs().stream().filter(j -> j.signOffs().stream().flatMap(s -> s.signatures().stream())
                .anyMatch(s -> s.point() == HoldPoint.RELEASE));
    }

    @Test
    void someJobsAreReleased() {
        assertTrue(released().count() >= 2);
    }

    /** Taking the release away and signing anew at the same moment gives the record that is shipped, seal and all. */
    @ParameterizedTest
    @MethodSource("released")
    void aReleaseSignedAnewIsTheOneThatIsShipped(Job job) throws Exception {
        SignOffs shipped = job.signOffs().orElseThrow();
        List<SignOffs.Signature> others = shipped.signatures().stream().filter(s -> s.point() != HoldPoint.RELEASE).toList();
        SignOffs.Signature release = shipped.signatures().stream().filter(s -> s.point() == HoldPoint.RELEASE)
                .findFirst().orElseThrow();
        Job open = job.with(PartKey.of(PartKind.SIGN_OFFS), new SignOffs(shipped.schema(), others, shipped.concessions(),
                shipped.judgements(), shipped.reopenings(), shipped.cautions(), shipped.more()));
        Signing.Result signed = Signing.sign(open, shop(), HoldPoint.RELEASE,
                new Signing.Signer(release.by(), release.role(), release.at()), release.note());
        SignOffs anew = assertInstanceOf(Signing.Result.Done.class, signed, signed::toString).signOffs();
        PartJson json = new PartJson();
        assertEquals(json.mapper().writerWithDefaultPrettyPrinter().writeValueAsString(anew),
                json.mapper().writerWithDefaultPrettyPrinter().writeValueAsString(shipped));
    }

    private Shop shop() throws Exception {
        try (JobStore store = SqliteJobStore.open(folder.resolve("demo.sqlite"))) {
            new DemoShop(DemoFiles.FOLDER).load(store);
            return store.shop();
        }
    }
}
