import { planStock, planStockGreedy } from '../../../language/src/engines/stock/plan-stock.js';
import type { IntegerSolver } from '../../../language/src/engines/stock/integer-solver.js';
import type { RenderedJob } from '../../../language/src/renderings/rendered-job.js';
import { stockOffers } from '../../../language/src/renderings/stock-offers.js';
import { planTasks, stockTasks, type PlannedStock } from '../../../language/src/renderings/stock-tasks.js';

/**
 * Plans every stock of a job within a time limit. What is not proven by then keeps the quick plan, and says so.
 * @param seconds for the whole job
 */
export async function planJobStock({ job, results }: RenderedJob, solver: IntegerSolver, seconds: number): Promise<readonly PlannedStock[]> {
    const timer = AbortSignal.timeout(Math.ceil(seconds * 1000));
    return planTasks(stockTasks(results.parts, stockOffers(job)), async request => {
        try {
            return { plan: await planStock(request, solver, timer) };
        } catch (error) {
            if (!timer.aborted) throw error;
            const plan = planStockGreedy(request);
            return { plan, ...(plan.proof !== 'proven' && { cutShort: `The ${seconds} s allowed were over, so this is the quick plan; --seconds gives more time.` }) };
        }
    });
}
