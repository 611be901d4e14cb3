import type { Rule } from '../rule.js';
import { clearHigherThanFrame } from './clear-higher-than-frame.js';
import { clearWiderThanLeafLeaves } from './clear-wider-than-leaf-leaves.js';
import { doorClearWidthTooSmall } from './door-clear-width-too-small.js';
import { doorGapMissing } from './door-gap-missing.js';
import { doorHandleMetalInside } from './door-handle-metal-inside.js';
import { doorHigherThanRoom } from './door-higher-than-room.js';
import { doorMissing } from './door-missing.js';
import { doorNeedsAHandToOpen } from './door-needs-a-hand-to-open.js';
import { doorOpensInward } from './door-opens-inward.js';
import { doorSwingsIntoBenchFloor } from './door-swings-into-bench-floor.js';
import { frameWiderThanSection } from './frame-wider-than-section.js';
import { glassWiderThanSection } from './glass-wider-than-section.js';
import { hingeNotOnANeighbour } from './hinge-not-on-a-neighbour.js';
import { hingesTooFew } from './hinges-too-few.js';
import { leafHitsInside } from './leaf-hits-inside.js';
import { openingPlaceMissing } from './opening-place-missing.js';
import { openingPlaceNotANeighbour } from './opening-place-not-a-neighbour.js';
import { openingRunsOffWall } from './opening-runs-off-wall.js';
import { paneLargerThanLeaf } from './pane-larger-than-leaf.js';
import { paneNotSafetyGlass } from './pane-not-safety-glass.js';
import { thresholdTooHigh } from './threshold-too-high.js';
import { windowAboveOrBelowWall } from './window-above-or-below-wall.js';
import { windowTrimDoesNotFit } from './window-trim-does-not-fit.js';
import { windowTrimInBench } from './window-trim-in-bench.js';

/** Rules of this family, by id. */
export const openingRules: readonly Rule[] = [
    clearHigherThanFrame,
    clearWiderThanLeafLeaves,
    doorClearWidthTooSmall,
    doorGapMissing,
    doorHandleMetalInside,
    doorHigherThanRoom,
    doorMissing,
    doorNeedsAHandToOpen,
    doorOpensInward,
    doorSwingsIntoBenchFloor,
    frameWiderThanSection,
    glassWiderThanSection,
    hingeNotOnANeighbour,
    hingesTooFew,
    leafHitsInside,
    openingPlaceMissing,
    openingPlaceNotANeighbour,
    openingRunsOffWall,
    paneLargerThanLeaf,
    paneNotSafetyGlass,
    thresholdTooHigh,
    windowAboveOrBelowWall,
    windowTrimDoesNotFit,
    windowTrimInBench,
];
