package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.copperbook.calc.verdict.Outcome;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.json.PartJson;
import org.copperbook.jobs.limits.DefaultLimits;
import org.copperbook.jobs.limits.Limit;
import org.copperbook.jobs.limits.LimitProfile;
import org.copperbook.jobs.shop.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A limit that is not in the profile never lets anything pass that did not pass with it. */
class MissingLimitTest {

    static Stream<String> ids() {
        return DefaultLimits.load(new PartJson()).limits().stream().map(Limit::id);
    }

    private static Shop without(String id) {
        LimitProfile all = DefaultLimits.load(Bench.JSON);
        return Bench.shop(new LimitProfile(1, "", all.limits().stream().filter(l -> !l.id().equals(id)).toList(), null));
    }

    /** The released set and a bench full of things that fail, are doubtful, or only just pass. */
    private static List<Job> jobs() {
        Job good = Bench.realInput();
        Job bad = Bench.with(Bench.with(good, "run-up", "{'schema':1,'withstands':["
                + "{'winding':'main-stator','direct':true,'volts':2000,'seconds':20,'held':true},"
                + "{'winding':'main-stator','direct':false,'volts':1300,'seconds':60,'held':true,'newWinding':true}],"
                + "'surges':[{'winding':'main-stator','pair':'U-V','alike':true}],'sequenceRight':false,"
                + "'overspeed':{'speedRpm':2160,'seconds':20,'sound':true},"
                + "'vibration':[{'end':'DRIVE_END','direction':'AXIAL','mmPerSecond':3.0,'instrument':'vib-1'}],"
                + "'bearingTemperatures':[{'minutes':0,'driveEndCelsius':50},{'minutes':60,'driveEndCelsius':99}],"
                + "'regulation':{'setPointV':208,'lowestV':190,'highestV':209},"
                + "'points':[{'kind':'NO_LOAD','speedRpm':1850,'instrument':'volt-1','lineVolts':{"
                + "'a':{'kind':'VALUE','value':200},'b':{'kind':'VALUE','value':208},'c':{'kind':'VALUE','value':215}}}]}"),
                "core", "{'schema':1,'winding':'main-stator','burnOutMaxCelsius':450,'runs':[{'stage':'BEFORE_BURN_OUT',"
                        + "'watts':100,'yokeMassKg':50,'fluxDensityT':1.3,'meanCelsius':30,'hottestCelsius':60},"
                        + "{'stage':'AFTER_BURN_OUT','watts':200,'yokeMassKg':50,'fluxDensityT':1.3,'meanCelsius':30,"
                        + "'hottestCelsius':60}]}");
        Job reading = Bench.with(bad, "inspection", Bench.inspection(
                Bench.reading("a", "RESISTANCE", "main-rotor", "TERMINAL_PAIR", "F1-F2", "0.6", "20", "multi-2",
                        "AS_FOUND", "'method':'TWO_WIRE'"),
                Bench.reading("b", "INSULATION_RESISTANCE", "main-rotor", "TO_EARTH", "", "0.4e6", "20", "ir-tester-1",
                        "AS_FOUND", "'afterSeconds':60"),
                Bench.reading("c", "INSULATION_RESISTANCE", "main-stator", "TO_EARTH", "", "0.4e6", "20", "ir-tester-1",
                        "AS_FOUND", "'afterSeconds':60")));
        return List.of(good, bad, reading);
    }

    private static Map<String, Outcome> outcomes(Job job, Shop shop) {
        Map<String, Outcome> out = new HashMap<>();
        JobChecks.verdicts(job, shop).forEach(v -> out.put(v.id(), v.outcome()));
        return out;
    }

    @ParameterizedTest
    @MethodSource("ids")
    void takingItOutLetsNothingPass(String id) {
        Shop bare = without(id);
        for (Job job : jobs()) {
            Map<String, Outcome> before = outcomes(job, Bench.shop());
            outcomes(job, bare).forEach((verdict, now) -> {
                if (before.containsKey(verdict) && before.get(verdict) != Outcome.MEETS) {
                    assertNotEquals(Outcome.MEETS, now, verdict + " passes without " + id);
                }
            });
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"resistance.unbalance.random", "resistance.unbalance.poles", "resistance.as-left-deviation",
        "speed.accuracy", "insulation.ieee43.random", "insulation.ieee43.field-volts-unknown", "diode.conducts",
        "diode.blocks", "diode.complete-set", "diode.base-polarity", "suppressor.resistance",
        "run-up.voltage-unbalance", "run-up.regulation.g2", "run-up.phase-sequence", "vibration.a.rigid.132-280",
        "bearing.steady", "bearing.temperature"})
    void whatMetItBeforeNeedsAJudgementWithoutIt(String id) {
        Map<String, Outcome> before = outcomes(Bench.realInput(), Bench.shop());
        Map<String, Outcome> now = outcomes(Bench.realInput(), without(id));
        assertTrue(before.entrySet().stream().anyMatch(e -> e.getValue() == Outcome.MEETS
                && (now.get(e.getKey()) == Outcome.NO_LIMIT_SET
                        || now.get(e.getKey()) == null && now.containsValue(Outcome.NO_LIMIT_SET))), id);
    }

    @Test
    void anEmptyProfilePassesOnlyWhatNeedsNoLimit() {
        Shop none = Bench.shop(new LimitProfile(1, "", List.of(), null));
        for (Verdict v : JobChecks.verdicts(Bench.realInput(), none)) {
            boolean byNature = v.id().contains(".capture.") || v.id().endsWith(".polarity") && !v.id().startsWith("diode")
                    || v.id().equals("rectifier.positions");
            boolean makers = v.source().contains("TM 9-6115-645-24");
            assertTrue(v.outcome() != Outcome.MEETS || byNature || makers, v.id() + " passes by " + v.source());
        }
    }
}
