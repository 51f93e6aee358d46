import { calculators } from '../../src/calculators/index.ts';
import { tryAddresses } from './random-addresses.ts';

// Every other calculator, and the rest in a file of their own: two files run side by side.
tryAddresses(calculators.filter((_, at) => at % 2 === 1));
