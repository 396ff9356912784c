/** A sum of columns, each times a factor, that must lie between two bounds. */
export interface ProgramRow {
  readonly terms: readonly (readonly [column: number, factor: number])[];
  readonly least: number;
  /** `Infinity` for no upper bound. */
  readonly most: number;
}

/** A linear program in which some columns are whole numbers; its first column is to be as small as can be. */
export interface MixedProgram {
  readonly lower: readonly number[];
  readonly upper: readonly number[];
  readonly isWhole: readonly boolean[];
  readonly rows: readonly ProgramRow[];
}

/** What a solver says of a program. */
export interface ProgramAnswer {
  /** `solved`: nothing is smaller. `impossible`: nothing fulfils all rows. `stopped`: it ended before it knew. */
  readonly status: "solved" | "impossible" | "stopped";
  /** The value of each column in the best that was found; `null` when nothing was. */
  readonly values: ArrayLike<number> | null;
  /** The first column is no smaller in anything that fulfils all rows; `null` where that is not known. */
  readonly bound: number | null;
}

/** Solves programs. It is given from outside, since what solves them is large and is loaded only when it is asked for. */
export interface ProgramSolver {
  /** Solves a program, and stops after so many nodes of its search: the same program has the same answer everywhere. */
  solve(program: MixedProgram, mostNodes: number): ProgramAnswer;
}

type Term = readonly [column: number, factor: number];

/** Puts a program together. */
export class ProgramWriter implements MixedProgram {
  readonly lower: number[] = [];
  readonly upper: number[] = [];
  readonly isWhole: boolean[] = [];
  readonly rows: ProgramRow[] = [];

  /** A column between two bounds. Returns its number. */
  column(lower: number, upper: number): number {
    this.lower.push(lower);
    this.upper.push(upper);
    this.isWhole.push(false);
    return this.lower.length - 1;
  }

  /** A column that is 0 or 1. Returns its number. */
  choice(): number {
    const column = this.column(0, 1);
    this.isWhole[column] = true;
    return column;
  }

  /** How many columns are 0 or 1. */
  get choices(): number {
    return this.isWhole.filter(Boolean).length;
  }

  /** One row; columns that are named twice are added up. */
  row(terms: readonly Term[], least: number, most = Number.POSITIVE_INFINITY): void {
    const sums = new Map<number, number>();
    for (const [column, factor] of terms) sums.set(column, (sums.get(column) ?? 0) + factor);
    this.rows.push({ terms: [...sums].filter(([, factor]) => factor !== 0), least, most });
  }
}
