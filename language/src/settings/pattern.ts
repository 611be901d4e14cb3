/**
 * Whether a folder path or pattern means a file: the path itself, or a folder the file lies in. `*` stands for any characters of one name, `?` for
 * one, `**` for any number of folders.
 * @param pattern relative to the folder of the settings file, with `/`
 * @param path of the job file, relative to the same folder
 */
export function patternFits(pattern: string, path: string): boolean {
    const names = path.split('/');
    // Places in the path that the pattern can have come to: a set, so that no pattern takes long.
    let places = new Set([0]);
    for (const part of partsOf(pattern)) {
        const next = new Set<number>();
        // Any number of folders leads from the first of the places to every later one.
        if (part === '**') for (let i = Math.min(...places); i <= names.length; i++) next.add(i);
        else for (const place of places) { const name = names[place]; if (name !== undefined && nameFits(part, name)) next.add(place + 1); }
        places = next;
    }
    return places.size > 0;
}

/** What is wrong with a pattern, as the end of a sentence; nothing when it can be used. */
export function patternMistake(pattern: string): string | undefined {
    if (partsOf(pattern).length === 0) return 'names no folder; settings for every job stand outside of folders';
    if (pattern.includes('\\')) return 'has backslashes; a path is written with /';
    if (/^(\/|[A-Za-z]:)/.test(pattern)) return 'begins at the root of the disk; a path is written from the folder of this file';
    if (partsOf(pattern).includes('..')) return 'leads out of the folder of this file; put a settings file there';
    return undefined;
}

const partsOf = (pattern: string): readonly string[] => pattern.split('/').filter(part => part !== '' && part !== '.');

function nameFits(part: string, name: string): boolean {
    let places = new Set([0]);
    for (const character of part) {
        const next = new Set<number>();
        if (character === '*') for (let i = Math.min(...places); i <= name.length; i++) next.add(i);
        else for (const place of places) {
            if (place < name.length && (character === '?' || character === name[place])) next.add(place + 1);
        }
        places = next;
    }
    return places.has(name.length);
}
