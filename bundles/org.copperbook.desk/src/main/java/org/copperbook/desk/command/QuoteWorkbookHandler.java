package org.copperbook.desk.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.copperbook.desk.editor.JobEditor;
import org.copperbook.desk.shell.DeskSession;
import org.copperbook.desk.text.DeskWords;
import org.copperbook.jobs.Job;
import org.copperbook.jobs.PartKey;
import org.copperbook.jobs.PartKind;
import org.copperbook.jobs.quote.Quote;
import org.copperbook.jobs.report.AgreedQuote;
import org.copperbook.jobs.shop.Shop;
import org.copperbook.sheets.QuoteWorkbook;
import org.copperbook.sheets.WorkbookNotWrittenException;
import org.copperbook.sheets.template.QuoteTemplate;
import org.copperbook.sheets.template.UnusableTemplate;
import org.copperbook.store.JobStore;
import org.copperbook.store.KeptTemplate;
import org.eclipse.core.runtime.IProgressMonitor;

/** Writes the quote that is shown, or the newest of the job, as a workbook: the one that ships, or a template of the workshop's own filled. */
public final class QuoteWorkbookHandler extends WorkbookHandler {

    @Override
    Writing prepare(JobEditor editor, Job job, Shop shop) {
        List<PartKey> quotes = job.keys(PartKind.QUOTE);
        Optional<PartKey> key = editor.shown().filter(quotes::contains)
                .or(() -> AgreedQuote.newest(job));
        if (key.isEmpty()) {
            editor.say(DeskWords.text("workbook.noQuote"));
            return null;
        }
        Quote quote = (Quote) job.parts().get(key.get());
        JobStore store = DeskSession.ofWorkbench().store();
        return new Writing() {
            @Override
            public String fileName() {
                return plain(DeskWords.text("workbook.quoteFile", job.number(), key.get().name(),
                        Integer.toString(quote.revision())));
            }

            @Override
            public void write(Path target, IProgressMonitor monitor) throws WorkbookNotWrittenException {
                Optional<QuoteTemplate> own = template(store);
                if (own.isPresent()) {
                    own.get().write(job, quote, shop, target);
                } else {
                    new QuoteWorkbook().write(job, quote, shop, target);
                }
            }
        };
    }

    /** The one of this screen goes before the workshop's. */
    private static Optional<QuoteTemplate> template(JobStore store) throws UnusableTemplate {
        Optional<Path> ofScreen = WorkbookFolder.quoteTemplate();
        return ofScreen.isPresent() ? Optional.of(QuoteTemplate.of(ofScreen.get()))
                : KeptTemplate.of(store).map(t -> new QuoteTemplate(t.name(), t.bytes()));
    }
}
