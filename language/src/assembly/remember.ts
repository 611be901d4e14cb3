/** How often each engine has really run since the program began: for tests that hold an edit to what hangs on it, and for benchmarks. */
const runs = new Map<string, number>();
export const engineRuns = (): ReadonlyMap<string, number> => new Map(runs);

/**
 * An engine that remembers what it gave for its last inputs. Engines are pure functions of plain values, so an input that is equal figure by figure
 * gives the same result: after a keystroke only those run whose input the keystroke changed, whatever else was read anew.
 * @param engine its name, for the count
 * @param most how many inputs are remembered; the one that was not asked for longest goes first
 */
export function remembered<Input, Output>(engine: string, run: (input: Input) => Output, most = 32): (input: Input) => Output {
    const known = new Map<string, Output>();
    return input => {
        const key = keyOf(input);
        if (known.has(key)) {
            const output = known.get(key) as Output;
            known.delete(key);
            known.set(key, output);
            return output;
        }
        runs.set(engine, (runs.get(engine) ?? 0) + 1);
        const output = run(input);
        known.set(key, output);
        if (known.size > most) for (const oldest of known.keys()) { known.delete(oldest); break; }
        return output;
    };
}

/**
 * Plain values as text, unlike for unlike ones; a member without a value counts as none. Several times as fast as `JSON.stringify` with a replacer, which
 * whole numbers of any size would need. What has no text of its own would make unlike inputs equal, and is a defect of ours.
 */
function keyOf(value: unknown): string {
    switch (typeof value) {
        case 'number': return `${value},`;
        case 'string': return `${value.length}:${value}`;
        case 'boolean': return value ? 'y' : 'n';
        case 'undefined': return 'u';
        case 'bigint': return `${value}b`;
        case 'object': break;
        default: throw new Error('An engine\'s input is made of plain values');
    }
    if (value === null) return '0';
    if (Array.isArray(value)) {
        let list = '[';
        for (const item of value) list += keyOf(item);
        return `${list}]`;
    }
    if (value instanceof Map || value instanceof Set) throw new Error('An engine\'s input is made of plain values');
    let members = '{';
    for (const [name, member] of Object.entries(value)) if (member !== undefined) members += `${name}=${keyOf(member)}`;
    return `${members}}`;
}
