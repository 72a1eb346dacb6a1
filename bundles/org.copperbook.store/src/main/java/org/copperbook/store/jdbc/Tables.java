package org.copperbook.store.jdbc;

import org.copperbook.jobs.json.PartJson;

/** The store's tables, each behind the few statements it needs. */
record Tables(JobTable jobs, RevisionTable revisions, NumberSeries numbers, PersonTable people, PhotoTable photos,
        RegisterTable register, PastWindingTable pastWindings, SettingTable settings,
        PersonalTable personal, PrivateText privateText, MonthTable months, BoardTable board, AccountTable accounts,
        StockTable stock) {

    /** @param textList as {@link Database#hasRegisterText} */
    static Tables with(PartJson json, boolean textList) {
        JobTable jobs = new JobTable();
        SettingTable settings = new SettingTable();
        PersonalTable personal = new PersonalTable(settings);
        return new Tables(jobs, new RevisionTable(), new NumberSeries(jobs), new PersonTable(json, settings, personal),
                new PhotoTable(), new RegisterTable(textList), new PastWindingTable(), settings, personal,
                new PrivateText(personal, json), new MonthTable(), new BoardTable(), new AccountTable(),
                new StockTable());
    }
}
