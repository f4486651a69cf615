import type { Operation } from './operation';
import { documentOp } from './operations/document';
import { confirmImportOp, importRowsOp, readImportOp, startImportOp, steerImportOp } from './operations/imports';
import { assessOp, findingsOp, frameOp, plateOp } from './operations/judging';
import { listAreasOp, listShelvesOp, listStoresOp, makeAreaOp, makeShelfOp, makeStoreOp } from './operations/places';
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

/** Everything that can be asked, in the order of the document. A test holds it against the routes. */
export const OPERATIONS: readonly Operation[] = [
  listSetsOp,
  makeSetOp,
  readSetOp,
  changeSetOp,
  findingsOp,
  listMotorsOp,
  makeMotorOp,
  readMotorOp,
  changeMotorOp,
  listAreasOp,
  makeAreaOp,
  listStoresOp,
  makeStoreOp,
  listShelvesOp,
  makeShelfOp,
  recordSwapOp,
  assessOp,
  plateOp,
  frameOp,
  startImportOp,
  readImportOp,
  importRowsOp,
  confirmImportOp,
  steerImportOp,
  documentOp,
];
