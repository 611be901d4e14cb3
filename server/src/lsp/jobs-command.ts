import type { HotroomServerSharedServices } from '../services.js';
import { jobsInTree, type JobInFile } from '../../../language/src/editing/jobs-in-tree.js';

/** The jobs and variants of every file in sight, read from the trees alone, for somebody to pick one. */
export async function listJobs({ workspace: { LangiumDocuments, WorkspaceManager } }: HotroomServerSharedServices): Promise<readonly (JobInFile & { readonly uri: string })[]> {
    await WorkspaceManager.ready;
    return LangiumDocuments.all.toArray().sort((a, b) => a.uri.toString() < b.uri.toString() ? -1 : 1).flatMap(document => jobsInTree(document.parseResult.value).map(job => ({ uri: document.uri.toString(), ...job })));
}
