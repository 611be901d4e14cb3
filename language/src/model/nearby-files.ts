import { UriUtils, type LangiumDocument, type URI } from 'langium';
import { nearestName } from '../core/nearest.js';
import type { HotroomServices } from '../syntax/module.js';
import { listNames } from './list-names.js';

/** The search for a file whose path is off ends somewhere, however large the folder is. */
const mostFiles = 400;
const mostFolders = 60;

/** What to say of a path that leads to no file, and the path that is meant when one is like enough. */
export interface PathHelp { readonly words: string; readonly nearest?: string }

/**
 * Looks for the job files a `use` that leads nowhere may have meant: those that are open, and those on disk in or right below the folder of the file, the
 * folder the path leads to and the one above it. Files that are used already are not offered.
 */
export function helpForPath(written: string, target: URI, document: LangiumDocument, services: HotroomServices): PathHelp {
    const candidates = nearbyPaths(target, document, services);
    // compared without the ending, which all have and which would make every short path alike
    const byStem = new Map(candidates.map(path => [stemOf(path), path]));
    const alike = nearestName(stemOf(written), byStem.keys());
    const nearest = candidates.find(path => lastOf(path) === lastOf(written)) ?? (alike === undefined ? undefined : byStem.get(alike));
    if (nearest !== undefined) return { words: `Is "${nearest}" meant?`, nearest };
    const counted = 'The path is counted from the folder of this file';
    if (candidates.length === 0) return { words: `${counted}, and no other job file lies near it.` };
    return { words: `${counted}. ${listNames(written, candidates.map(path => `"${path}"`), 'near it')}` };
}
/** Job files in or near the folder of a file that it does not use yet, as paths from it. */
export const filesNear = (document: LangiumDocument, services: HotroomServices): readonly string[] => nearbyPaths(document.uri, document, services);

const stemOf = (path: string): string => path.replace(/\.hotroom$/, '');
const lastOf = (path: string): string => path.slice(path.lastIndexOf('/') + 1);

function nearbyPaths(target: URI, document: LangiumDocument, services: HotroomServices): readonly string[] {
    const { Imports: imports, LangiumDocuments: documents } = services.shared.workspace;
    const taken = new Set([document.uri.toString(), ...imports.uses(document).flatMap(use => use.target.kind === 'file' ? [use.target.uri.toString()] : [])]);
    const own = UriUtils.dirname(document.uri);
    const roots = imports.roots.length > 0 ? imports.roots : [own];
    const found = new Map<string, string>();
    const add = (uri: URI): void => {
        if (!taken.has(uri.toString()) && roots.some(root => isBelow(root, uri))) found.set(uri.toString(), UriUtils.relative(own, uri));
    };
    for (const other of documents.all) add(other.uri);
    const above = UriUtils.dirname(target);
    for (const folder of [own, above, UriUtils.dirname(above)]) {
        if (roots.some(root => root.toString() === folder.toString() || isBelow(root, folder))) for (const uri of filesIn(folder, services, 'and below')) if (found.size < mostFiles) add(uri);
    }
    return [...found.values()].sort((a, b) => a < b ? -1 : a > b ? 1 : 0);
}

/** Job files of a folder; links are not followed. A folder that is not there, or may not be read, holds none. */
function filesIn(folder: URI, services: HotroomServices, reach: 'only' | 'and below'): readonly URI[] {
    const disk = services.shared.workspace.FileSystemProvider;
    let entries;
    try {
        entries = disk.existsSync(folder) ? disk.readDirectorySync(folder) : [];
    } catch {
        return [];
    }
    const files = entries.filter(({ isFile, uri }) => isFile && uri.path.endsWith('.hotroom')).map(({ uri }) => uri);
    if (reach === 'only') return files;
    const below = entries.filter(({ isDirectory, uri }) => isDirectory && !/^(\.|node_modules$)/.test(lastOf(uri.path))).slice(0, mostFolders);
    return [...files, ...below.flatMap(({ uri }) => filesIn(uri, services, 'only'))];
}

function isBelow(root: URI, uri: URI): boolean {
    return uri.toString().startsWith(`${root.toString().replace(/\/$/, '')}/`);
}

