package org.copperbook.runup;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.copperbook.desk.page.PageSite;
import org.copperbook.desk.text.Words;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.check.Signing;
import org.copperbook.jobs.shop.Person;
import org.copperbook.jobs.signoff.HoldPoint;
import org.copperbook.jobs.signoff.Role;

/** Signs, concedes and judges for the person at the screen; a refusal comes back in words and changes nothing. */
final class SignOffDesk {

    private final PageSite site;
    private final Words words;

    SignOffDesk(PageSite site, Words words) {
        this.site = site;
        this.words = words;
    }

    /** Roles of the person at the screen, with their words; empty when nobody has said who works here. */
    Map<Role, String> roles() {
        Map<Role, String> roles = new LinkedHashMap<>();
        site.who().flatMap(who -> site.shop().person(who)).map(Person::roles).ifPresent(held -> {
            for (Role r : Role.values()) {
                if (held.contains(r)) {
                    roles.put(r, words.of(r));
                }
            }
        });
        return roles;
    }

    /** Signs a hold point; returns the reasons of a refusal, empty when done. */
    List<String> sign(HoldPoint point, Role role, String note) {
        return settle(signer -> Signing.sign(site.document().job(), site.shop(), point, signer, note), role);
    }

    /** Opens a signed hold point again, so that the record behind it can be changed. */
    List<String> reopen(HoldPoint point, Role role, String reason) {
        return settle(signer -> Signing.reopen(site.document().job(), site.shop(), point, reason, signer), role);
    }

    /** Concedes a verdict. */
    List<String> concede(String verdict, Role role, String reason) {
        return settle(signer -> Signing.concede(site.document().job(), site.shop(), verdict, reason, signer), role);
    }

    /** Judges a verdict for which no limit is set. */
    List<String> judge(String verdict, boolean acceptable, Role role, String reason) {
        return settle(signer -> Signing.judge(site.document().job(), site.shop(), verdict, acceptable, reason, signer),
                role);
    }

    private List<String> settle(java.util.function.Function<Signing.Signer, Signing.Result> act, Role role) {
        if (site.who().isEmpty() || role == null) {
            return List.of(words.text("signoffs.whoFirst"));
        }
        Signing.Result result = act.apply(new Signing.Signer(site.who().get(), role,
                Instant.now().truncatedTo(ChronoUnit.SECONDS)));
        if (result instanceof Signing.Result.Done done) {
            site.document().put(PartKey.of(PartKind.SIGN_OFFS), done.signOffs());
            return List.of();
        }
        return new ArrayList<>(((Signing.Result.Refused) result).reasons());
    }
}
