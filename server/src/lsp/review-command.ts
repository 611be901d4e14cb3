import { URI, type Cancellation } from 'langium';
import type { Location } from 'vscode-languageserver';
import * as z from 'zod/mini';
import { withTextFindings } from '../../../language/src/renderings/job-trace.js';
import { jobName } from '../../../language/src/renderings/rendered-job.js';
import { reviewHtml, reviewMarkup } from '../../../language/src/review/review-html.js';
import { reviewReport } from '../../../language/src/review/review-report.js';
import { reviewStyles } from '../../../language/src/review/review-styles.js';
import type { HotroomServerSharedServices } from '../services.js';
import { dayOf } from '../today.js';
import { fileNameOf, readyDocument, refused, servicesOf, shownFrom } from './ready-document.js';

const subjectSchema = z.object({ uri: z.string().check(z.minLength(1)), job: z.optional(z.string().check(z.minLength(1))) });

/** The report as markup with the places its numbered links lead to, and as a page of its own to save or send. */
export interface ReviewAnswer { readonly title: string; readonly styles: string; readonly body: string; readonly places: readonly Location[]; readonly html: string }

/** Makes review reports of jobs as they stand in the editor, with the function of the command line. */
export class Reviews {
    constructor(private readonly services: HotroomServerSharedServices) {}

    /**
     * @param argument `{ uri, job? }`; without a job the first of the file
     * @returns the report, or null when the file has no such job
     */
    async make(argument: unknown, token: Cancellation.CancellationToken): Promise<ReviewAnswer | null> {
        const subject = subjectSchema.safeParse(argument);
        if (!subject.success) throw refused('A review report is asked for with the address of a file and, if need be, the name of a job.');
        const { uri, job } = subject.data;
        const document = await readyDocument(this.services, URI.parse(uri), token);
        const { editing: { Places, Reader } } = servicesOf(this.services, document);
        const analysis = Reader.analysis(document);
        const own = analysis?.jobs.find(one => job === undefined || jobName(one.job) === job);
        if (!analysis || !own) return null;
        const { Imports, LangiumDocuments } = this.services.workspace;
        const used = [...Imports.dependencies(document)].flatMap(other => LangiumDocuments.getDocument(URI.parse(other)) ?? []);
        const showPlace = shownFrom(document, Places);
        const report = reviewReport(withTextFindings(own, analysis), {
            file: fileNameOf(document.uri), today: dayOf(new Date()), showPlace: span => showPlace(span).split('/').at(-1) ?? '',
            catalogues: [...analysis.file.catalogues, ...used.flatMap(other => Reader.analysis(other)?.file.catalogues ?? [])],
        });
        const { title, body, places } = reviewMarkup(report);
        return { title, styles: reviewStyles, body, places: places.map(span => Places.location(span)), html: reviewHtml([report]) };
    }
}
