package org.copperbook.desk.command;

import java.util.ArrayList;
import java.util.List;
import org.copperbook.desk.people.SignInDialog;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.shop.Person;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.ui.actions.CompoundContributionItem;

/** The people of the shop in a menu; choosing one says who works here or, with secrets, asks for that person's. */
public final class PeopleItems extends CompoundContributionItem {

    @Override
    protected IContributionItem[] getContributionItems() {
        DeskSession session = DeskSession.ofWorkbench();
        List<IContributionItem> items = new ArrayList<>();
        for (Person p : session.shop().people().values()) {
            if (p.active() && !p.roles().isEmpty()) {
                items.add(new ActionContributionItem(action(session, p)));
            }
        }
        if (items.isEmpty()) {
            Action none = new Action(DeskWords.text("who.nobody")) { };
            none.setEnabled(false);
            items.add(new ActionContributionItem(none));
        }
        return items.toArray(IContributionItem[]::new);
    }

    private static Action action(DeskSession session, Person p) {
        Action a = new Action(p.name(), IAction.AS_RADIO_BUTTON) {
            @Override
            public void run() {
                if (session.hasSecrets()) {
                    SignInDialog.open(p.key());
                } else if (isChecked()) {
                    session.who(p.key());
                }
            }
        };
        a.setChecked(session.who().filter(p.key()::equals).isPresent());
        return a;
    }
}
