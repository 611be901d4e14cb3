import { existsSync } from 'node:fs';
import path from 'node:path';
import { OperationCancelled, URI, type Cancellation, type LangiumDocument } from 'langium';
import type { Location } from 'vscode-languageserver';
import * as z from 'zod/mini';
import { compareJobs, nameOfJob, type ComparedJob, type SideJob } from '../../../language/src/compare/compare-jobs.js';
import { comparisonDocument, type ComparisonDocument } from '../../../language/src/compare/comparison-document.js';
import type { Span } from '../../../language/src/core/span.js';
import { jobModels, type ModelOfJob } from '../../../language/src/exports/job-models.js';
import { lowerFile, type LoweredFile } from '../../../language/src/model/file.js';
import { Places as TextPlaces } from '../../../language/src/renderings/findings-text.js';
import { readRevisionAddress, revisionAddress } from '../git/revision-address.js';
import { Revisions, type OpenedRevision } from '../git/revisions.js';
import { GitFailure } from '../git/run-git.js';
import type { HotroomServerSharedServices } from '../services.js';
import { rangeOfText } from '../to-lsp.js';
import { dayOf } from '../today.js';
import { toEditor, type EditorTables } from './editor-tables.js';
import { fileNameOf, readyDocument, refused, servicesOf, shownFrom } from './ready-document.js';

const text = z.string().check(z.minLength(1));
const subjectSchema = z.object({
    uri: text, job: z.optional(text),
    with: z.discriminatedUnion('kind', [
        z.object({ kind: z.literal('last-commit') }), z.object({ kind: z.literal('branch-base') }), z.object({ kind: z.literal('revision'), name: z.string() }),
        z.object({ kind: z.literal('file'), uri: text, job: z.optional(text) }),
    ]),
});
type Subject = z.infer<typeof subjectSchema>;

/** One side as it is compared, with the way from its places to where an editor shows them. */
interface Side { readonly label: string; readonly jobs: readonly SideJob[]; readonly locate: (span: Span) => Location }

/** Compares jobs as they stand in the editor with a revision, another job or another file, through the functions of the command line. */
export class Comparisons {
    private readonly revisions = new Revisions();
    private readonly modelled = new WeakMap<LoweredFile, { readonly under: string; readonly models: readonly ModelOfJob[] }>();

    constructor(private readonly services: HotroomServerSharedServices) {}

    /**
     * @param argument `{ uri, job?, with }`, where `with` is `{ kind: 'last-commit' }`, `{ kind: 'branch-base' }`, `{ kind: 'revision', name }` or
     * `{ kind: 'file', uri, job? }`; without a job all of the file
     * @returns the comparison, or null when the file has no such job
     * @throws a refusal that says what is missing: no repository, no such revision
     */
    async compare(argument: unknown, token: Cancellation.CancellationToken): Promise<EditorTables<ComparisonDocument> | null> {
        const read = subjectSchema.safeParse(argument);
        if (!read.success) throw refused('A comparison is asked for with the address of a file, if need be the name of a job, and what to compare with.');
        const subject = read.data;
        const document = await readyDocument(this.services, URI.parse(subject.uri), token);
        const now = this.sideOf(document, subject.job, token);
        if (now.jobs.length === 0) return null;
        const before = await this.before(subject, document, now, token);
        giveUpWhenCancelled(token);
        const jobs = compareJobs(before.jobs, now.jobs).filter(job => subject.job === undefined || isOf(job, subject.job));
        const compared = comparisonDocument(jobs, { before: before.label, after: now.label });
        return toEditor(compared, servicesOf(this.services, document).editing.Places, before.locate);
    }

    /** @returns the text of a file of a revision, by the address a comparison gave; null when there is none */
    async revisionText(argument: unknown): Promise<string | null> {
        const file = typeof argument === 'string' ? readRevisionAddress(argument) : undefined;
        if (!file) throw refused('This is no address of a file in a revision.');
        return await inWords('the revision', () => this.revisions.text(URI.parse(file.near).fsPath, file.tree, file.path)) ?? null;
    }

    private sideOf(document: LangiumDocument, job: string | undefined, token: Cancellation.CancellationToken): Side {
        const { editing: { Places } } = servicesOf(this.services, document);
        const models = this.models(document, token).filter(({ model }) => job === undefined || model.job.name === job);
        const showPlace = shownFrom(document, Places);
        const showPlaceInside = (span: Span): string => span.uri === document.uri.toString() ? `line ${Places.range(span).start.line + 1}` : showPlace(span);
        return {
            label: job === undefined ? fileNameOf(document.uri) : `${job} in ${fileNameOf(document.uri)}`,
            jobs: models.map(model => ({ file: document.uri.toString(), model, showPlace, showPlaceInside })), locate: span => Places.location(span),
        };
    }

