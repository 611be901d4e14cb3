import { OperationCancelled, URI, type Cancellation, type LangiumDocument } from 'langium';
import * as z from 'zod/mini';
import type { Analysis, JobAnalysis } from '../../../language/src/analyze.js';
import { timeLimit } from '../solver/time-limit.js';
import { planStock, planStockGreedy } from '../../../language/src/engines/stock/plan-stock.js';
import type { IntegerSolver } from '../../../language/src/engines/stock/integer-solver.js';
import { spanContains, type Span } from '../../../language/src/core/span.js';
import type { Block } from '../../../language/src/model/block.js';
import { cutListDocument } from '../../../language/src/renderings/cut-list-document.js';
import { withTextFindings } from '../../../language/src/renderings/job-trace.js';
import { jobName } from '../../../language/src/renderings/rendered-job.js';
import { stockOffers } from '../../../language/src/renderings/stock-offers.js';
import { planTasks, stockTasks, type PlannedStock } from '../../../language/src/renderings/stock-tasks.js';
import type { HotroomServerServices, HotroomServerSharedServices } from '../services.js';
import type { Progress } from './commands.js';
import { toEditor, type EditorTables } from './editor-tables.js';
import { readyDocument, refused, servicesOf, shownFrom } from './ready-document.js';

const subjectSchema = z.object({ uri: z.string().check(z.minLength(1)), job: z.optional(z.string().check(z.minLength(1))) });

/** The list as an editor shows it; `stale` when the file has errors now and this is the last list made without. */
export type CutListAnswer = EditorTables & { readonly stale?: boolean };

/** Past this the quick plan stands: nobody waits longer for a list that is made again at every save. */
const planLimitMs = 20_000;

/** Makes cut lists with their stock plans, off the keystroke. */
export class CutLists {
    /** The last list made without errors, by file and job. */
    private readonly sound = new Map<string, CutListAnswer>();

    constructor(private readonly services: HotroomServerSharedServices, private readonly solver: IntegerSolver | undefined) {}

    /**
     * @param argument `{ uri, job? }`; without a job the first of the file
     * @returns the list, or null when the file has no such job
     */
    async make(argument: unknown, token: Cancellation.CancellationToken, progress: Progress): Promise<CutListAnswer | null> {
        const subject = subjectSchema.safeParse(argument);
        if (!subject.success) throw refused('A cut list is asked for with the address of a file and, if need be, the name of a job.');
        const document = await readyDocument(this.services, URI.parse(subject.data.uri), token);
        const hotroom = servicesOf(this.services, document);
        const analysis = hotroom.editing.Reader.analysis(document);
        const job = analysis?.jobs.find(candidate => subject.data.job === undefined || jobName(candidate.job) === subject.data.job);
        if (!analysis || !job) return null;
        const key = `${document.uri.toString()} ${jobName(job.job)}`;
        const hasErrors = analysis.findings.some(({ severity, at }) => severity === 'error' && !isOfAnotherJob(at, job, analysis));
        const last = this.sound.get(key);
        if (hasErrors && last) return { ...last, stale: true };
        const planned = await this.plan(job, token, progress);
        const list = cutListDocument(withTextFindings(job, analysis), planned, { catalogues: this.catalogues(document, analysis, hotroom), showPlace: shownFrom(document, hotroom.editing.Places) });
        const answer = toEditor(list, hotroom.editing.Places);
        if (!hasErrors) this.sound.set(key, answer);
        return answer;
    }

    private async plan({ job, results }: JobAnalysis, token: Cancellation.CancellationToken, progress: Progress): Promise<readonly PlannedStock[]> {
        const stop = new AbortController();
        const follow = token.onCancellationRequested(() => { stop.abort(); });
        const giveUpWhenCancelled = (): void => { if (token.isCancellationRequested) throw OperationCancelled as unknown as Error; };
        const limit = timeLimit(planLimitMs);
        const signal = AbortSignal.any([stop.signal, limit.signal]);
        const late = `The ${planLimitMs / 1000} s allowed were over; this is the best plan found by then.`;
        const tasks = stockTasks(results.parts, stockOffers(job));
        const wanted = tasks.filter(({ request }) => request !== undefined).length;
        let done = 0;
        try {
            return await planTasks(tasks, async request => {
                progress(`Planning stock ${done + 1} of ${wanted}`, Math.round(100 * done / Math.max(1, wanted)));
                done++;
                // Lets a cancellation that has arrived be heard before the next stretch of arithmetic.
                await new Promise(resolve => { setImmediate(resolve); });
                giveUpWhenCancelled();
                if (!this.solver) return { plan: planStockGreedy(request), cutShort: 'This is the quick plan; there is no solver here to prove a better one.' };
                try {
                    const plan = await planStock(request, this.solver, signal, limit.isLate);
                    return { plan, ...(plan.proof !== 'proven' && limit.isLate() && { cutShort: late }) };
                } catch (error) {
                    giveUpWhenCancelled();
                    if (!limit.signal.aborted) throw error;
                    return { plan: planStockGreedy(request), cutShort: late };
                }
            });
        } finally {
            follow.dispose();
        }
    }

    private catalogues(document: LangiumDocument, analysis: Analysis, hotroom: HotroomServerServices): readonly Block<'catalogue'>[] {
        const { Imports, LangiumDocuments } = this.services.workspace;
        const used = [...Imports.dependencies(document)].flatMap(uri => LangiumDocuments.getDocument(URI.parse(uri)) ?? []);
        return [...analysis.file.catalogues, ...used.flatMap(other => hotroom.editing.Reader.analysis(other)?.file.catalogues ?? [])];
    }
}

const isOfAnotherJob = (at: Span, own: JobAnalysis, { jobs }: Analysis): boolean =>
    jobs.some(other => other !== own && spanContains(other.job.block.span, at));
