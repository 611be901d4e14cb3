import type { AssembledClimate } from '../../assembly/climate.js';
import type { Condition } from '../../assembly/climate-conditions.js';
import { insideRun } from '../../core/geometry.js';
import { showCitation } from '../../core/citation.js';
import { isMetric, showNumber } from '../../core/show.js';
import type { Span } from '../../core/span.js';
import { hasLooseLink, type Block } from '../../model/block.js';
import type { Job } from '../../model/job.js';
import { isRoomOverfull } from '../astray.js';
import type { RuleInput } from '../rule.js';

/**
 * Heat, air and moisture of a job that was read whole: what half of a job gives is the climate of another room.
 * @returns nothing, too, while the benches and things do not fit into the room
 */
export const wholeClimate = (input: RuleInput): AssembledClimate | undefined => isReadWhole(input.job) && isRead(input.job.climate) && !isRoomOverfull(input) ? input.results.climate : undefined;
/** Whether the job, every block of it and every entry it names could be read: a door too many or too few lets other air through. */
const isReadWhole = ({ isWhole, block }: Job): boolean => isWhole && block.children.every(child => child.isWhole) && !hasLooseLink(block);
/** Whether every fact that is written could be read: else a default would stand where somebody wrote a figure. */
const isRead = (block: Block | undefined): boolean => block === undefined || [...block.written].every(key => Object.hasOwn(block.values, key));

/** Whether every opening for air is where it can be: one out of place has a finding of its own, and what flows through it is nobody's. */
export const areVentsSound = ({ results: { air, inside } }: RuleInput): boolean => (air?.vents ?? []).every(({ vent, problems }) =>
    vent !== undefined && inside !== undefined && problems.length === 0 && vent.onWall.u.from >= 0 && vent.onWall.u.to <= insideRun(vent.wall, inside) && vent.onWall.v.from >= 0 && vent.onWall.v.to <= inside.height);
/** Whether the volume method has nothing against a heater: else the room or the heater is another one than was meant. */
export const isVolumeSound = ({ results }: RuleInput, name: string): boolean => ['within', 'missing'].includes(results.heaters.find(heater => heater.name === name)?.sizing.status ?? 'missing');

/** `176 degF`, or `80 degC` in a job written in metric units. */
export const showCelsius = (celsius: number, { job }: RuleInput): string => isMetric(job.unit) ? `${showNumber(celsius, 0)} degC` : `${showNumber(celsius * 1.8 + 32, 0)} degF`;
export const showMinutes = (seconds: number): string => `${showNumber(seconds / 60, 0)} min`;
export const showKilowatts = (watts: number): string => `${showNumber(watts / 1000, 1)} kW`;
/** Who asks for a figure. */
export const askedBy = ({ citation, isDefault }: Condition): string => isDefault ? showCitation(citation) : 'the job';

/** Where the room says what it is made of. */
export const systemSpan = ({ job }: RuleInput): Span => job.room?.values.system?.span ?? job.block.head;
export const ladleSpan = (input: RuleInput): Span => input.job.climate?.values.ladle?.span ?? systemSpan(input);
