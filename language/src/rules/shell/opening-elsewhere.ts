import type { Finding } from '../../core/finding.js';
import type { Length } from '../../core/length.js';
import type { Block, Given } from '../../model/block.js';
import type { Job } from '../../model/job.js';
import type { Place } from '../../vocabulary/values.js';
import { ventMeetsOpening } from '../air/vent-meets-opening.js';
import { benchAcrossDoor } from '../bench/bench-across-door.js';
import { benchAcrossWindow } from '../bench/bench-across-window.js';
import { benchCloseBeforeDoor } from '../bench/bench-close-before-door.js';
import { clearanceBesideTooSmall } from '../heater/clearance-beside-too-small.js';
import { fittingOnOpening } from '../heater/fitting-on-opening.js';
import { guardMeetsThing } from '../heater/guard-meets-thing.js';
import { heaterCannotPassDoor } from '../heater/heater-cannot-pass-door.js';
import { heaterWayOutBlocked } from '../heater/heater-way-out-blocked.js';
import { thingInHeater } from '../heater/thing-in-heater.js';
import { thingsInOnePlace } from '../heater/things-in-one-place.js';
import { doorSwingsIntoBenchFloor } from '../opening/door-swings-into-bench-floor.js';
import { leafHitsInside } from '../opening/leaf-hits-inside.js';
import { openingRunsOffWall } from '../opening/opening-runs-off-wall.js';
import { windowTrimInBench } from '../opening/window-trim-in-bench.js';
import type { Rule, RuleInput } from '../rule.js';
import { doorCannotOpenOnSite } from '../site/door-cannot-open-on-site.js';

/** What a door or window in the wrong place runs into. */
const inTheWay = (): readonly Rule[] => [
    benchAcrossDoor, benchAcrossWindow, benchCloseBeforeDoor, thingInHeater, clearanceBesideTooSmall, guardMeetsThing, heaterCannotPassDoor, heaterWayOutBlocked,
    doorSwingsIntoBenchFloor, leafHitsInside, openingRunsOffWall, windowTrimInBench, doorCannotOpenOnSite,
];
/** Vents and fittings, which give way where the wall cannot be built otherwise. */
const easilyMoved = (): readonly Rule[] => [ventMeetsOpening, fittingOnOpening, thingsInOnePlace];

/**
 * Whether a door or window may be advised to stand elsewhere: the job is put through the engines once more with it there. No bench may stand across it, and it
 * has to run into nothing that it does not run into, exactly so, where it is.
 * @param distance in the fact that is written, `from` or `centre`
 * @param mustMove whether the wall cannot be built with it where it is
 */
export function isFreeAt(input: RuleInput, name: string, block: Block<'door'> | Block<'window'>, distance: Length, mustMove: boolean): boolean {
    const job: Job = { ...input.job, doors: input.job.doors.map(one => one === block ? moved(one, distance) : one), windows: input.job.windows.map(one => one === block ? moved(one, distance) : one) };
    const there = input.whatIf(job);
    const { results } = there;
    if (zonesCut(there) > zonesCut(input) || results.benches?.result.problems.some(problem => problem.kind === 'across-opening' && problem.opening === name)) return false;
    return [...inTheWay(), ...mustMove ? [] : easilyMoved()].every(rule => {
        const found = [...rule.check(there)];
        return found.length === 0 || found.every(finding => knownTo(rule, input).has(keyOf(finding)));
    });
}

/** What a rule finds in the job as it is: asked for by every place that may be advised, so it is kept as long as the job is. */
const known = new WeakMap<RuleInput, Map<Rule, ReadonlySet<string>>>();
function knownTo(rule: Rule, input: RuleInput): ReadonlySet<string> {
    const ofJob = known.get(input) ?? new Map<Rule, ReadonlySet<string>>();
    known.set(input, ofJob);
    const found = ofJob.get(rule) ?? new Set(Array.from(rule.check(input), keyOf));
    ofJob.set(rule, found);
    return found;
}

/** What is wrong, where and by how much; the words may name the place that changes. */
const keyOf = ({ at, subject, measured, required }: Finding): string => JSON.stringify([at.start, at.end, subject, measured, required]);

const zonesCut = ({ results: { shell } }: RuleInput): number => shell?.result.problems.filter(({ kind }) => kind === 'joint-in-fastening-zone').length ?? 0;

function moved<B extends Block<'door'> | Block<'window'>>(block: B, distance: Length): B {
    const { from, centre } = block.values;
    const at = (place: Given<Place>): Given<Place> => ({ ...place, value: { ...place.value, distance } });
    return { ...block, values: { ...block.values, ...(from ? { from: at(from) } : centre && { centre: at(centre) }) } };
}
