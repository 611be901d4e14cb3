/** A line that is neither a property nor a block. */
export interface Statement {
    readonly doc: string;
    /** Kinds of block it may stand in; `file` is the top of a file. */
    readonly standsIn: readonly string[];
    /** How it is written. */
    readonly written: string;
    /** A line offered by completion; `$1` marks places to fill. */
    readonly snippet: string;
    readonly since: string;
}

const since = '0.1';

/** The lines of the language that are neither properties nor blocks. */
export const statements: Readonly<Record<string, Statement>> = {
    use: { doc: 'Makes the entries of another file known in this one.', standsIn: ['file'], written: 'use "path/from/this/file.hotroom"', snippet: 'use "$1"', since },
    let: {
        doc: 'Gives a name to a value or a calculation. It is seen in the block it stands in; at the top of a file, in that file.',
        standsIn: ['file', 'catalogue', 'job', 'series', 'variant'], written: 'let aisle = room.inside.width - 2 * 20"', snippet: 'let ${1:name} = ${2:value}', since,
    },
    waive: {
        doc: 'Takes a finding on record as accepted, with the reason, who decided it, and until when.',
        standsIn: ['job', 'variant'], written: 'waive head-clearance-too-low on upper because "low room, signed by the customer" by "design office" until 2027-03-01',
        snippet: 'waive ${1:finding} on ${2:upper} because "${3:reason}" by "${4:who}" until ${5:2027-01-31}', since,
    },
};
export const isStatement = (parent: string, word: string): boolean => Object.hasOwn(statements, word) && statements[word]?.standsIn.includes(parent) === true;
export const statementsIn = (parent: string): readonly string[] => Object.keys(statements).filter(word => isStatement(parent, word));