    private async before({ job, with: wanted }: Subject, document: LangiumDocument, now: Side, token: Cancellation.CancellationToken): Promise<Side> {
        if (wanted.kind === 'file') {
            const other = await readyDocument(this.services, URI.parse(wanted.uri), token);
            const side = this.sideOf(other, wanted.job, token);
            if (side.jobs.length === 0) throw refused(wanted.job === undefined ? `There is no job in ${fileNameOf(other.uri)} to compare with.` : `There is no job ${wanted.job} in ${fileNameOf(other.uri)} to compare with.`);
            return side;
        }
        const what = wanted.kind === 'last-commit' ? 'the last commit' : wanted.kind === 'branch-base' ? 'the base of the branch' : wanted.name === '' ? 'a revision without a name' : wanted.name;
        if (document.uri.scheme !== 'file') throw refused(`Cannot compare with ${what}: this text is no file on disk. It can be compared with another job.`);
        return inWords(what, async () => {
            const opened = await this.revisions.open(document.uri.fsPath, wanted, dayOf(this.services.workspace.now()));
            return this.sideOfRevision(opened, document, now.jobs.map(nameOfJob), job);
        });
    }

    private async sideOfRevision(opened: OpenedRevision, document: LangiumDocument, names: readonly string[], job: string | undefined): Promise<Side> {
        const { workspace, path: own, label, short, tree } = opened;
        const places = new TextPlaces(workspace.sources);
        const others = new TextPlaces({ ...workspace.sources, nameOf: uri => path.posix.relative(path.posix.dirname(own), workspace.pathOf(uri)) });
        const files = await workspace.models(workspace.has(own) ? [own] : movedFrom(opened, names));
        return {
            label,
            jobs: files.flatMap(({ path: file, models }) => models.filter(({ model }) => job === undefined || file === own || names.includes(model.job.name))
                .map(model => ({ file: file === own ? document.uri.toString() : file, model, showPlace: (span: Span) => places.showLine(span), showPlaceInside: (span: Span) => workspace.pathOf(span.uri) === own ? `line ${(places.start(span)?.line ?? 0) + 1}` : others.showLine(span) }))),
            locate: span => {
                const file = workspace.pathOf(span.uri);
                const uri = revisionAddress({ near: document.uri.toString(), tree, path: file }, short);
                return { uri, range: rangeOfText(workspace.textIn(file) ?? '', span) };
            },
        };
    }

    /** Models of a document as it is now, kept until it or what it uses changes. */
    private models(document: LangiumDocument, token: Cancellation.CancellationToken): readonly ModelOfJob[] {
        const hotroom = servicesOf(this.services, document);
        const circumstances = hotroom.editing.Reader.circumstances(document);
        const under = JSON.stringify([circumstances.today, circumstances.settings?.key]);
        const lowered = lowerFile(document, hotroom);
        const known = this.modelled.get(lowered);
        if (known?.under === under) return known.models;
        const models = jobModels(lowered, { ...circumstances, checkCancelled: () => { giveUpWhenCancelled(token); } });
        this.modelled.set(lowered, { under, models });
        return models;
    }
}

/** More files of a revision than this are not looked through for a job that has moved. */
const mostLookedAt = 20;

/** Files of a revision that are no longer on disk and hold a job of one of these names: where a file was before it was renamed. */
function movedFrom({ workspace, top }: OpenedRevision, names: readonly string[]): readonly string[] {
    const isMeant = (content: string): boolean => names.some(name => content.includes(`job ${name}`));
    return workspace.paths.filter(file => file.endsWith('.hotroom') && !existsSync(path.join(top, file)) && isMeant(workspace.textIn(file) ?? '')).slice(0, mostLookedAt);
}

const isOf = ({ before, after }: ComparedJob, name: string): boolean => after ? nameOfJob(after) === name : before !== undefined && nameOfJob(before) === name;

async function inWords<T>(what: string, ask: () => Promise<T>): Promise<T> {
    try {
        return await ask();
    } catch (error) {
        if (error instanceof GitFailure) throw refused(`Cannot compare with ${what}: ${error.message}${error.message.endsWith('.') ? '' : '.'}`);
        throw error;
    }
}

function giveUpWhenCancelled(token: Cancellation.CancellationToken): void {
    if (token.isCancellationRequested) throw OperationCancelled as unknown as Error;
}
