import type { Rule } from '../rule.js';
import { ceilingDoesNotClose } from './ceiling-does-not-close.js';
import { ceilingSpanNotStated } from './ceiling-span-not-stated.js';
import { closingCornerAgainstBuilding } from './closing-corner-against-building.js';
import { cornerPanelTooNarrow } from './corner-panel-too-narrow.js';
import { fasteningNotStainless } from './fastening-not-stainless.js';
import { jointInFasteningZone } from './joint-in-fastening-zone.js';
import { jointNearFastening } from './joint-near-fastening.js';
import { madeToMeasureAvoidable } from './made-to-measure-avoidable.js';
import { openingOverlapsCorner } from './opening-overlaps-corner.js';
import { openingsOverlap } from './openings-overlap.js';
import { panelMassUnknown } from './panel-mass-unknown.js';
import { panelWidthUnusable } from './panel-width-unusable.js';
import { plateCannotBeSpliced } from './plate-cannot-be-spliced.js';
import { plateNotDurable } from './plate-not-durable.js';
import { roomMissing } from './room-missing.js';
import { roomTooLarge } from './room-too-large.js';
import { roomTooLow } from './room-too-low.js';
import { roomWithoutInside } from './room-without-inside.js';
import { treatedWoodInside } from './treated-wood-inside.js';
import { vapourBarrierMissing } from './vapour-barrier-missing.js';
import { wallDoesNotClose } from './wall-does-not-close.js';

/** Rules of this family, by id. */
export const shellRules: readonly Rule[] = [
    ceilingDoesNotClose,
    ceilingSpanNotStated,
    closingCornerAgainstBuilding,
    cornerPanelTooNarrow,
    fasteningNotStainless,
    jointInFasteningZone,
    jointNearFastening,
    madeToMeasureAvoidable,
    openingOverlapsCorner,
    openingsOverlap,
    panelMassUnknown,
    panelWidthUnusable,
    plateCannotBeSpliced,
    plateNotDurable,
    roomMissing,
    roomTooLarge,
    roomTooLow,
    roomWithoutInside,
    treatedWoodInside,
    vapourBarrierMissing,
    wallDoesNotClose,
];
