import type { Operation } from './operation';
import { documentOp } from './operations/document';
import { confirmImportOp, importRowsOp, readImportOp, startImportOp, steerImportOp } from './operations/imports';
import { assessOp, findingsOp, frameOp, plateOp } from './operations/judging';
import { listAreasOp, listShelvesOp, listStoresOp, makeAreaOp, makeShelfOp, makeStoreOp } from './operations/places';
import { purchaseOp } from './operations/purchase';
import {
  changeMotorOp,
  changeSetOp,
  listMotorsOp,
  listSetsOp,
  makeMotorOp,
  makeSetOp,
  readMotorOp,
  readSetOp,
  recordSwapOp,
} from './operations/register';

/** Everything that can be asked, in the order and under the headings of the document. A test holds it against the routes. */
export const OPERATIONS_OF: Readonly<Record<string, readonly Operation[]>> = {
  Sets: [listSetsOp, makeSetOp, readSetOp, changeSetOp, findingsOp, purchaseOp],
  Motors: [listMotorsOp, makeMotorOp, readMotorOp, changeMotorOp],
  Swaps: [recordSwapOp],
  Places: [listAreasOp, makeAreaOp, listStoresOp, makeStoreOp, listShelvesOp, makeShelfOp],
  Judging: [assessOp, plateOp, frameOp],
  Imports: [startImportOp, readImportOp, importRowsOp, confirmImportOp, steerImportOp],
  'This document': [documentOp],
};

export const OPERATIONS: readonly Operation[] = Object.values(OPERATIONS_OF).flat();
