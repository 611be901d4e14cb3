export { planStock, planStockGreedy } from './plan-stock.js';
export { verifyStockPlan } from './verify.js';
export type { IntegerProgram, IntegerResult, IntegerSolver } from './integer-solver.js';
export type { CuttingPattern, Money, StockBoard, StockCut, StockLength, StockPiece, StockPlan, StockProof, StockRequest } from './request.js';
