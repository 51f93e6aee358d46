import { parentPort, workerData } from 'node:worker_threads';
import { readShop } from '../method/shop/index.ts';
import type { ReaderUnits } from '../model/quantity/index.ts';
import { checked } from './checked.ts';
import type { NamedText } from './method-files.ts';

/** What a worker of `kerf check` is started with. */
export interface CheckWorkerData {
  shop?: NamedText | undefined;
  units: ReaderUnits;
}

const { shop: record, units } = workerData as CheckWorkerData;
const shop = record && readShop(record.text, record.file).shop;
const memo = new Map<string, unknown>();

parentPort?.on('message', async (file: NamedText) => {
  parentPort?.postMessage(await checked(file, { shop, units, memo }));
});
