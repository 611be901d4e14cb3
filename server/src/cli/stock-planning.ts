import { planStock, planStockGreedy } from '../../../language/src/engines/stock/plan-stock.js';
import type { IntegerSolver } from '../../../language/src/engines/stock/integer-solver.js';
import type { RenderedJob } from '../../../language/src/renderings/rendered-job.js';
import { timeLimit } from '../solver/time-limit.js';
import { stockOffers } from '../../../language/src/renderings/stock-offers.js';
import { planTasks, stockTasks, type PlannedStock } from '../../../language/src/renderings/stock-tasks.js';

/**
 * Plans every stock of a job within a time limit. What is not proven by then keeps the best plan found, and says so.
 * @param seconds for the whole job
 */
export async function planJobStock({ job, results }: RenderedJob, solver: IntegerSolver, seconds: number): Promise<readonly PlannedStock[]> {
    const limit = timeLimit(seconds * 1000);
    const late = `The ${seconds} s allowed were over; --seconds gives more time.`;
    return planTasks(stockTasks(results.parts, stockOffers(job)), async request => {
        try {
            const plan = await planStock(request, solver, limit.signal, limit.isLate);
            return { plan, ...(plan.proof !== 'proven' && limit.isLate() && { cutShort: late }) };
        } catch (error) {
            if (!limit.signal.aborted) throw error;
            const plan = planStockGreedy(request);
            return { plan, ...(plan.proof !== 'proven' && { cutShort: late }) };
        }
    });
}
