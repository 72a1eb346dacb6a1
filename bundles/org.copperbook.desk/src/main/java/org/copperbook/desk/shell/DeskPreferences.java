package org.copperbook.desk.shell;

import org.copperbook.desk.Desk;
import org.copperbook.desk.backup.BackupPreferences;
import org.copperbook.desk.command.WorkbookFolder;
import org.copperbook.desk.people.IdleSignOut;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.desk.text.SpokenName;
import org.copperbook.desk.theme.Look;
import org.copperbook.desk.theme.Reach;
import org.copperbook.store.backup.BackupPlan;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.DirectoryFieldEditor;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.jface.preference.FileFieldEditor;
import org.eclipse.jface.preference.IntegerFieldEditor;
import org.eclipse.jface.preference.RadioGroupFieldEditor;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;

/** Preferences of this screen: size of text and targets, folder for workbooks, backups, signing out. */
public final class DeskPreferences extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

    private static final int MOST = 9999;

    public DeskPreferences() {
        super(GRID);
    }

    @Override
    public void init(IWorkbench workbench) {
        ScopedPreferenceStore store = new ScopedPreferenceStore(InstanceScope.INSTANCE, Desk.BUNDLE);
        store.setDefault(SizePreference.KEY, Look.Size.DESK.name());
        store.setDefault(BackupPreferences.HOURS, (int) BackupPlan.STANDARD.every().toHours());
        store.setDefault(BackupPreferences.KEEP, BackupPlan.STANDARD.keep());
        store.setDefault(BackupPreferences.DAYS, BackupPlan.STANDARD.days());
        store.setDefault(IdleSignOut.MINUTES, IdleSignOut.STANDARD_MINUTES);
        setPreferenceStore(store);
        setDescription(DeskWords.text("preferences.words"));
    }

    @Override
    protected void createFieldEditors() {
        String[][] sizes = new String[Look.Size.values().length][];
        for (Look.Size s : Look.Size.values()) {
            sizes[s.ordinal()] = new String[] {DeskWords.get().of(s), s.name()};
        }
        addField(new RadioGroupFieldEditor(SizePreference.KEY, DeskWords.text("preferences.size"), 1, sizes,
                getFieldEditorParent(), true));
        folder(WorkbookFolder.KEY, "preferences.workbooks");
        template();
        folder(BackupPreferences.FOLDER, "preferences.backups");
        whole(BackupPreferences.HOURS, "preferences.backupHours", 1);
        whole(BackupPreferences.KEEP, "preferences.backupKeep", 1);
        whole(BackupPreferences.DAYS, "preferences.backupDays", 0);
        whole(IdleSignOut.MINUTES, "preferences.signOutMinutes", 0);
    }

    private void folder(String key, String label) {
        DirectoryFieldEditor folder = new DirectoryFieldEditor(key, DeskWords.text(label), getFieldEditorParent());
        folder.setEmptyStringAllowed(true);
        addField(folder);
        SpokenName.give(folder.getTextControl(getFieldEditorParent()), DeskWords.text(label));
    }

    private void template() {
        FileFieldEditor file = new FileFieldEditor(WorkbookFolder.QUOTE_TEMPLATE, DeskWords.text("preferences.quoteTemplate"),
                getFieldEditorParent());
        file.setEmptyStringAllowed(true);
        file.setFileExtensions(new String[] {"*.xlsx"});
        addField(file);
        SpokenName.give(file.getTextControl(getFieldEditorParent()), DeskWords.text("preferences.quoteTemplate"));
    }

    private void whole(String key, String label, int least) {
        IntegerFieldEditor number = new IntegerFieldEditor(key, DeskWords.text(label), getFieldEditorParent());
        number.setValidRange(least, MOST);
        addField(number);
        SpokenName.give(number.getTextControl(getFieldEditorParent()), DeskWords.text(label));
    }

    /** The page itself shows the size that is chosen on it. */
    @Override
    protected Control createContents(Composite parent) {
        Control page = super.createContents(parent);
        Look.of(page).dress(page);
        Reach.ensure(page);
        return page;
    }
}
