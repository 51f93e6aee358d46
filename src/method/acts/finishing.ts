import type { Act } from './act.ts';

/** What keeps water and food out of the wood, and the clearing up after it. */
export const finishing: readonly Act[] = [
  {
    id: 'oil',
    label: 'Oil',
    about: 'Oil is flooded or wiped on, sinks in, and what has not sunk in is wiped off.',
    // Gloves, moving air and the can for rags depend on the oil: mineral oil asks for none of them. Rules read its record.
    hazards: ['rags'],
    cautions: ['oily-rags', 'rags-outdoors', 'isocyanates', 'nut-oils', 'finish-full-cure'],
    wet: 'finish',
    protection: [],
  },
  {
    id: 'wax',
    label: 'Wax',
    about: 'A paste of wax, or of wax and oil, is rubbed in and buffed off.',
    hazards: ['rags'],
    cautions: ['oily-rags', 'wax-melting'],
    wet: 'finish',
    protection: [],
  },
  {
    id: 'coat',
    label: 'Put a coat on',
    about: 'Varnish, shellac or resin is brushed, wiped or flooded on and dries as a film.',
    hazards: ['fumes', 'solvent', 'rags'],
    cautions: ['solvent-use', 'oily-rags', 'alcohol-flash', 'spirits-flash', 'finish-full-cure'],
    resin: ['resin-skin'],
    wet: 'finish',
    protection: ['gloves', 'eye-protection', 'ventilation'],
  },
  {
    id: 'clear-up',
    label: 'Clear up',
    about: 'Dust, rags, leftover resin and tools go where they do no harm before the shop is left.',
    hazards: ['dust', 'resin', 'rags'],
    cautions: ['oily-rags'],
    besideRags: ['sanding-dust-fire', 'blowing-dust'],
    resin: ['resin-waste', 'hardener-sawdust'],
    protection: [],
  },
];
