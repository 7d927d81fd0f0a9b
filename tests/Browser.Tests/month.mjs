// Invented records, made from the example record: clean, dangerous, with gaps, unusable.
import { readFile } from 'node:fs/promises';

const example = JSON.parse(await readFile(`${process.env.REPOSITORY}/rules/example-record.json`, 'utf8'));

export function record(number, change = () => {}) {
  const one = structuredClone(example);
  one.recordId = `INVENTED-${number}`;
  one.appliance.serialNumber = `SERIAL-${number}`;
  one.engineer.licenceNumber = `70000${number % 7}`;
  change(one);
  return one;
}

export const dangerous = (one) => {
  one.combustion.readings[0].coPpm = 1100;
};

const changes = [
  dangerous,
  (one) => delete one.water,
  (one) => (one.disturbedJoints[0].renewed = false),
  (one) => (one.appliance.fuel = 'coal'),
];

// Every tenth record has something to say, each kind in turn.
export const month = (records) =>
  Array.from({ length: records }, (_, index) => JSON.stringify(record(index + 1, index % 10 === 3 ? changes[Math.floor(index / 10) % changes.length] : undefined))).join('\n');
