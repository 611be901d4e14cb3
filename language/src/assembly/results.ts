import type { InsideSize } from '../core/geometry.js';
import type { SignFacts, ReceptacleInput } from '../engines/heater/controls.js';
import type { Thing } from '../engines/fittings/things.js';
import type { Part } from '../engines/parts/part.js';
import type { ShellInput } from '../engines/shell/shell-input.js';
import type { ShellResult } from '../engines/shell/shell-result.js';
import type { TurningInput } from '../engines/access/turning-space.js';
import type { ZonedEquipment, ZoneProblem, ZoneSolids } from '../engines/electrical/index.js';
import type { AssembledAir } from './air.js';
import type { AssembledBenches } from './benches.js';
import type { AssembledClimate } from './climate.js';
import type { AssembledCircuit } from './circuits.js';
import type { AssembledFitting } from './fittings.js';
import type { JudgedHeater } from './heater-judgement.js';
import type { AssembledDoor, AssembledWindow } from './openings.js';
import type { RoomShell } from './room.js';
import type { AssembledSite } from './site.js';
import type { AssembledStrength } from './strength.js';

/**
 * Everything the engines worked out for one job, each part when it is first read. A part is absent, or a list empty, when the job lacks what it
 * needs; the lack has its own finding. Entries carry the block they belong to, so that a finding finds its place.
 */
export interface Results {
    readonly room: RoomShell | undefined;
    /** Lining to lining; absent while the room's sizes or system are not known or leave nothing inside. */
    readonly inside: InsideSize | undefined;
    readonly shell: { readonly input: ShellInput; readonly result: ShellResult } | undefined;
    readonly doors: readonly AssembledDoor[];
    readonly windows: readonly AssembledWindow[];
    readonly benches: AssembledBenches | undefined;
    /** Strength of every bench under the loads of the rule sets. */
    readonly strength: AssembledStrength | undefined;
    readonly heaters: readonly JudgedHeater[];
    readonly fittings: readonly AssembledFitting[];
    readonly air: AssembledAir | undefined;
    readonly climate: AssembledClimate | undefined;
    /** Surfaces, openings, benches, heaters with their guards, vents and fittings, as boxes in the room frame. */
    readonly things: readonly Thing[];
    readonly circuits: readonly AssembledCircuit[];
    /** The IEC zones as solids, equipment with those it stands in, and what is wrong with that; nothing under other rule sets. */
    readonly zones: { readonly solids: ZoneSolids; readonly equipment: readonly ZonedEquipment[]; readonly problems: readonly ZoneProblem[]; readonly lacks: readonly string[] } | undefined;
    /** The floor and what takes it, for whoever turns a wheelchair there. */
    readonly floor: TurningInput | undefined;
    readonly signs: SignFacts;
    readonly receptaclesInside: readonly ReceptacleInput[];
    readonly site: AssembledSite | undefined;
    /** Every part of the job, in the order shell, openings, benches, the rest. */
    readonly parts: readonly Part[];
    /** The job as a signature stands for it, in one word. */
    readonly fingerprint: string;
}
