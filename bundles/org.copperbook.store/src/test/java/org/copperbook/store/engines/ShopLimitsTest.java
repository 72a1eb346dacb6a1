package org.copperbook.store.engines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.nio.file.Path;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.limits.DefaultLimits;
import org.copperbook.jobs.limits.Limit;
import org.copperbook.jobs.limits.LimitProfile;
import org.copperbook.store.JobStore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.Parameter;
import org.junit.jupiter.params.ParameterizedClass;
import org.junit.jupiter.params.provider.EnumSource;

@ParameterizedClass
@EnumSource(Engine.class)
class ShopLimitsTest {

    private static final PartKey LIMITS = PartKey.of(PartKind.LIMITS);

    @Parameter
    Engine engine;

    @TempDir
    Path folder;

    @Test
    void aShopWithoutLimitsOfItsOwnHasTheShippedOnes() {
        try (JobStore store = engine.place(folder).open()) {
            assertEquals(DefaultLimits.load(new PartJson()), store.shop().limits());
        }
    }

    @Test
    void aLimitOfTheShopStandsInPlaceOfTheShippedOneAndTheOthersStay() throws Exception {
        LimitProfile own = (LimitProfile) new PartJson().read(LIMITS, "{\"schema\":1,\"name\":\"own\",\"limits\":[{\"id\":"
                + "\"bearing.temperature\",\"upper\":80,\"unit\":\"degC\",\"why\":\"grease of the shop\"}]}");
        try (JobStore store = engine.place(folder).open()) {
            store.saveShopPart(LIMITS, own, 0, "p01", "");
            LimitProfile inForce = store.shop().limits();
            Limit limit = inForce.find("bearing.temperature").orElseThrow();
            assertEquals(80, limit.upper());
            assertNotNull(limit.original(), "the shipped limit stays beside it");
            assertEquals(DefaultLimits.load(new PartJson()).limits().size(), inForce.limits().size());
        }
    }
}
