import { URI } from 'langium';
import * as z from 'zod/mini';
import { isOrdinaryPath } from './revision.js';

/** Addresses under which an editor shows a file as it was in a revision. */
export const revisionScheme = 'hotroom-revision';

const querySchema = z.object({
    /** A file of the repository. */
    near: z.string().check(z.regex(/^file:/)),
    tree: z.string().check(z.regex(/^[0-9a-f]{40}([0-9a-f]{24})?$/)),
    path: z.string().check(z.refine(isOrdinaryPath)),
});
export type RevisionFile = z.infer<typeof querySchema>;

/**
 * The address of a file of a revision. Its path is for people, who see `birch (3f2a1c9).hotroom` on the tab; what leads to the contents stands in the query.
 * @param shown what the revision is called
 */
export function revisionAddress(file: RevisionFile, shown: string): string {
    const dot = file.path.lastIndexOf('.');
    return URI.from({ scheme: revisionScheme, path: `/${file.path.slice(0, dot)} (${shown.replaceAll(/[^\w.-]/g, '-')})${file.path.slice(dot)}`, query: JSON.stringify(file) }).toString();
}

/** @returns nothing for an address that is none of ours, or was tampered with */
export function readRevisionAddress(address: string): RevisionFile | undefined {
    try {
        const { scheme, query } = URI.parse(address, true);
        const read = scheme === revisionScheme ? querySchema.safeParse(JSON.parse(query)) : undefined;
        return read?.success ? read.data : undefined;
    } catch {
        return undefined;
    }
}
