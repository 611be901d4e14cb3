import { inches, inInches, zero, type Length } from '../../language/src/core/length.js';
import { computeBenches } from '../../language/src/engines/benches/compute-benches.js';
import { dressedSection } from '../../language/src/engines/parts/lumber.js';
import type { NominalSize } from '../../language/src/engines/parts/part.js';
import type { PublishedRow } from './table.js';

const dressed = (nominal: NominalSize) => {
    const section = dressedSection(nominal);
    if (!section) throw new Error(`No dressed size for ${nominal}`);
    return { nominal, section };
};

/** The bench of the practice: 1x4 slats flat on 2x4 bearers flat, a 2 1/4" build-up, alone in a room long enough for it. */
function benchAt(top: Length, width: Length) {
    const { benches } = computeBenches({
        inside: { width, depth: inches(72), height: inches(84) }, openings: [], keepClear: [], floorObstacles: [], floor: { kind: 'level' },
        benches: [{
            name: 'bench', walls: ['back'], top, depth: inches(20), overlap: zero, loadPath: 'end_ledgers', hasFascia: false, hasHeadRest: false, isAccessible: false,
            build: {
                name: 'practice', slat: dressed('1x4'), slatGap: { from: inches(0, 1, 4), to: inches(0, 3, 4) }, bearer: dressed('2x4'), bearerSpacing: inches(18),
                rail: dressed('2x4'), ledger: dressed('2x4'), leg: dressed('2x4'), wallGap: zero,
            },
        }],
    });
    const [bench] = benches;
    if (!bench) throw new Error('The bench of the practice has no layout');
    return bench;
}

const practice = { source: 'common practice, no source', toleranceReason: 'heights of ledgers are exact', tolerance: 0 } as const;

export const ledgerRows: readonly PublishedRow[] = [
    { ...practice, clause: 'build-up of 2 1/4"', what: 'slat and cross-bearer, in', published: 2.25, ours: () => inInches(benchAt(inches(18), inches(60)).buildUp), checks: 'benchHeights' },
    { ...practice, clause: 'ledger heights', what: 'top of the ledger under a bench top at 18", in', published: 15.75, ours: () => inInches(benchAt(inches(18), inches(60)).ledgerTop), checks: 'benchHeights' },
    { ...practice, clause: 'ledger heights', what: 'top of the ledger under a bench top at 37", in', published: 34.75, ours: () => inInches(benchAt(inches(37), inches(60)).ledgerTop), checks: 'benchHeights' },
    { ...practice, clause: 'ledger heights', what: 'height of the placed ledger under a bench top at 37", in', published: 34.75, ours: () => inInches(benchAt(inches(37), inches(60)).ledgers[0]?.v.to ?? zero), checks: 'computeBenches' },
    {
        ...practice, clause: 'a bench longer than 6 ft between supports has centre legs', what: 'legs of a bench 6 ft between its ledgers', published: 0,
        ours: () => benchAt(inches(18), inches(75)).legs.length, toleranceReason: 'a count', checks: 'computeBenches',
    },
    {
        ...practice, clause: 'a bench longer than 6 ft between supports has centre legs', what: 'legs of a bench 6 ft 1 in between its ledgers, front and rear', published: 2,
        ours: () => benchAt(inches(18), inches(76)).legs.length, toleranceReason: 'a count', checks: 'computeBenches',
    },
    {
        ...practice, clause: '24" for a person sitting', what: 'seats on a bench 8 ft long', published: 4,
        ours: () => benchAt(inches(18), inches(96)).comfort.seats, toleranceReason: 'a count', checks: 'computeBenches',
    },
    {
        ...practice, clause: '72" for a person lying', what: 'places to lie on a bench 12 ft long', published: 2,
        ours: () => benchAt(inches(18), inches(144)).comfort.lyingPlaces, toleranceReason: 'a count', checks: 'computeBenches',
    },
];
