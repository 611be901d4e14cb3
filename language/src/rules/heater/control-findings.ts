import type { Span } from '../../core/span.js';
import type { ControlProblem } from '../../engines/heater/controls.js';
import type { Block } from '../../model/block.js';
import type { Condition } from '../../rule-sets/index.js';
import { nameBlocks } from '../../assembly/naming.js';
import type { RuleInput } from '../rule.js';

/** Conditions no electric heater meets, and those about heaters shared by many, which the job does not state. */
export const electricHeater: readonly Condition[] = ['gas_heater', 'gas_heater_with_timer', 'shared_use', 'remote_start'];

/** A control by the name the engines know it by. */
export const controlBlock = ({ job }: RuleInput, name: string): Block<'control'> | undefined => nameBlocks(job.controls).find(control => control.name === name)?.block;

export const isWrongPlace = (problem: ControlProblem): problem is Extract<ControlProblem, { readonly kind: 'control-in-wrong-place' }> => problem.kind === 'control-in-wrong-place';

/** The control whose timer runs longest, and the place of its time. */
export function longestTimer({ job }: RuleInput): { readonly block: Block<'control'>; readonly span: Span; readonly minutes: number } | undefined {
    let longest: { readonly block: Block<'control'>; readonly span: Span; readonly minutes: number } | undefined;
    for (const block of job.controls) {
        const { timer } = block.values;
        if (timer && (!longest || timer.value / 60 > longest.minutes)) longest = { block, span: timer.span, minutes: timer.value / 60 };
    }
    return longest;
}

export const showMinutes = (minutes: number): string => minutes >= 120 && minutes % 60 === 0 ? `${minutes / 60} h` : `${Number(minutes.toFixed(2))} min`;
export const standsWords = { outside: 'outside the room', inside: 'inside the room', on_heater: 'on the heater', either: 'outside the room or on the heater' } as const;
