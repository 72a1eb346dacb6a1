package org.copperbook.office;

import org.copperbook.desk.Desk;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;

/** A dialog that asks something and is answered by one button, or left. */
public abstract class AskingDialog extends Dialog {

    protected AskingDialog(Shell parent) {
        super(parent);
    }

    /** Makes both buttons, as high and wide as the font and a glove need. */
    protected final void answers(Composite parent, String answer, String answerId, String leaveId) {
        dressed(createButton(parent, IDialogConstants.OK_ID, answer, true), answerId);
        dressed(createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false), leaveId);
        Reach.ensure(parent);
    }

    /** The width that the dialog gives its buttons is that of another font. */
    private void dressed(Button b, String id) {
        Look.of(b).as(Look.Role.TEXT, b);
        b.setData(Desk.ID, id);
        setButtonLayoutData(b);
    }
}
