/** A layer of a slab, inside to outside. One without heat capacity (an air gap) only resists. */
export interface SlabLayer {
    readonly thicknessM: number;
    /** W/(m K); for a layer of air its thickness divided by its resistance. */
    readonly conductivity: number;
    /** J/(m3 K) */
    readonly heatCapacity: number;
}

/** A stretch of the shell through which heat runs straight. */
export interface Slab {
    readonly name: string;
    readonly areaM2: number;
    readonly layers: readonly SlabLayer[];
    /** Surface resistances, m2 K/W. */
    readonly insideResistance: number;
    readonly outsideResistance: number;
    readonly outsideC: number;
    readonly startC: number;
}

/** A slab cut into cells, with everything the steps need; cells are numbered from the inside. */
export interface SlabGrid {
    readonly slab: Slab;
    readonly cells: number;
    /** Depth of the middle of each cell, m. */
    readonly depths: Float64Array;
    /** J/K of each cell. */
    readonly capacity: Float64Array;
    /** W/K between a cell and the next. */
    readonly between: Float64Array;
    /** W/K from the air to the first cell, and from the last to what is outside. */
    readonly fromAir: number;
    readonly toOutside: number;
    /** Of half the first and half the last cell, m2 K/W. */
    readonly firstHalf: number;
    /** Where one layer ends and the next begins: the cell before, and how much of the way in resistance from its middle to the next one's lies before the edge. */
    readonly edges: readonly { readonly depth: number; readonly cell: number; readonly share: number }[];
    readonly lastHalf: number;
}

const mostCells = 400;

/** Thickness a layer's cells have: a quarter of the way heat gets in `timeS`, halved at each level. */
const cellSize = ({ conductivity, heatCapacity }: SlabLayer, timeS: number, level: number): number => Math.sqrt(conductivity / heatCapacity * timeS) / (4 * 2 ** level);

/**
 * Cuts a slab into cells, at least two in a layer.
 * @param timeS how long the run is that the cells are made for
 * @param level each level halves the cells
 */
export function slabGrid(slab: Slab, timeS: number, level: number): SlabGrid {
    const solid = slab.layers.some(({ heatCapacity }) => heatCapacity > 0);
    if (!solid) throw new Error(`Slab ${slab.name} has no layer that holds heat`);
    const cells: { readonly size: number; readonly layer: SlabLayer; readonly before: number }[] = [];
    let depth = 0;
    let extra = 0;
    const depths: number[] = [];
    const ends: { readonly depth: number; readonly cell: number; readonly extra: number }[] = [];
    for (const layer of slab.layers) {
        if (layer.heatCapacity <= 0) {
            extra += layer.thicknessM / layer.conductivity;
            depth += layer.thicknessM;
            ends.push({ depth, cell: cells.length - 1, extra });
            continue;
        }
        const count = Math.min(mostCells, Math.max(2 ** (level + 1), Math.ceil(layer.thicknessM / cellSize(layer, timeS, level))));
        for (let i = 0; i < count; i++) {
            cells.push({ size: layer.thicknessM / count, layer, before: i === 0 ? extra : 0 });
            depths.push(depth + (i + 0.5) * layer.thicknessM / count);
        }
        extra = 0;
        depth += layer.thicknessM;
        ends.push({ depth, cell: cells.length - 1, extra });
    }
    const half = (i: number): number => { const cell = cells[i]; return cell ? cell.size / 2 / cell.layer.conductivity : 0; };
    const count = cells.length;
    const firstHalf = half(0) + (cells[0]?.before ?? 0);
    const lastHalf = half(count - 1) + extra;
    const edges = ends.filter(({ cell }) => cell >= 0 && cell < count - 1).map(end => ({ depth: end.depth, cell: end.cell, share: (half(end.cell) + end.extra) / (half(end.cell) + half(end.cell + 1) + (cells[end.cell + 1]?.before ?? 0)) }));
    return {
        edges, slab, cells: count, depths: Float64Array.from(depths), firstHalf, lastHalf,
        capacity: Float64Array.from(cells, ({ size, layer }) => slab.areaM2 * size * layer.heatCapacity),
        between: Float64Array.from({ length: Math.max(0, count - 1) }, (_, i) => slab.areaM2 / (half(i) + half(i + 1) + (cells[i + 1]?.before ?? 0))),
        fromAir: slab.areaM2 / (slab.insideResistance + firstHalf), toOutside: slab.areaM2 / (slab.outsideResistance + lastHalf),
    };
}

/**
 * One implicit step of a slab, factored once for a step length: (capacity + weight x conductances) T = right side + weight x fromAir x air.
 * `solve` leaves what the slab would be at air of 0 degC in `out`; adding `response` times the air's temperature gives what it is.
 */
export interface SlabStep {
    readonly response: Float64Array;
    readonly solve: (rightSide: Float64Array, out: Float64Array) => void;
}

/** @param weight seconds the new state counts for */
export function slabStep(grid: SlabGrid, weight: number): SlabStep {
    const { cells, capacity, between, fromAir, toOutside } = grid;
    // The matrix is symmetric, tridiagonal and dominated by its diagonal, so no pivoting is needed.
    const upper = new Float64Array(cells);
    const inverse = new Float64Array(cells);
    for (let i = 0; i < cells; i++) {
        const left = i === 0 ? fromAir : between[i - 1] ?? 0;
        const right = i === cells - 1 ? toOutside : between[i] ?? 0;
        const below = i === 0 ? 0 : -weight * (between[i - 1] ?? 0);
        inverse[i] = 1 / ((capacity[i] ?? 0) + weight * (left + right) - (i === 0 ? 0 : below * (upper[i - 1] ?? 0)));
        upper[i] = i === cells - 1 ? 0 : -weight * (between[i] ?? 0) * (inverse[i] ?? 0);
    }
    const solve = (rightSide: Float64Array, out: Float64Array): void => {
        let before = 0;
        for (let i = 0; i < cells; i++) {
            const carried = i === 0 ? 0 : weight * (between[i - 1] ?? 0) * before;
            before = ((rightSide[i] ?? 0) + carried) * (inverse[i] ?? 0);
            out[i] = before;
        }
        for (let i = cells - 2; i >= 0; i--) out[i] = (out[i] ?? 0) - (upper[i] ?? 0) * (out[i + 1] ?? 0);
    };
    const response = new Float64Array(cells);
    const unit = new Float64Array(cells);
    unit[0] = weight * fromAir;
    solve(unit, response);
    return { response, solve };
}
