package org.copperbook.jobs.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.SignOffs;
import org.junit.jupiter.api.Test;

/** What sign-offs may be kept, whichever program hands them in. */
class SignOffsGuardTest {

    private static final PartKey KEY = PartKey.of(PartKind.SIGN_OFFS);

    private final Shop shop = Bench.shop();
    private final Job whole = Bench.realInput();
    private final SignOffs all = HoldPoints.signOffs(whole);

    private static SignOffs with(SignOffs s, List<SignOffs.Signature> signatures) {
        return new SignOffs(s.schema(), signatures, s.concessions(), s.judgements(), s.reopenings(), s.cautions(),
                s.more());
    }

    /** The job before its last signature. */
    private Job before() {
        return whole.with(KEY, with(all, all.signatures().subList(0, all.signatures().size() - 1)));
    }

    private SignOffs.Signature last() {
        return all.signatures().get(all.signatures().size() - 1);
    }

    private SignOffs signedBy(SignOffs.Signature s, String by) {
        List<SignOffs.Signature> next = new ArrayList<>(HoldPoints.signOffs(before()).signatures());
        next.add(new SignOffs.Signature(s.point(), by, s.role(), s.at(), s.note(), s.seal(), Map.of()));
        return with(all, next);
    }

    private SignOffs properlySigned() {
        Signing.Result r = Signing.sign(before(), shop, last().point(),
                new Signing.Signer(last().by(), last().role(), last().at()), last().note());
        return ((Signing.Result.Done) r).signOffs();
    }

    @Test
    void theReleaseOfThePublishedSetMayBeKeptByTheOneWhoSigned() {
        assertEquals(HoldPoint.RELEASE, last().point());
        assertEquals(List.of(), SignOffsGuard.refusals(before(), shop, properlySigned(), last().by()));
    }

    @Test
    void nobodyKeepsItForTheOneWhoSigned() {
        String other = shop.people().keySet().stream().filter(k -> !k.equals(last().by())).findFirst().orElseThrow();
        assertFalse(SignOffsGuard.refusals(before(), shop, properlySigned(), other).isEmpty());
    }

    @Test
    void theWinderDoesNotReleaseWhatTheWinderWound() {
        String winder = SignRule.winders(whole).iterator().next();
        assertFalse(SignOffsGuard.refusals(before(), shop, signedBy(last(), winder), winder).isEmpty());
    }

    @Test
    void aReleaseWithoutTheSealOfTheRecordIsRefused() {
        List<SignOffs.Signature> next = new ArrayList<>(HoldPoints.signOffs(before()).signatures());
        next.add(new SignOffs.Signature(HoldPoint.RELEASE, last().by(), last().role(), last().at(), "", null, Map.of()));
        List<String> said = SignOffsGuard.refusals(before(), shop, with(all, next), last().by());
        assertEquals(List.of(Phrases.say("refused.no-seal")), said);
    }

    @Test
    void whatWasSignedIsNotTakenOut() {
        SignOffs fewer = with(all, all.signatures().subList(1, all.signatures().size()));
        assertEquals(List.of(Phrases.say("refused.taken-out")),
                SignOffsGuard.refusals(whole, shop, fewer, last().by()));
        assertTrue(SignOffsGuard.refusals(whole, shop, all, last().by()).isEmpty(), "unchanged");
    }
}
