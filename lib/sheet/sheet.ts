// Named columns with units, rows, formulas and a foot: worked out with a ± on every figure.

export type {
  Cell,
  CellFault,
  CellSpec,
  ColumnSpec,
  FootFigure,
  Sheet,
  SheetChart,
  SheetColumn,
  SheetContext,
  SheetScale,
  SheetSpec,
  SheetWhere,
} from "./sheet-types.ts";
