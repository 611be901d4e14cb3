import { axonometricView } from './axonometric.js';
import { benchesView } from './benches.js';
import { elevationView } from './elevation.js';
import { heaterView } from './heater.js';
import { planView } from './plan.js';
import { sectionView } from './section.js';
import { basePlan, ceilingPlan } from './shell-plans.js';
import type { View, ViewInput, ViewName } from './view.js';

/** A view by its name; nothing when the job has nothing to show there. */
export function viewOf(name: ViewName, input: ViewInput): View | undefined {
    switch (name) {
        case 'plan': return planView(input);
        case 'elevation-front': return elevationView('front', input);
        case 'elevation-left': return elevationView('left', input);
        case 'elevation-back': return elevationView('back', input);
        case 'elevation-right': return elevationView('right', input);
        case 'section-across': return sectionView('across', input);
        case 'section-along': return sectionView('along', input);
        case 'base': return basePlan(input);
        case 'ceiling': return ceilingPlan(input);
        case 'benches': return benchesView('frames', input);
        case 'bench-fronts': return benchesView('fronts', input);
        case 'bench-sections': return benchesView('sections', input);
        case 'heater': return heaterView('front', input);
        case 'heater-side': return heaterView('side', input);
        case 'axonometric': return axonometricView('whole', input);
        case 'exploded': return axonometricView('exploded', input);
        default: return name satisfies never;
    }
}
